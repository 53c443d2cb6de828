// SPDX-License-Identifier: MIT
#include "core/sheets/page.h"

#include <utility>

#include "core/catalog/botanical_parts.h"

namespace tussock {

namespace {

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

}  // namespace tussock
