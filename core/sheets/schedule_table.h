// SPDX-License-Identifier: MIT
// The plant schedule as a table on paper, broken between rows where a page ends.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/catalog/schedule.h"
#include "core/sheets/sheet.h"

namespace tussock {

[[nodiscard]] std::vector<ScheduleRow> scheduleRows(const std::vector<ScheduleLine>& lines,
                                                    UnitSystem units);

class ScheduleTable {
 public:
  // Columns are shared by all pages, so that they stand alike.
  ScheduleTable(std::vector<ScheduleRow> rows, double widthMm);

  [[nodiscard]] std::size_t size() const { return rows_.size(); }
  [[nodiscard]] double height() const;  // of all rows, the head and the total
  // How many rows from `first` on fit in `heightMm`, with head and total.
  [[nodiscard]] std::size_t rowsFitting(std::size_t first, double heightMm) const;
  // Draws rows and records them as the sheet's schedule. The total stands under the last row.
  void draw(Sheet& sheet, PaperPoint topLeft, std::size_t first, std::size_t count,
            const std::string& totalText) const;

 private:
  enum Column { Code, Quantity, Drifts, Botanical, Common, Size, Spacing, Height, Bloom, kColumns };
  struct Line {
    std::vector<std::string> botanical, common;
    double height = 0.0;
  };
  void measure();
  void breakNames();
  void drawHead(Sheet& sheet, PaperPoint topLeft) const;
  void drawRow(Sheet& sheet, PaperPoint topLeft, std::size_t index) const;
  void drawBloom(Sheet& sheet, PaperPoint topLeft, const ScheduleRow& row) const;

  std::vector<ScheduleRow> rows_;
  std::vector<Line> lines_;
  std::vector<double> left_, width_;
  TextSize size_ = TextSize::Body;
};

}  // namespace tussock
