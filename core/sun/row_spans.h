// SPDX-License-Identifier: MIT
// Where the rows of a grid's cell centres run through a shadow.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

struct Columns {
  int from = 0, to = 0;  // `to` is past the last
};

struct Grid {
  Point low;          // south-western corner
  double cell = 0.0;  // metres
  int columns = 0, rows = 0;
  std::vector<Columns> asked;  // by row: outside of these nothing is counted

  [[nodiscard]] std::size_t cells() const {
    return static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows);
  }
};

class RowSpans {
 public:
  explicit RowSpans(const Grid& grid);

  void follow(const Ring& outline);  // convex, anticlockwise
  // Rows from first up to end have columns, which may be none.
  [[nodiscard]] int first() const { return first_; }
  [[nodiscard]] int end() const { return end_; }
  [[nodiscard]] Columns at(int row) const { return spans_[static_cast<std::size_t>(row)]; }

 private:
  static constexpr double kNowhere = 1e300;
  struct Corner {
    Point at;
    int first, end;  // rows from here up, and up to here
  };
  void findCorners(const Ring& outline);
  void followEdges();
  static void followEdge(const Corner& low, const Corner& high, double* places);
  void setColumns();

  const Grid& grid_;
  int lowest_ = 0, highest_ = 0;  // rows with anything asked for
  int first_ = 0, end_ = 0;
  std::vector<Columns> spans_;
  std::vector<Corner> corners_;        // of the outline at hand
  std::vector<double> wests_, easts_;  // by row, where its edges cross
};

}  // namespace tussock
