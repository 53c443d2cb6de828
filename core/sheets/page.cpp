// SPDX-License-Identifier: MIT
#include "core/sheets/page.h"

#include <utility>

#include <fmt/format.h>

#include "core/catalog/botanical_parts.h"

namespace tussock {

namespace {

constexpr double kAboveStrip = 2.5;  // mm between cautions and the strip's line

// Short side first. ISO 216 A4; ANSI/ASME Y14.1 size A, 8.5 x 11 in.
std::pair<double, double> sidesOf(Paper paper) {
  switch (paper) {
    case Paper::Letter:
      return {8.5 * 25.4, 11.0 * 25.4};
    case Paper::A4:
      return {210.0, 297.0};
  }
  return {210.0, 297.0};
}

std::string readableDate(Date date) {
  if (!date.ok()) return {};
  return fmt::format("{} {}", readableMonthDay(MonthDay{date.month(), date.day()}),
                     static_cast<int>(date.year()));
}

}  // namespace

Sheet blankPage(Paper paper, Orientation orientation, std::string title) {
  auto [width, height] = sidesOf(paper);
  if (orientation == Orientation::Landscape) std::swap(width, height);
  Sheet sheet;
  sheet.title = printable(title);
  sheet.widthMm = width, sheet.heightMm = height;
  return sheet;
}

PaperBox contentOf(const Sheet& sheet) {
  return {kPageMargin, kPageMargin, sheet.widthMm - kPageMargin, sheet.heightMm - kPageMargin};
}

PaperBox bodyOf(const Sheet& sheet, const std::vector<std::string>& cautions) {
  PaperBox body = contentOf(sheet);
  body.top += kHeadHeight;
  body.bottom -=
      kStripHeight + kAboveStrip + kNoteLine * static_cast<double>(cautions.size()) + 1.5;
  return body;
}

void addLine(Sheet& sheet, PaperPoint from, PaperPoint to, Weight weight, Dash dash) {
  PaperPath path;
  path.rings = {{from, to}};
  path.closed = false, path.weight = weight, path.dash = dash;
  sheet.items.emplace_back(std::move(path));
}

void addBox(Sheet& sheet, const PaperBox& box, Weight weight, Wash wash) {
  PaperPath path;
  path.rings = {
      {{box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}}};
  path.weight = weight, path.wash = wash;
  sheet.items.emplace_back(std::move(path));
}

void addBotanical(Sheet& sheet, PaperPoint at, std::string_view name, TextSize size) {
  for (const BotanicalPart& part : botanicalParts(name)) {
    PaperText text{at, part.text, size};
    text.italic = part.italic;
    at.x += textWidth(part.text + " ", size, faceOf(text));
    sheet.items.emplace_back(std::move(text));
  }
}

void addCautions(Sheet& sheet, const std::vector<std::string>& cautions) {
  const PaperBox content = contentOf(sheet);
  double y = content.bottom - kStripHeight - kAboveStrip -
             kNoteLine * static_cast<double>(cautions.size() - 1);
  for (const std::string& line : cautions) {
    sheet.items.emplace_back(PaperText{{content.left, y}, line, TextSize::Note});
    y += kNoteLine;
  }
}

void addTitleStrip(Sheet& sheet, const Settings& settings, const PlanOptions& options, int number,
                   int pages) {
  const PaperBox content = contentOf(sheet);
  const double top = content.bottom - kStripHeight, y = content.bottom - 1.6;
  addLine(sheet, {content.left, top}, {content.right, top}, Weight::Bold);
  const std::string scale = sheet.scale > 0.0 ? fmt::format("Scale 1:{:g}", sheet.scale) : "";
  const std::string date = readableDate(options.date);
  const std::string revision =
      fmt::format("Revision {}{}{}", options.revision, date.empty() ? "" : " · ", date);
  struct Column {
    double from, to;  // shares of the width
    std::string text;
    Align align = Align::Left;
    bool bold = false;
  };
  const std::vector<Column> columns{
      {0.00, 0.29, settings.name, Align::Left, true},
      {0.30, 0.53, sheet.title},
      {0.54, 0.65, scale},
      {0.66, 0.88, revision},
      {0.88, 1.00, fmt::format("Sheet {} of {}", number, pages), Align::Right}};
  const TextSize size = content.width() > 220.0 ? TextSize::Body : TextSize::Note;
  for (const Column& column : columns) {
    const Face face = column.bold ? Face::Bold : Face::Regular;
    const double width = (column.to - column.from) * content.width() - 1.0;
    const double share = column.align == Align::Right ? column.to : column.from;
    PaperText text{{content.left + share * content.width(), y},
                   shortened(printable(column.text), size, face, width),
                   size,
                   column.align};
    text.bold = column.bold;
    if (!text.text.empty()) sheet.items.emplace_back(std::move(text));
  }
}

}  // namespace tussock
