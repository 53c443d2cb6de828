// SPDX-License-Identifier: MIT
#include "core/sheets/stake_out.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/sheets/drawing.h"
#include "core/sheets/page.h"
#include "core/sheets/paper_geometry.h"

namespace tussock {

namespace {

constexpr double kSame = 0.001;       // m
constexpr double kLeastOffset = 2.2;  // mm on paper, so that line and edge are told apart
constexpr double kNumberedEvery = 7.5;
constexpr double kLetterStep = 0.6, kFarthestLetter = 15.0;  // mm from where a letter belongs
constexpr int kLetterWays = 16;

struct Ruler {
  PaperPoint origin, along, out;  // unit steps on paper, mm
  double lengthMm = 0.0;
};

bool covered(const Sheet& sheet, const PaperBox& box) {
  for (const PaperItem& item : sheet.items) {
    const auto* text = std::get_if<PaperText>(&item);
    if (text && overlap(boxOf(*text), box)) return true;
    const auto* label = std::get_if<PaperLabel>(&item);
    if (!label) continue;
    if (overlap(boxOf(label->text), box)) return true;
    for (std::size_t i = 1; i < label->leader.size(); ++i)
      if (crosses(label->leader[i - 1], label->leader[i], box)) return true;
  }
  return false;
}

bool isClear(const Sheet& sheet, const PaperText& text, const PaperBox& room) {
  const PaperBox box = boxOf(text);
  return inside(box, room) && !covered(sheet, grown(box, 0.35));
}

// At the first of the steps from where it belongs that is clear of leaders and other texts, or not
// at all: the figures to its left and right tell it.
void addClear(Sheet& sheet, PaperText text, const std::vector<PaperPoint>& steps) {
  const PaperPoint at = text.at;
  for (const PaperPoint step : steps) {
    text.at = {at.x + step.x, at.y + step.y};
    if (!isClear(sheet, text, sheet.drawing)) continue;
    sheet.items.emplace_back(std::move(text));
    return;
  }
}

// As near as can be to where it belongs: in the drawing, else on the page, else where it belongs.
void addAlways(Sheet& sheet, PaperText text) {
  const PaperPoint at = text.at;
  for (const PaperBox& room : {sheet.drawing, contentOf(sheet)})
    for (double reach = 0.0; reach <= kFarthestLetter; reach += kLetterStep)
      for (int i = 0; i < kLetterWays; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / kLetterWays;
        text.at = {at.x + reach * std::cos(angle), at.y + reach * std::sin(angle)};
        if (!isClear(sheet, text, room)) continue;
        sheet.items.emplace_back(std::move(text));
        return;
      }
  text.at = at;
  sheet.items.emplace_back(std::move(text));
}

void addFigure(Sheet& sheet, const Ruler& ruler, double at, const std::string& figure) {
  PaperText text{{ruler.origin.x + ruler.along.x * at + ruler.out.x * 2.0,
                  ruler.origin.y + ruler.along.y * at + ruler.out.y * 2.0},
                 figure,
                 TextSize::Note};
  const bool upright = ruler.along.x == 0.0;
  text.align = upright ? Align::Right : Align::Centre;
  text.at.y += upright ? 1.0 : 2.0;
  text.halo = true;
  const double aside = upright ? 1.7 : textWidth(figure, TextSize::Note) / 2.0 + 0.7;
  const double x = ruler.along.x * aside, y = ruler.along.y * aside;
  addClear(sheet, text, {{0, 0}, {x, y}, {-x, -y}, {1.5 * x, 1.5 * y}, {-1.5 * x, -1.5 * y}});
}

void addRuler(Sheet& sheet, const Ruler& ruler, double stepMm, double stepReal) {
  const int every = stepMm >= kNumberedEvery ? 1 : stepMm * 5.0 >= kNumberedEvery ? 5 : 10;
  const int count = static_cast<int>(std::floor(ruler.lengthMm / stepMm + 1e-6));
  for (int i = 0; i <= count; ++i) {
    const double at = stepMm * i, tick = i % 5 == 0 ? 1.4 : 0.8;
    const PaperPoint foot{ruler.origin.x + ruler.along.x * at, ruler.origin.y + ruler.along.y * at};
    if (!insideWindow(sheet, foot)) continue;
    addLine(sheet, foot, {foot.x + ruler.out.x * tick, foot.y + ruler.out.y * tick}, Weight::Hair);
    if (i % every == 0 && i > 0) addFigure(sheet, ruler, at, fmt::format("{:g}", stepReal * i));
  }
}

void addEnd(Sheet& sheet, PaperPoint at, const std::string& letter, double dx, double dy) {
  if (!insideWindow(sheet, at)) return;
  PaperText text{{at.x + dx, at.y + dy}, letter, TextSize::Body, Align::Centre};
  text.bold = text.halo = true;
  addAlways(sheet, std::move(text));
}

}  // namespace

std::string Baseline::text() const {
  return fmt::format("Baseline A–B: {} long, {} outside the front; A is {} outside the left end.",
                     formatLength(Length::metres(b.x - a.x), units), outside(front), outside(left));
}

std::string Baseline::outside(Length distance) const {
  return distance.metres() > offset.metres() + kSame ? formatLength(distance, units)
                                                     : formatPlantSize(distance, units);
}

Baseline baselineFor(const Box& turned, const Box& bed, int scale, UnitSystem units) {
  const bool feet = units == UnitSystem::FeetInches;
  static constexpr std::array<double, 6> kOffsets{0.5, 1, 2, 5, 10, 50};
  double offset = kOffsets.back();
  for (const double candidate : kOffsets) {
    offset = candidate * (feet ? kMetresPerFoot : 0.2);
    if (offset * 1000.0 / scale >= kLeastOffset) break;
  }
  Baseline line;
  line.units = units, line.offset = Length::metres(offset);
  line.a = {turned.low.x - offset, turned.low.y - offset};
  line.b = {turned.high.x + offset, turned.low.y - offset};
  line.front = Length::metres(bed.low.y - line.a.y),
  line.left = Length::metres(bed.low.x - line.a.x);
  line.reach = turned.height() + offset;
  return line;
}

RulerBand rulersOn(const Sheet& sheet, const Baseline& baseline) {
  const double mm = 1000.0 / sheet.scale;
  const Point step = baseline.a - sheet.siteAtTopLeft;
  const double left = step.x * mm, bottom = sheet.drawing.height() + step.y * mm;
  const auto within = [](double band) { return band > 0.0 && band < 12.0 ? band : 0.0; };
  return {within(left), 0.0, 0.0, within(bottom)};
}

void addBaseline(Sheet& sheet, const Baseline& baseline) {
  const double mm = 1000.0 / sheet.scale;
  const auto paper = [&](Point turned) {
    const Point step = turned - sheet.siteAtTopLeft;
    return PaperPoint{sheet.drawing.left + step.x * mm, sheet.drawing.top - step.y * mm};
  };
  const Angle back = -sheet.turn;
  addPolyline(sheet, {rotated(baseline.a, back), rotated(baseline.b, back)}, Weight::Fine,
              Dash::DashDot);
  const Point top{baseline.a.x, baseline.a.y + baseline.reach};
  addPolyline(sheet, {rotated(baseline.a, back), rotated(top, back)}, Weight::Hair, Dash::DashDot);
  const bool feet = baseline.units == UnitSystem::FeetInches;
  const double real = feet ? 1.0 : 0.5;
  const double stepMm = real * (feet ? kMetresPerFoot : 1.0) * mm;
  const PaperPoint a = paper(baseline.a), b = paper(baseline.b);
  addEnd(sheet, a, "A", -2.6, 3.4);
  addEnd(sheet, b, "B", 2.4, 1.2);
  addRuler(sheet, {a, {1, 0}, {0, 1}, b.x - a.x}, stepMm, real);
  addRuler(sheet, {a, {0, -1}, {-1, 0}, baseline.reach * mm}, stepMm, real);
}

}  // namespace tussock
