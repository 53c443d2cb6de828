// SPDX-License-Identifier: MIT
#include "core/sheets/set_out_table.h"

#include <algorithm>
#include <array>
#include <numeric>

#include <fmt/format.h>

#include "core/sheets/cautions.h"

namespace tussock {

namespace {

constexpr double kTableRow = 4.9, kHead = 6.0;  // mm
constexpr double kTableGap = 5.0, kLeastColumn = 17.0;
constexpr double kWidestCode = 40.0;
constexpr std::size_t kColumns = SetOutTable::kColumns;
constexpr std::array<std::string_view, kColumns> kTableHeads{"Code",   "Plants", "Along A–B",     "Out",
                                                        "Tape 1", "Tape 2", "Tapes cross at"};

using Row = SetOutTable::Row;

// Where the tapes are held, what each column means, and how far to trust a crossing.
std::vector<std::string> howTo(const SetOut& work, UnitSystem units) {
  std::vector<std::string> parts;
  if (const auto& line = work.baseline) {
    const auto tape = [&](Length length) { return formatLength(length, units); };
    parts.push_back(
        fmt::format("Baseline: A is {} from {} and {} from {}; B is {} and {} from the same two.",
                    tape(line->firstToA), line->first.name, tape(line->secondToA),
                    line->second.name, tape(line->firstToB), tape(line->secondToB)));
  }
  parts.push_back(fmt::format(
      "Each row is the ringed plant of a drift, the one nearest its middle, from left to right. "
      "Measure along A–B from A, then square off it. Or hold tape 1 at {} and tape 2 at {}: the "
      "plant stands where they meet.",
      work.first.name, work.second.name));
  if (std::any_of(work.rows.begin(), work.rows.end(),
                  [](const SetOutRow& row) { return row.weak(); }))
    parts.push_back("Tapes that cross at less than 30° miss by much: measure along A–B there.");
  return parts;
}

Row rowOf(const SetOutRow& entry, UnitSystem units) {
  const auto tape = [&](Length length) { return formatLength(length, units); };
  const std::string degrees = fmt::format("{:.0f}°", entry.crossingDegrees);
  return {{shortened(entry.code, TextSize::Body, Face::Bold, kWidestCode),
           fmt::format("{}", entry.plants), tape(entry.along), tape(entry.out), tape(entry.first),
           tape(entry.second), entry.weak() ? "under 30°: use A–B" : degrees},
          entry.weak()};
}

Face faceFor(std::size_t column, const Row& row) {
  return column == 0 || (column + 1 == kColumns && row.weak) ? Face::Bold : Face::Regular;
}

// Below the last row of the schedule on a page that carries nothing but a schedule.
bool addBelow(Sheet& sheet, const PlanSource& source, const std::vector<ScheduleRow>& schedule,
              const SetOutTable& table) {
  if (sheet.scale > 0.0) return false;
  const auto cautions = cautionLines(source.yard, schedule, "", contentOf(sheet).width());
  PaperBox room = bodyOf(sheet, {}, cautions);
  double lowest = room.top;
  for (const PaperItem& item : sheet.items)
    if (const auto* text = std::get_if<PaperText>(&item))
      if (text->at.y < room.bottom) lowest = std::max(lowest, text->at.y);
  room.top = lowest;
  if (table.height(room.width()) > room.height()) return false;
  room.top += SetOutTable::kGap;
  table.draw(sheet, room, 0);
  return true;
}

std::vector<Sheet> pagesOf(const PlanSource& source, const std::string& title,
                           const std::vector<ScheduleRow>& schedule, const SetOutTable& table,
                           Orientation orientation) {
  std::vector<Sheet> pages;
  for (std::size_t next = 0; next < table.size();) {
    Sheet sheet = blankPage(source.options.paper, orientation, title);
    const auto cautions = cautionLines(source.yard, schedule, "", contentOf(sheet).width());
    const PaperBox room = bodyOf(sheet, {}, cautions);
    addHead(sheet, {}, source.units());
    next = table.draw(sheet, room, next);
    addCautions(sheet, cautions);
    pages.push_back(std::move(sheet));
  }
  return pages;
}

}  // namespace

SetOutTable::SetOutTable(const SetOut& work, UnitSystem units) : how_(howTo(work, units)) {
  for (const SetOutRow& entry : work.rows) rows_.push_back(rowOf(entry, units));
  for (std::size_t i = 0; i < kColumns; ++i) {
    double widest = std::max(kLeastColumn, textWidth(kTableHeads[i], TextSize::Note));
    for (const Row& row : rows_)
      widest = std::max(widest, textWidth(row.cells[i], TextSize::Body, faceFor(i, row)));
    width_[i] = widest;
  }
}

double SetOutTable::headHeight(double width) const {
  return kNoteLine * static_cast<double>(linesIn(width).size()) + kHead + 2.2;
}

double SetOutTable::height(double width) const {
  return rows_.empty() ? 0.0
                       : kGap + headHeight(width) + kTableRow * static_cast<double>(rows_.size());
}

std::size_t SetOutTable::draw(Sheet& sheet, const PaperBox& room, std::size_t first) const {
  drawHead(sheet, room);
  double y = room.top + headHeight(room.width());
  std::size_t next = first;
  while (next < rows_.size() && (next == first || y + kTableRow <= room.bottom + 1e-6)) {
    drawRow(sheet, rows_[next++], {room.left, y});
    y += kTableRow;
  }
  return next;
}

std::vector<std::string> SetOutTable::linesIn(double width) const {
  std::vector<std::string> lines;
  for (const std::string& part : how_)
    for (std::string& line : wrapped(part, TextSize::Note, Face::Regular, width))
      lines.push_back(std::move(line));
  return lines;
}

void SetOutTable::drawHead(Sheet& sheet, const PaperBox& room) const {
  double y = room.top + 2.6;
  for (const std::string& line : linesIn(room.width())) {
    sheet.items.emplace_back(PaperText{{room.left, y}, line, TextSize::Note});
    y += kNoteLine;
  }
  double x = room.left;
  for (std::size_t i = 0; i < kColumns; ++i) {
    sheet.items.emplace_back(PaperText{{x, y + 2.8}, std::string(kTableHeads[i]), TextSize::Note});
    x += width_[i] + kTableGap;
  }
  addLine(sheet, {room.left, y + 4.2}, {x - kTableGap, y + 4.2}, Weight::Fine);
}

void SetOutTable::drawRow(Sheet& sheet, const Row& row, PaperPoint at) const {
  for (std::size_t i = 0; i < kColumns; ++i) {
    PaperText text{{at.x, at.y + kTableRow - 1.0}, row.cells[i], TextSize::Body};
    text.bold = faceFor(i, row) == Face::Bold;
    sheet.items.emplace_back(std::move(text));
    at.x += width_[i] + kTableGap;
  }
}

void SetOutTable::add(std::vector<Sheet>& sheets, const PlanSource& source, const std::string& bed,
                      const std::vector<ScheduleRow>& schedule) const {
  if (rows_.empty() || sheets.empty()) return;
  if (addBelow(sheets.back(), source, schedule, *this)) return;
  const std::string title = bed + ": stake-out";
  auto upright = pagesOf(source, title, schedule, *this, Orientation::Portrait);
  auto across = pagesOf(source, title, schedule, *this, Orientation::Landscape);
  const bool wide = sheets.back().widthMm > sheets.back().heightMm;
  const bool useUpright = wide ? upright.size() < across.size() : upright.size() <= across.size();
  for (Sheet& page : useUpright ? upright : across) sheets.push_back(std::move(page));
}

}  // namespace tussock
