// SPDX-License-Identifier: MIT
#include "core/sheets/schedule_table.h"

#include <algorithm>
#include <array>
#include <numeric>

#include <fmt/format.h>

#include "core/sheets/page.h"

namespace tussock {

namespace {

constexpr double kHeadRow = 5.4;    // mm from the top to the line under the heads
constexpr double kTotalRow = 6.0;   // under the last row
constexpr double kColumnGap = 3.4;  // mm
constexpr double kMonth = 3.7;      // width of a month's bar and its gap
constexpr std::string_view kMonths = "JFMAMJJASOND";
constexpr std::array<std::string_view, 8> kHeads{"Code",        "Qty",  "Drifts",  "Botanical name",
                                                 "Common name", "Size", "Spacing", "Height"};

std::string sizeText(StockSize size) {
  switch (size) {
    case StockSize::Seed:
      return "seed";
    case StockSize::Plug:
      return "plug";
    case StockSize::Quart:
      return "quart";
    case StockSize::Gallon:
      return "gallon";
    case StockSize::Existing:
      return "existing";
  }
  return {};
}

std::string spacingText(const ScheduleLine& line, UnitSystem units) {
  const std::string widest = formatPlantSize(line.widest, units);
  const std::string closest = formatPlantSize(line.closest, units);
  if (closest == widest) return widest;
  // "8–10 in", but each in full where the two are told in different units or in feet and inches.
  const std::size_t space = closest.find(' ');
  const bool plain = closest.find('\'') == std::string::npos;
  const bool alike = closest.substr(space) == widest.substr(widest.find(' '));
  return (plain && alike ? closest.substr(0, space) : closest) + "–" + widest;
}

ScheduleRow rowOf(const ScheduleLine& line, UnitSystem units) {
  ScheduleRow row;
  row.code = line.code, row.quantity = line.quantity, row.drifts = line.drifts;
  row.botanicalName = printable(line.botanicalName);
  row.size = sizeText(line.size), row.stock = line.size, row.spacing = spacingText(line, units);
  if (!line.species) return row;
  row.commonName = printable(line.species->commonName);
  row.height = formatPlantSize(line.species->height(), units);
  for (int month = 1; month <= 12; ++month)
    row.bloom[static_cast<std::size_t>(month - 1)] = line.species->bloomsInMonth(month);
  row.caution = line.species->toxicityNote;
  row.handling = line.species->cautionNote;
  row.regulated = line.species->regulated;
  return row;
}

double rowPitch(TextSize size) {
  return size == TextSize::Body ? 4.9 : 4.3;
}

}  // namespace

std::vector<ScheduleRow> scheduleRows(const std::vector<ScheduleLine>& lines, UnitSystem units) {
  std::vector<ScheduleRow> rows;
  rows.reserve(lines.size());
  for (const ScheduleLine& line : lines) rows.push_back(rowOf(line, units));
  std::stable_sort(rows.begin(), rows.end(),
                   [](const ScheduleRow& a, const ScheduleRow& b) { return a.code < b.code; });
  return rows;
}

ScheduleTable::ScheduleTable(std::vector<ScheduleRow> rows, double widthMm)
    : rows_(std::move(rows)) {
  measure();
  if (std::accumulate(width_.begin(), width_.end(), kColumnGap * (kColumns - 1)) > widthMm) {
    size_ = TextSize::Note;
    measure();
  }
  // Names give way, the longer first, and then break between words.
  double over =
      std::accumulate(width_.begin(), width_.end(), kColumnGap * (kColumns - 1)) - widthMm;
  while (over > 0.0) {
    double& widest = width_[Botanical] >= width_[Common] ? width_[Botanical] : width_[Common];
    if (widest < 12.0) break;
    widest -= 1.0, over -= 1.0;
  }
  if (over < 0.0) {
    const double spare = -over / (kColumns - 1);
    for (int i = 0; i < kColumns - 1; ++i) width_[static_cast<std::size_t>(i)] += spare;
  }
  left_.assign(kColumns, 0.0);
  for (std::size_t i = 1; i < kColumns; ++i) left_[i] = left_[i - 1] + width_[i - 1] + kColumnGap;
  breakNames();
}

void ScheduleTable::measure() {
  width_.assign(kColumns, 0.0);
  const auto widen = [&](std::size_t column, std::string_view text, Face face, TextSize size) {
    width_[column] = std::max(width_[column], textWidth(text, size, face));
  };
  for (std::size_t i = 0; i < kHeads.size(); ++i)
    widen(i, kHeads[i], Face::Regular, TextSize::Note);
  int total = 0;
  for (const ScheduleRow& row : rows_) {
    total += row.quantity;
    widen(Code, row.code, Face::Bold, size_);
    widen(Botanical, row.botanicalName, Face::Regular, size_);
    widen(Common, row.commonName, Face::Regular, size_);
    widen(Size, row.size, Face::Regular, size_);
    widen(Spacing, row.spacing, Face::Regular, size_);
    widen(Height, row.height, Face::Regular, size_);
  }
  widen(Quantity, fmt::format("{}", total), Face::Bold, size_);
  width_[Botanical] += 1.0;  // italic and upright parts are set apart
  width_[Bloom] = kMonth * 12.0;
}

void ScheduleTable::breakNames() {
  for (const ScheduleRow& row : rows_) {
    Line line;
    line.botanical = wrapped(row.botanicalName, size_, Face::Regular, width_[Botanical]);
    line.common = wrapped(row.commonName, size_, Face::Regular, width_[Common]);
    const auto most = std::max(line.botanical.size(), line.common.size());
    line.height = rowPitch(size_) + 3.6 * static_cast<double>(most - 1);
    lines_.push_back(std::move(line));
  }
}

double ScheduleTable::height() const {
  double height = kHeadRow + kTotalRow;
  for (const Line& line : lines_) height += line.height;
  return height;
}

std::size_t ScheduleTable::rowsFitting(std::size_t first, double heightMm) const {
  double used = kHeadRow + kTotalRow;
  std::size_t count = 0;
  while (first + count < lines_.size() && used + lines_[first + count].height <= heightMm)
    used += lines_[first + count++].height;
  return count;
}

void ScheduleTable::draw(Sheet& sheet, PaperPoint topLeft, std::size_t first, std::size_t count,
                         const std::string& totalText) const {
  drawHead(sheet, topLeft);
  double y = topLeft.y + kHeadRow;
  for (std::size_t i = first; i < first + count; ++i) {
    drawRow(sheet, {topLeft.x, y}, i);
    sheet.schedule.push_back(rows_[i]);
    y += lines_[i].height;
  }
  if (first + count < rows_.size()) return;
  const double right = topLeft.x + left_.back() + width_.back();
  addLine(sheet, {topLeft.x, y + 1.2}, {right, y + 1.2}, Weight::Hair);
  int total = 0;
  for (const ScheduleRow& row : rows_) total += row.quantity;
  PaperText sum{{topLeft.x + left_[Quantity], y + 5.2}, fmt::format("{}", total), size_};
  sum.bold = true;
  sheet.items.emplace_back(std::move(sum));
  sheet.items.emplace_back(
      PaperText{{topLeft.x + left_[Drifts], y + 5.2}, totalText, TextSize::Note});
}

void ScheduleTable::drawHead(Sheet& sheet, PaperPoint topLeft) const {
  for (std::size_t i = 0; i < kHeads.size(); ++i)
    sheet.items.emplace_back(
        PaperText{{topLeft.x + left_[i], topLeft.y + 3.2}, std::string(kHeads[i]), TextSize::Note});
  for (std::size_t month = 0; month < 12; ++month)
    sheet.items.emplace_back(
        PaperText{{topLeft.x + left_[Bloom] + kMonth * (static_cast<double>(month) + 0.5) - 0.3,
                   topLeft.y + 3.2},
                  std::string(kMonths.substr(month, 1)),
                  TextSize::Note,
                  Align::Centre});
  addLine(sheet, {topLeft.x, topLeft.y + 4.6},
          {topLeft.x + left_.back() + width_.back(), topLeft.y + 4.6}, Weight::Fine);
}

void ScheduleTable::drawRow(Sheet& sheet, PaperPoint topLeft, std::size_t index) const {
  const ScheduleRow& row = rows_[index];
  const double y = topLeft.y + rowPitch(size_) - 1.0;
  const auto cell = [&](Column column, std::string text, double down = 0.0) {
    PaperText out{{topLeft.x + left_[column], y + down}, std::move(text), size_};
    out.bold = column == Code || column == Quantity;
    if (!out.text.empty()) sheet.items.emplace_back(std::move(out));
  };
  cell(Code, row.code), cell(Quantity, fmt::format("{}", row.quantity));
  cell(Drifts, fmt::format("{}", row.drifts));
  double down = 0.0;
  for (const std::string& part : lines_[index].botanical) {
    addBotanical(sheet, {topLeft.x + left_[Botanical], y + down}, part, size_);
    down += 3.6;
  }
  down = 0.0;
  for (const std::string& part : lines_[index].common) cell(Common, part, down), down += 3.6;
  cell(Size, row.size), cell(Spacing, row.spacing), cell(Height, row.height);
  drawBloom(sheet, {topLeft.x + left_[Bloom], y - 2.0}, row);
}

void ScheduleTable::drawBloom(Sheet& sheet, PaperPoint topLeft, const ScheduleRow& row) const {
  for (std::size_t month = 0; month < row.bloom.size(); ++month) {
    const double x = topLeft.x + kMonth * static_cast<double>(month);
    addBox(sheet, {x, topLeft.y, x + kMonth - 0.6, topLeft.y + 1.7}, Weight::Hair,
           row.bloom[month] ? Wash::Ink : Wash::None);
  }
}

}  // namespace tussock
