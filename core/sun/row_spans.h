// SPDX-License-Identifier: MIT
// Where the rows of a grid's cell centres run through a shadow. Columns are counted among those
// that are asked for of their row.
#pragma once

#include <vector>

#include "core/sun/asked_cells.h"
#include "core/sun/outline.h"

namespace tussock {

struct Grid {
  Point low;          // south-western corner
  double cell = 0.0;  // metres
  int columns = 0, rows = 0;
  AskedCells asked;
};

class RowSpans {
 public:
  explicit RowSpans(const Grid& grid);

  void follow(const Outline& outline);
  // Rows from first up to end have columns, which may be none.
  [[nodiscard]] int first() const { return first_; }
  [[nodiscard]] int end() const { return end_; }
  [[nodiscard]] Columns at(int row) const { return spans_[static_cast<std::size_t>(row)]; }

 private:
  // A height that the outline runs through, in cells, and the rows from here up and up to here.
  struct Level {
    double y = 0.0;
    int first = 0, end = 0;
  };
  // An ellipse in cells: half its height, how far east it leans for each cell north, and half its
  // width along a row.
  struct Ellipse {
    Point centre;
    double height = 1.0, lean = 0.0, width = 0.0;
  };
  enum class Side { West, East, Both };
  // What bounds some rows: part of an ellipse; without width, an edge through its centre.
  struct Bound {
    Ellipse of;
    Side side = Side::West;
    int first = 0, end = 0;
  };
  [[nodiscard]] Point inCells(Point p) const;
  [[nodiscard]] Level levelAt(double y) const;
  [[nodiscard]] Ellipse ellipseOf(const Arc& arc) const;
  void findBounds(const Outline& outline);
  void addWhole(const Arc& arc);
  void addArc(const Arc& arc, Level start, Level end);
  void addEdge(Point from, Level start, Point to, Level end);
  void add(const Ellipse& of, Side side, int first, int end);
  void follow(const Bound& bound);
  void setColumns();
  [[nodiscard]] Columns askedOf(int row, double west, double east) const;

  const Grid& grid_;
  double perMetre_;
  bool whole_;                    // all cells are asked for
  int lowest_ = 0, highest_ = 0;  // rows with anything asked for
  int first_ = 0, end_ = 0;
  std::vector<Columns> spans_;
  std::vector<Bound> bounds_;          // of the outline at hand
  std::vector<double> wests_, easts_;  // by row, where they run
};

}  // namespace tussock
