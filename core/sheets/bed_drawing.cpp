// SPDX-License-Identifier: MIT
#include "core/sheets/bed_drawing.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/planting/edit_drift.h"
#include "core/sheets/planting_drawing.h"
#include "core/sheets/set_out.h"

namespace tussock {

namespace {

constexpr double kRing = 1.6;        // mm from a centre mark to where a leader may end
constexpr double kStakeRing = 1.25;  // mm of radius, wider than a cross and within labels' distance

double far(PaperPoint a, PaperPoint b) {
  return std::hypot(a.x - b.x, a.y - b.y);
}

double fromEdge(const LabelMargin& margin, PaperPoint p) {
  const PaperBox& w = margin.window;
  const double upDown = std::min(p.y - w.top, w.bottom - p.y);
  if (margin.sides == Sides::AboveAndBelow) return upDown;
  return std::min({upDown, p.x - w.left, w.right - p.x});
}

// Between the plant nearest to where labels stand and its nearest neighbour, so that no centre
// mark is covered; beside the mark of a plant on its own.
PaperPoint anchorOf(const std::vector<PaperPoint>& marks, const LabelMargin& margin,
                    double radius) {
  const auto nearest = std::min_element(
      marks.begin(), marks.end(),
      [&](PaperPoint a, PaperPoint b) { return fromEdge(margin, a) < fromEdge(margin, b); });
  if (marks.size() == 1) {
    const bool up = nearest->y - margin.window.top < margin.window.bottom - nearest->y;
    return {nearest->x, nearest->y + (up ? -0.55 : 0.55) * radius};
  }
  PaperPoint other = marks.front();
  double least = 1e9;
  for (auto it = marks.begin(); it != marks.end(); ++it)
    if (it != nearest && far(*it, *nearest) < least) least = far(*it, *nearest), other = *it;
  if (least > 4.0 * radius) return {nearest->x, nearest->y + 0.55 * radius};
  return {(nearest->x + other.x) / 2.0, (nearest->y + other.y) / 2.0};
}

// Where symbols of the drift touch, and beside the mark in each, clear of every mark.
std::vector<PaperPoint> endsIn(const std::vector<PaperPoint>& marks, double radius) {
  std::vector<PaperPoint> ends;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j)
      if (far(marks[i], marks[j]) <= 2.0 * radius + 1e-6)
        ends.push_back({(marks[i].x + marks[j].x) / 2.0, (marks[i].y + marks[j].y) / 2.0});
    for (const double side : {-0.55, 0.55}) {
      ends.push_back({marks[i].x, marks[i].y + side * radius});
      ends.push_back({marks[i].x + side * radius, marks[i].y});
    }
  }
  std::erase_if(ends, [&](PaperPoint end) {
    return std::any_of(marks.begin(), marks.end(), [&](PaperPoint mark) {
      return far(end, mark) < std::min(kRing, 0.5 * radius);
    });
  });
  return ends;
}

LabelWish wishFor(const Sheet& sheet, const ShownDrift& shown, const LabelMargin& margin) {
  LabelWish wish{shown.label(), {}, {}, {}};
  std::vector<PaperPoint> marks;
  for (const Point at : shown.plants) marks.push_back(toPaper(sheet, at));
  const double radius = shown.drift->spacing.millimetres() / sheet.scale / 2.0;
  wish.anchor = anchorOf(marks, margin, radius);
  wish.anchor.y = std::clamp(wish.anchor.y, margin.window.top, margin.window.bottom);
  for (const PaperPoint end : endsIn(marks, radius))
    if (insideWindow(sheet, end)) wish.anchors.push_back(end);
  for (const Polygon& part : outlineOf(*shown.drift))
    for (Polygon& piece : onPaper(sheet, part)) wish.region.push_back(std::move(piece));
  return wish;
}

