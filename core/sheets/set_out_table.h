// SPDX-License-Identifier: MIT
// The stake-out of a bed as a table on paper.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/sheets/layout.h"
#include "core/sheets/set_out.h"

namespace tussock {

class SetOutTable {
 public:
  static constexpr std::size_t kColumns = 7;
  static constexpr double kGap = 7.0;  // mm above it
  struct Row {
    std::array<std::string, kColumns> cells;
    bool weak = false;
  };

  SetOutTable(const SetOut& work, UnitSystem units);

  [[nodiscard]] std::size_t size() const { return rows_.size(); }
  // Of all, with the gap above; 0 when there is nothing to set out.
  [[nodiscard]] double height(double widthMm) const;
  // Head and rows from `first` on that fit in the room; gives the next row.
  std::size_t draw(Sheet& sheet, const PaperBox& room, std::size_t first) const;
  // Below the schedule where it ends the bed's sheets on a page of its own with room to spare, else
  // on further pages named after the bed, turned where that takes fewer. `schedule` is the bed's.
  void add(std::vector<Sheet>& sheets, const PlanSource& source, const std::string& bed,
           const std::vector<ScheduleRow>& schedule) const;

 private:
  [[nodiscard]] std::vector<std::string> linesIn(double width) const;
  [[nodiscard]] double headHeight(double width) const;
  void drawHead(Sheet& sheet, const PaperBox& room) const;
  void drawRow(Sheet& sheet, const Row& row, PaperPoint at) const;

  std::vector<std::string> how_;
  std::vector<Row> rows_;
  std::array<double, kColumns> width_{};
};

}  // namespace tussock
