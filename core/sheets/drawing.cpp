// SPDX-License-Identifier: MIT
#include "core/sheets/drawing.h"

#include <algorithm>

#include "core/catalog/oklab.h"
#include "core/catalog/usual_flowers.h"
#include "core/geometry/overlay.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

constexpr Rgb kNoFlower{0xC9, 0xD3, 0xB4};  // leaf green where no flower colour is known
constexpr Rgb kLeaves{0x7F, 0x96, 0x5C};    // of plants whose flowers are lost on paper
constexpr double kScrap = 6.0;              // mm
constexpr double kSymbolShare = 0.9;        // of half the spacing, so that outlines do not merge

PaperPath look(Weight weight, Wash wash, Dash dash = Dash::Solid) {
  PaperPath path;
  path.weight = weight, path.wash = wash, path.dash = dash;
  return path;
}

Point mm(PaperPoint p) {
  return {p.x, p.y};
}

std::vector<PaperPoint> pointsOf(const Ring& ring) {
  std::vector<PaperPoint> points;
  for (const Point p : ring) points.push_back({p.x, p.y});
  return points;
}

Polygon windowOf(const Sheet& sheet) {
  return rectangle({sheet.drawing.left, sheet.drawing.top},
                   {sheet.drawing.right, sheet.drawing.bottom});
}

Ring ringOnPaper(const Sheet& sheet, const Ring& ring) {
  Ring result;
  for (const Point p : ring) result.push_back(mm(toPaper(sheet, p)));
  return result;
}

// The part of a segment inside the window, or nothing.
std::optional<std::pair<PaperPoint, PaperPoint>> clipped(const PaperBox& box, PaperPoint a,
                                                         PaperPoint b) {
  double low = 0.0, high = 1.0;
  const auto clip = [&](double step, double room) {
    if (step == 0.0) return room >= 0.0;
    if (step < 0.0) low = std::max(low, room / step);
    if (step > 0.0) high = std::min(high, room / step);
    return low < high;
  };
  const double dx = b.x - a.x, dy = b.y - a.y;
  if (!clip(-dx, a.x - box.left) || !clip(dx, box.right - a.x) || !clip(-dy, a.y - box.top) ||
      !clip(dy, box.bottom - a.y))
    return std::nullopt;
  return std::pair{PaperPoint{a.x + dx * low, a.y + dy * low},
                   PaperPoint{a.x + dx * high, a.y + dy * high}};
}

Polyline closedLine(const Ring& ring) {
  Polyline line = ring;
  if (!line.empty()) line.push_back(line.front());
  return line;
}

// What is cut off at the window has no outline along the cut.
bool isWhole(const Sheet& sheet, const Ring& ring) {
  return std::all_of(ring.begin(), ring.end(),
                     [&](Point p) { return insideWindow(sheet, toPaper(sheet, p)); });
}

bool isOffWindow(const Sheet& sheet, const Drift& drift) {
  Box box;
  for (const Plant& plant : drift.plants) {
    const PaperPoint at = toPaper(sheet, plant.at);
    box.include(Point{at.x, at.y});
  }
  const PaperBox& w = sheet.drawing;
  return !box.grown(drift.spacing.millimetres() / sheet.scale)
              .overlaps({{w.left, w.top}, {w.right, w.bottom}});
}

// What the window's edge leaves of a thing may be too little to tell what it is.
bool isScrap(const Sheet& sheet, const Polygon& site) {
  if (isWhole(sheet, site.outer)) return false;
  const auto parts = onPaper(sheet, site);
  return std::all_of(parts.begin(), parts.end(), [](const Polygon& part) {
    const Box box = boundsOf(part);
    return std::max(box.width(), box.height()) < kScrap;
  });
}

void addContext(Sheet& sheet, const Polygon& site, const PaperPath& style) {
  if (!isScrap(sheet, site)) addPolygon(sheet, site, style);
}

void addBarrier(Sheet& sheet, const Barrier& barrier) {
  std::vector<Polygon> footprint{barrier.footprint};
  if (barrier.footprint.empty()) footprint = strip(barrier.line, barrier.thickness);
  const Wash wash = barrier.kind == BarrierKind::Hedge ? Wash::Hedge : Wash::Building;
  const Dash dash = barrier.kind == BarrierKind::Fence ? Dash::Dashed : Dash::Solid;
  for (const Polygon& part : footprint) addContext(sheet, part, look(Weight::Fine, wash, dash));
}

void addWaterPoint(Sheet& sheet, Point at) {
  const PaperPoint p = toPaper(sheet, at);
  const PaperBox& w = sheet.drawing;
  if (p.x < w.left + 1.2 || p.x > w.right - 1.2 || p.y < w.top + 1.2 || p.y > w.bottom - 1.2)
    return;
  PaperPath drop = look(Weight::Fine, Wash::Ink);
  drop.rings = {
      {{p.x, p.y - 1.2}, {p.x + 1.0, p.y + 0.6}, {p.x, p.y + 1.2}, {p.x - 1.0, p.y + 0.6}}};
  sheet.items.emplace_back(std::move(drop));
}

void addBuriedLine(Sheet& sheet, const BuriedLine& buried) {
  for (const Polygon& zone : strip(buried.line, buried.handDigWidth * 2.0))
    addPolygon(sheet, zone, look(Weight::Hair, Wash::None, Dash::Dashed));
  addPolyline(sheet, buried.line, Weight::Bold, Dash::Dashed);
}

}  // namespace

std::vector<Polygon> onPaper(const Sheet& sheet, const Polygon& site) {
  if (site.empty()) return {};
  Polygon page{ringOnPaper(sheet, site.outer), {}};
  for (const Ring& hole : site.holes) page.holes.push_back(ringOnPaper(sheet, hole));
  return intersection(normalised(std::move(page)), windowOf(sheet));
}