void addLabels(Sheet& sheet, const std::vector<ShownDrift>& drifts, LabelMargin margin) {
  std::vector<LabelWish> wishes;
  std::vector<PaperPoint> marks;
  for (const ShownDrift& shown : drifts) {
    wishes.push_back(wishFor(sheet, shown, margin));
    for (const Point at : shown.plants) marks.push_back(toPaper(sheet, at));
  }
  for (LabelWish& wish : wishes) {
    Box near;
    for (const Polygon& part : wish.region) near.include(boundsOf(part));
    near = near.grown(2.0);
    for (const PaperPoint mark : marks)
      if (near.contains({mark.x, mark.y})) wish.avoid.push_back(mark);
  }
  margin.marks = std::move(marks);
  const auto placed = placeLabels(wishes, margin);
  for (std::size_t i = 0; i < drifts.size(); ++i) {
    PaperLabel label;
    label.drift = drifts[i].drift->id, label.code = drifts[i].code;
    label.count = static_cast<int>(drifts[i].plants.size());
    if (placed[i]) {
      label.text = placed[i]->text, label.leader = placed[i]->leader;
    } else {  // a full margin: on the drift itself, so that no count is ever left out
      label.text = {wishes[i].anchor, wishes[i].text, TextSize::Note, Align::Centre};
      label.text.bold = label.text.halo = true;
    }
    sheet.plantTotal += label.count;
    sheet.items.emplace_back(std::move(label));
  }
}

// The ground of every drift, for it may reach into this part where none of its plants does.
std::vector<DrawnDrift> plantingOf(const PlanSource& source, const Bed& bed,
                                   const std::vector<ShownDrift>& drifts) {
  std::vector<DrawnDrift> planting;
  for (const Drift* drift : driftsIn(source.yard, bed.id)) {
    planting.push_back({drift, source.facts.find(drift->species), {}});
    for (const ShownDrift& shown : drifts)
      if (shown.drift == drift) planting.back().plants = shown.plants;
  }
  return planting;
}

// Around the cross of the plant that the stake-out measures.
void addStakeRing(Sheet& sheet, const Drift& drift, const std::vector<Point>& shown) {
  if (drift.existing()) return;
  const Point at = measuredPlant(drift);
  if (std::find(shown.begin(), shown.end(), at) == shown.end()) return;
  PaperPath ring;
  ring.weight = Weight::Medium;
  ring.rings = {circleAround(toPaper(sheet, at), kStakeRing)};
  sheet.items.emplace_back(std::move(ring));
}

}  // namespace

std::string ShownDrift::label() const {
  const std::string_view sign = drift->existing() ? "existing" : "×";
  if (plants.size() == drift->plants.size())
    return fmt::format("{} {} {}", plants.size(), sign, code);
  return fmt::format("{} of {} {} {}", plants.size(), drift->plants.size(), sign, code);
}

std::vector<ShownDrift> shownDrifts(const PlanSource& source, const Bed& bed,
                                    const std::function<bool(Point)>& shown) {
  std::vector<ShownDrift> result;
  for (const Drift* drift : driftsIn(source.yard, bed.id)) {
    ShownDrift entry{drift,
                     source.facts.find(drift->species),
                     printable(codeOf(source.yard, drift->species)),
                     {}};
    for (const Plant& plant : drift->plants)
      if (shown(plant.at)) entry.plants.push_back(plant.at);
    if (!entry.plants.empty()) result.push_back(std::move(entry));
  }
  return result;
}

double widestLabel(const std::vector<ShownDrift>& drifts) {
  double widest = 0.0;
  for (const ShownDrift& shown : drifts)
    widest = std::max(widest, textWidth(shown.label(), TextSize::Note, Face::Bold));
  return widest;
}

void drawBed(Sheet& sheet, const PlanSource& source, const Bed& bed,
             const std::vector<ShownDrift>& drifts, const LabelMargin& margin,
             const Baseline& baseline) {
  addBedGround(sheet, bed);
  addSite(sheet, source.yard);
  addBedEdge(sheet, bed, Weight::Medium);
  addPlanting(sheet, plantingOf(source, bed, drifts));
  for (const ShownDrift& shown : drifts) addStakeRing(sheet, *shown.drift, shown.plants);
  addTrees(sheet, source.yard);
  addLabels(sheet, drifts, margin);
  addBaseline(sheet, baseline);
}

}  // namespace tussock
