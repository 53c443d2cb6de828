// SPDX-License-Identifier: MIT
// The head of a sheet: title, scale bar, north arrow, tile key.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/sheets/page.h"
#include "core/sheets/scale.h"

namespace tussock {

namespace {

constexpr double kArrowWidth = 12.0;
constexpr double kBarLength = 62.0;   // mm at most
constexpr double kBlockWidth = 64.0;  // of the scale bar and its words
constexpr double kBlockGap = 4.0;
constexpr double kKeyWidth = 16.0;
constexpr double kTitleBaseline = 4.6, kTitleLine = 6.0;
constexpr double kBelowTitle = 4.8;  // to the first line under it, and from the last to the body
constexpr double kLeastToScale = 19.0, kLeastOtherwise = 10.0;  // mm of head

void addNorthArrow(Sheet& sheet, PaperPoint centre) {
  const double turn = -sheet.turn.radians();  // y runs downwards
  const auto at = [&](double x, double y) {
    return PaperPoint{centre.x + x * std::cos(turn) - y * std::sin(turn),
                      centre.y + x * std::sin(turn) + y * std::cos(turn)};
  };
  PaperPath dark, light;
  dark.rings = {{at(0, -5.2), at(2.1, 3.2), at(0, 1.6)}};
  light.rings = {{at(0, -5.2), at(-2.1, 3.2), at(0, 1.6)}};
  dark.wash = Wash::Ink;
  dark.weight = light.weight = Weight::Fine;
  sheet.items.emplace_back(std::move(light));
  sheet.items.emplace_back(std::move(dark));
  PaperText letter{at(0, 6.4), "N", TextSize::Note, Align::Centre};
  letter.at.y += 1.0, letter.bold = true;
  sheet.items.emplace_back(std::move(letter));
}

void addScaleBar(Sheet& sheet, PaperPoint topLeft, UnitSystem units) {
  const ScaleBar bar = scaleBar(sheet.scale, units, kBarLength);
  const double top = topLeft.y + 3.4, bottom = top + 1.3;
  const double part = bar.millimetres / bar.parts;
  for (int i = 0; i < bar.parts; ++i)
    addBox(sheet, {topLeft.x + part * i, top, topLeft.x + part * (i + 1), bottom}, Weight::Hair,
           i % 2 == 0 ? Wash::Ink : Wash::Paper);
  const std::string unit = units == UnitSystem::FeetInches ? "ft" : "m";
  const auto number = [&](double share, const std::string& text) {
    sheet.items.emplace_back(PaperText{{topLeft.x + bar.millimetres * share, topLeft.y + 2.3},
                                       text,
                                       TextSize::Note,
                                       Align::Centre});
  };
  number(0.0, "0");
  if (bar.parts % 2 == 0) number(0.5, fmt::format("{:g}", bar.real / 2.0));
  number(1.0, fmt::format("{:g} {}", bar.real, unit));
  PaperText scale{{topLeft.x, topLeft.y + 9.0},
                  describeScale(static_cast<int>(sheet.scale), units),
                  TextSize::Note};
  scale.bold = true;
  sheet.items.emplace_back(std::move(scale));
  sheet.items.emplace_back(PaperText{{topLeft.x, topLeft.y + 12.6}, bar.text, TextSize::Note});
}

void addTileKey(Sheet& sheet, PaperPoint topLeft, const TileKey& key) {
  const double cell = std::min({kKeyWidth / key.columns, 12.0 / key.rows, 5.0});
  for (int row = 0; row < key.rows; ++row)
    for (int column = 0; column < key.columns; ++column) {
      if (key.partAt(column, row) == 0) continue;
      const double x = topLeft.x + cell * column, y = topLeft.y + cell * row;
      const bool here = row == key.row && column == key.column;
      addBox(sheet, {x, y, x + cell, y + cell}, Weight::Hair, here ? Wash::Ink : Wash::None);
    }
}

struct HeadLines {
  std::vector<std::string> title, lines;
  double height = 0.0;
};

// What scale bar, north arrow and tile key leave of the width.
double textRight(const Sheet& sheet, const HeadText& head) {
  double right = contentOf(sheet).right;
  if (sheet.scale > 0.0) right -= kArrowWidth + kBlockWidth + kBlockGap;
  return head.key ? right - kKeyWidth - kBlockGap : right;
}

HeadLines linesOf(const Sheet& sheet, const HeadText& head) {
  const double width = textRight(sheet, head) - contentOf(sheet).left - 6.0;
  HeadLines result;
  result.title = wrapped(sheet.title, TextSize::Title, Face::Bold, width);
  for (const std::string& line : head.lines)
    for (std::string& part : wrapped(printable(line), TextSize::Note, Face::Regular, width))
      result.lines.push_back(std::move(part));
  const double titles = kTitleBaseline + kTitleLine * static_cast<double>(result.title.size() - 1);
  const double texts = titles + kBelowTitle + kNoteLine * static_cast<double>(result.lines.size());
  const double least = sheet.scale > 0.0 ? kLeastToScale : kLeastOtherwise;
  result.height = std::max(least, result.lines.empty() ? titles + kBelowTitle : texts);
  return result;
}

}  // namespace

PaperBox bodyOf(const Sheet& sheet, const HeadText& head,
                const std::vector<std::string>& cautions) {
  PaperBox body = contentOf(sheet);
  body.top += linesOf(sheet, head).height;
  body.bottom -=
      kStripHeight + kAboveStrip + kNoteLine * static_cast<double>(cautions.size()) + 1.5;
  return body;
}

void addHead(Sheet& sheet, const HeadText& head, UnitSystem units) {
  const PaperBox content = contentOf(sheet);
  if (sheet.scale > 0.0) {
    addNorthArrow(sheet, {content.right - kArrowWidth / 2.0, content.top + 6.0});
    addScaleBar(sheet, {content.right - kArrowWidth - kBlockWidth - kBlockGap, content.top}, units);
  }
  if (head.key) addTileKey(sheet, {textRight(sheet, head), content.top + 1.0}, *head.key);
  const HeadLines text = linesOf(sheet, head);
  double y = content.top + kTitleBaseline;
  for (const std::string& line : text.title) {
    PaperText title{{content.left, y}, line, TextSize::Title};
    title.bold = true;
    sheet.items.emplace_back(std::move(title));
    y += kTitleLine;
  }
  y += kBelowTitle - kTitleLine;
  for (const std::string& line : text.lines) {
    sheet.items.emplace_back(PaperText{{content.left, y}, line, TextSize::Note});
    y += kNoteLine;
  }
}

}  // namespace tussock