void addPolygon(Sheet& sheet, const Polygon& site, const PaperPath& style) {
  const bool whole = isWhole(sheet, site.outer);
  for (const Polygon& part : onPaper(sheet, site)) {
    PaperPath path = style;
    path.stroked = whole;
    path.rings = {pointsOf(part.outer)};
    for (const Ring& hole : part.holes) path.rings.push_back(pointsOf(hole));
    sheet.items.emplace_back(std::move(path));
  }
  if (whole) return;
  addPolyline(sheet, closedLine(site.outer), style.weight, style.dash);
  for (const Ring& hole : site.holes)
    addPolyline(sheet, closedLine(hole), style.weight, style.dash);
}

// Pieces that follow on from one another stay one path, so that dashes run on round corners.
void addPolyline(Sheet& sheet, const Polyline& site, Weight weight, Dash dash) {
  PaperPath path = look(weight, Wash::None, dash);
  path.closed = false;
  for (std::size_t i = 1; i < site.size(); ++i) {
    const auto part = clipped(sheet.drawing, toPaper(sheet, site[i - 1]), toPaper(sheet, site[i]));
    if (!part) continue;
    const bool follows = !path.rings.empty() && path.rings.back().back() == part->first;
    if (!follows) path.rings.push_back({part->first});
    path.rings.back().push_back(part->second);
  }
  if (!path.rings.empty()) sheet.items.emplace_back(std::move(path));
}

bool insideWindow(const Sheet& sheet, PaperPoint p) {
  const PaperBox& w = sheet.drawing;
  return p.x >= w.left && p.x <= w.right && p.y >= w.top && p.y <= w.bottom;
}

void addSite(Sheet& sheet, const Yard& yard) {
  for (const Paving& paving : yard.pavings)
    addContext(sheet, paving.outline, look(Weight::Hair, Wash::Paving));
  for (const Building& building : yard.buildings)
    addContext(sheet, building.footprint, look(Weight::Medium, Wash::Building));
  for (const Barrier& barrier : yard.barriers) addBarrier(sheet, barrier);
  for (const LotLine& lot : yard.lotLines)
    addPolyline(sheet, closedLine(lot.outline.outer), Weight::Medium, Dash::DashDot);
  for (const WaterPoint& water : yard.waterPoints) addWaterPoint(sheet, water.at);
}

void addTrees(Sheet& sheet, const Yard& yard) {
  for (const SteppingPlace& step : yard.steppingPlaces)
    addPolygon(sheet, disc(step.at, step.radius), look(Weight::Fine, Wash::Paving));
  for (const BuriedLine& buried : yard.buriedLines) addBuriedLine(sheet, buried);
  for (const HeightLimit& limit : yard.heightLimits)
    addPolygon(sheet, limit.outline, look(Weight::Fine, Wash::None, Dash::Dashed));
  for (const Tree& tree : yard.trees) {
    addPolyline(sheet, closedLine(disc(tree.at, tree.crownRadius, 48).outer), Weight::Fine,
                Dash::Dashed);
    addPolygon(sheet, disc(tree.at, tree.trunkDiameter / 2.0, 16), look(Weight::Fine, Wash::Ink));
  }
}

void addBedGround(Sheet& sheet, const Bed& bed) {
  PaperPath soil = look(Weight::Hair, Wash::Soil);
  for (const Polygon& part : onPaper(sheet, bed.outline)) {
    soil.stroked = false;
    soil.rings = {pointsOf(part.outer)};
    for (const Ring& hole : part.holes) soil.rings.push_back(pointsOf(hole));
    sheet.items.emplace_back(soil);
  }
}

void addBedEdge(Sheet& sheet, const Bed& bed, Weight outline) {
  addPolyline(sheet, closedLine(bed.outline.outer), outline, Dash::Solid);
  for (const Ring& hole : bed.outline.holes)
    addPolyline(sheet, closedLine(hole), outline, Dash::Solid);
}

// From UF/IFAS layers (ground, foreground, midground, background): 0.15, 0.6 and 1.5 m.
Weight weightFor(const Species* species) {
  if (!species || species->height() <= Length::centimetres(40)) return Weight::Hair;
  if (species->height() <= Length::centimetres(80)) return Weight::Fine;
  return species->height() <= Length::centimetres(150) ? Weight::Medium : Weight::Bold;
}

Rgb washColour(const Species* species) {
  const Rgb flower = species ? flowerColourOf(*species).value_or(kNoFlower) : kNoFlower;
  return lostOnPaper(flower) ? kLeaves : flower;
}

void addDriftGround(Sheet& sheet, const Drift& drift, const Species* species, Weight outline) {
  if (isOffWindow(sheet, drift)) return;  // its outline is costly to find
  PaperPath path = look(outline, Wash::Drift);
  path.colour = washColour(species);
  for (const Polygon& part : outlineOf(drift)) addPolygon(sheet, part, path);
}

double symbolRadius(const Drift& drift, double scale) {
  return drift.spacing.millimetres() / scale / 2.0 * kSymbolShare;
}

void addPlant(Sheet& sheet, const Drift& drift, const Species* species, Point at, PlantMark mark) {
  PaperPlant plant;
  plant.at = toPaper(sheet, at);
  plant.radius = symbolRadius(drift, sheet.scale);
  if (species) plant.habit = species->habit, plant.form = flowerFormOf(*species);
  plant.colour = species ? flowerColourOf(*species).value_or(kNoFlower) : kNoFlower;
  plant.weight = std::min(weightFor(species), Weight::Fine);
  plant.existing = drift.existing();
  plant.mark = mark;
  sheet.items.emplace_back(plant);
}

}  // namespace tussock
