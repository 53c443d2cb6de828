// SPDX-License-Identifier: MIT
// The strip along the bottom edge: yard, sheet, scale, revision and date, page of pages.
#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/sheets/page.h"

namespace tussock {

namespace {

constexpr std::size_t kCells = 5;
constexpr double kGap = 3.0;        // mm between cells
constexpr double kHair = 1e-6;      // mm, for rounding
constexpr double kLinePitch = 3.4;  // mm, of two lines of notes
// Where cells start when all fit, as shares of the width; alike on every sheet.
constexpr std::array<double, kCells + 1> kStarts{0.0, 0.29, 0.50, 0.61, 0.86, 1.0};

std::string readableDate(Date date) {
  if (!date.ok()) return {};
  return fmt::format("{} {}", readableMonthDay(MonthDay{date.month(), date.day()}),
                     static_cast<int>(date.year()));
}

struct Cell {
  std::vector<std::string> lines;
  bool bold = false;
  [[nodiscard]] double width(TextSize size) const {
    double widest = 0.0;
    for (const std::string& line : lines)
      widest = std::max(widest, textWidth(line, size, bold ? Face::Bold : Face::Regular));
    return widest;
  }
};
using Strip = std::array<Cell, kCells>;
using Starts = std::array<double, kCells>;

bool fitsShares(const Strip& strip, TextSize size, double width) {
  for (std::size_t i = 0; i < kCells; ++i)
    if (strip[i].width(size) + kGap > (kStarts[i + 1] - kStarts[i]) * width + 1e-9 &&
        !(i + 1 == kCells && strip[i].width(size) <= (1.0 - kStarts[i]) * width))
      return false;
  return true;
}

double lengthOf(const Strip& strip, TextSize size) {
  double length = kGap * (kCells - 1);
  for (const Cell& cell : strip) length += cell.width(size);
  return length;
}

std::vector<std::string> onTwoLines(const Cell& cell, double width) {
  const Face face = cell.bold ? Face::Bold : Face::Regular;
  std::vector<std::string> lines = wrapped(cell.lines.front(), TextSize::Note, face, width);
  if (lines.size() <= 2) return lines;
  std::string rest = lines[1];
  for (std::size_t i = 2; i < lines.size(); ++i) rest += " " + lines[i];
  return {lines[0], shortened(rest, TextSize::Note, face, width)};
}

// The date under the revision, and the names in what room the rest leaves.
void breakLines(Strip& strip, const std::string& revision, const std::string& date, double width) {
  if (!date.empty()) strip[3].lines = {revision, date};
  double room = width - kGap * (kCells - 1);
  for (std::size_t i = 2; i < kCells; ++i) room -= strip[i].width(TextSize::Note);
  const double first = strip[0].width(TextSize::Note), second = strip[1].width(TextSize::Note);
  const double half = room / 2.0;
  const double ofFirst = second < half ? room - second : std::min(first + kHair, half);
  strip[0].lines = onTwoLines(strip[0], ofFirst);
  strip[1].lines = onTwoLines(strip[1], room - ofFirst + kHair);
}

Starts startsOf(const Strip& strip, TextSize size, double width) {
  Starts starts{};
  if (fitsShares(strip, size, width)) {
    for (std::size_t i = 0; i < kCells; ++i) starts[i] = kStarts[i] * width;
    return starts;
  }
  const double spare = std::max(0.0, width - lengthOf(strip, size)) / (kCells - 1);
  for (std::size_t i = 1; i < kCells; ++i)
    starts[i] = starts[i - 1] + strip[i - 1].width(size) + kGap + spare;
  return starts;
}

void addCell(Sheet& sheet, const Cell& cell, TextSize size, PaperPoint at, Align align) {
  double y = at.y - kLinePitch * static_cast<double>(cell.lines.size() - 1);
  for (const std::string& line : cell.lines) {
    PaperText text{{at.x, y}, line, size, align};
    text.bold = cell.bold;
    if (!line.empty()) sheet.items.emplace_back(std::move(text));
    y += kLinePitch;
  }
}

}  // namespace

void addTitleStrip(Sheet& sheet, const Settings& settings, const PlanOptions& options, int number,
                   int pages) {
  const PaperBox content = contentOf(sheet);
  const double top = content.bottom - kStripHeight, y = content.bottom - 1.6;
  addLine(sheet, {content.left, top}, {content.right, top}, Weight::Bold);
  const std::string scale = sheet.scale > 0.0 ? fmt::format("Scale 1:{:g}", sheet.scale) : "";
  const std::string date = readableDate(options.date);
  const std::string revision = "Revision " + printable(options.revision);
  Strip strip{{{{printable(settings.name)}, true},
               {{sheet.title}},
               {{scale}},
               {{date.empty() ? revision : revision + " · " + date}},
               {{fmt::format("Sheet {} of {}", number, pages)}}}};
  const double width = content.width();
  TextSize size = TextSize::Body;
  if (!fitsShares(strip, size, width)) size = TextSize::Note;
  if (lengthOf(strip, size) > width) breakLines(strip, revision, date, width);
  const Starts starts = startsOf(strip, size, width);
  for (std::size_t i = 0; i + 1 < kCells; ++i)
    addCell(sheet, strip[i], size, {content.left + starts[i], y}, Align::Left);
  addCell(sheet, strip.back(), size, {content.right, y}, Align::Right);
}

}  // namespace tussock
