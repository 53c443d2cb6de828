// SPDX-License-Identifier: MIT
#include "core/sheets/overview.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/sheets/cautions.h"
#include "core/sheets/drawing.h"
#include "core/sheets/scale.h"

namespace tussock {

namespace {

constexpr double kAround = 4.0;        // mm of paper around all that is drawn
constexpr double kWidest = 45.0;       // mm of a name
constexpr double kLeastSymbol = 1.5;   // mm of radius
constexpr double kSmallestSite = 1.0;  // metres; a single point still gets a sheet
constexpr std::string_view kKey =
    "Dash-dot: lot line. Dashed: crowns, fences and the strips along buried lines to dig by hand. "
    "The figure after a bed's name is its plants.";

// A name and the ground it belongs to; the more important first.
struct Named {
  std::string name;
  Polygon ground;
  Effort effort = Effort::Beside;
  Face face = Face::Regular;
};

std::vector<Named> namedThings(const Yard& yard) {
  std::vector<Named> things;
  const auto add = [&](const std::string& name, const Polygon& ground) {
    if (!name.empty() && !ground.empty())
      things.push_back({printable(name), ground, Effort::Beside, Face::Regular});
  };
  for (const Bed& bed : yard.beds) {
    int plants = 0;
    for (const Drift* drift : driftsIn(yard, bed.id))
      plants += static_cast<int>(drift->plants.size());
    const std::string name = bed.name.empty() ? "Bed" : printable(bed.name);
    things.push_back(
        {fmt::format("{} ({})", name, plants), bed.outline, Effort::Always, Face::Bold});
  }
  for (const Building& building : yard.buildings) add(building.name, building.footprint);
  for (const Tree& tree : yard.trees) add(tree.name, disc(tree.at, tree.crownRadius));
  for (const Paving& paving : yard.pavings) add(paving.name, paving.outline);
  for (const WaterPoint& water : yard.waterPoints)
    add(water.name, disc(water.at, Length::centimetres(10), 8));
  for (const BuriedLine& buried : yard.buriedLines)
    if (!buried.line.empty())
      add(buried.name.empty() ? buried.kind : buried.name,
          disc((buried.line[0] + buried.line[buried.line.size() / 2]) * 0.5, Length::centimetres(5),
               8));
  return things;
}

// Above, below, right and left of a thing, in the middle and at its corners.
std::vector<PaperPoint> placesBeside(const LabelWish& wish) {
  Box box;
  for (const Polygon& part : wish.region) box.include(boundsOf(part));
  if (box.empty()) return {};
  const double half = textWidth(wish.text, TextSize::Note, Face::Bold) / 2.0 + 2.0;
  const double above = box.low.y - 1.8, below = box.high.y + 3.8;
  const double middle = box.centre().y + 1.0;
  std::vector<PaperPoint> places;
  for (const double y : {above, below})
    for (const double x : {box.centre().x, box.high.x, box.low.x}) places.push_back({x, y});
  for (const double y : {middle, box.high.y, box.low.y})
    for (const double x : {box.high.x + half, box.low.x - half}) places.push_back({x, y});
  return places;
}

std::vector<Polygon> obstaclesOn(const Sheet& sheet, const Yard& yard) {
  std::vector<Polygon> obstacles;
  const auto add = [&](const Polygon& site) {
    for (Polygon& part : onPaper(sheet, site)) obstacles.push_back(std::move(part));
  };
  const double lineMetres = sheet.scale / 1000.0;  // a millimetre on paper
  for (const Bed& bed : yard.beds) add(bed.outline);
  for (const Building& building : yard.buildings) add(building.footprint);
  for (const Paving& paving : yard.pavings) add(paving.outline);
  for (const Barrier& barrier : yard.barriers) {
    add(barrier.footprint);
    for (const Polygon& part : strip(barrier.line, barrier.thickness)) add(part);
  }
  for (const BuriedLine& buried : yard.buriedLines)
    for (const Polygon& part : strip(buried.line, Length::metres(lineMetres))) add(part);
  for (const LotLine& lot : yard.lotLines)
    for (std::size_t i = 0; i < lot.outline.outer.size(); ++i)
      for (const Polygon& part :
           strip({lot.outline.outer[i], lot.outline.outer[(i + 1) % lot.outline.outer.size()]},
                 Length::metres(lineMetres)))
        add(part);
  for (const WaterPoint& water : yard.waterPoints)
    add(disc(water.at, Length::metres(1.3 * lineMetres), 12));
  for (const Tree& tree : yard.trees)
    add(disc(tree.at, std::max(tree.trunkDiameter * 0.5, Length::metres(lineMetres)), 12));
  return obstacles;
}

// Smaller than that, plants are a smudge and only the drifts are drawn.
bool symbolsTell(const Yard& yard, double scale) {
  return std::all_of(yard.drifts.begin(), yard.drifts.end(), [&](const Drift& drift) {
    return symbolRadius(drift, scale) >= kLeastSymbol;
  });
}

std::vector<LabelWish> wishesFor(const Sheet& sheet, const Yard& yard) {
  std::vector<LabelWish> wishes;
  std::vector<PaperPoint> marks;
  if (symbolsTell(yard, sheet.scale))
    for (const Drift& drift : yard.drifts)
      for (const Plant& plant : drift.plants) marks.push_back(toPaper(sheet, plant.at));
  for (const Tree& tree : yard.trees) marks.push_back(toPaper(sheet, tree.at));
  for (const Named& thing : namedThings(yard)) {
    LabelWish wish{shortened(thing.name, TextSize::Note, thing.face, kWidest), {}, {}, {}};
    wish.effort = thing.effort, wish.face = thing.face;
    const PaperPoint at = toPaper(sheet, labelPoint(thing.ground));
    wish.anchor = {std::clamp(at.x, sheet.drawing.left, sheet.drawing.right),
                   std::clamp(at.y, sheet.drawing.top, sheet.drawing.bottom)};
    wish.region = onPaper(sheet, thing.ground);
    wish.avoid = marks;
    wish.beside = placesBeside(wish);
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

void addNames(Sheet& sheet, const Yard& yard, LabelMargin margin) {
  margin.keepOff = obstaclesOn(sheet, yard);
  for (const auto& label : placeLabels(wishesFor(sheet, yard), margin)) {
    if (!label) continue;
    if (!label->leader.empty()) {
      PaperPath leader;
      leader.rings = {label->leader};
      leader.closed = false, leader.weight = Weight::Hair;
      sheet.items.emplace_back(std::move(leader));
    }
    sheet.items.emplace_back(label->text);
  }
}

void drawSite(Sheet& sheet, const PlanSource& source) {
  addSite(sheet, source.yard);
  for (const Bed& bed : source.yard.beds) addBedGround(sheet, bed, Weight::Bold);
  const bool symbols = symbolsTell(source.yard, sheet.scale);
  for (const Drift& drift : source.yard.drifts) {
    const Species* species = source.facts.find(drift.species);
    addDriftGround(sheet, drift, species, symbols ? weightFor(species) : Weight::Hair);
    if (!symbols) continue;
    for (const Plant& plant : drift.plants)
      if (insideWindow(sheet, toPaper(sheet, plant.at))) addPlant(sheet, drift, species, plant.at);
  }
  addTrees(sheet, source.yard);
}

Box siteOf(const Yard& yard) {
  Box box = boundsOf(yard);
  if (!box.empty() && box.width() < kSmallestSite && box.height() < kSmallestSite)
    box = box.grown(kSmallestSite);
  return box;
}

// Names stand on and beside things, and in what room the largest scale leaves around them.
DrawingNeed needAt(const Box& site, int scale) {
  const double mm = 1000.0 / scale;
  return {site.width() * mm + 2.0 * kAround,
          site.height() * mm + 2.0 * kAround,
          0,
          0.0,
          {},
          std::string(kKey)};
}

HeadText headFor(const PlanSource& source, int plants) {
  const std::size_t beds = source.yard.beds.size();
  return {
      {fmt::format("{} plants in {} {}", plants, beds, beds == 1 ? "bed" : "beds"), "North is up."},
      {}};
}

std::vector<Sheet> emptyOverview(const PlanSource& source) {
  Sheet sheet = blankPage(source.options.paper, Orientation::Portrait, "Overview");
  addHead(sheet, {{"Nothing is drawn yet. Draw a bed and set drifts in it, then print again."}, {}},
          source.units());
  addCautions(sheet, cautionLines(source.yard, {}, "", contentOf(sheet).width()));
  return {std::move(sheet)};
}

std::vector<Sheet> overviewAt(const PlanSource& source, const std::vector<ScheduleRow>& rows,
                              const Box& site, int scale, const PageFit& fit,
                              const std::string& total) {
  Sheet sheet = blankPage(source.options.paper, fit.orientation, "Overview");
  sheet.scale = scale, sheet.drawing = fit.margin.window;
  const double around = kAround * scale / 1000.0;
  sheet.siteAtTopLeft = {site.low.x - around, site.high.y + around};
  addHead(sheet, headFor(source, totalOf(rows)), source.units());
  drawSite(sheet, source);
  addNames(sheet, source.yard, fit.margin);
  addCautions(sheet, fit.cautions);
  if (fit.schedule == SchedulePlace::Here && !rows.empty())
    ScheduleTable(rows, contentOf(sheet).width())
        .draw(sheet, fit.scheduleAt, 0, rows.size(), total);
  std::vector<Sheet> sheets{std::move(sheet)};
  if (fit.schedule == SchedulePlace::NextPage)
    for (Sheet& page : schedulePages(source, "Whole plant schedule", rows, fit.orientation, total))
      sheets.push_back(std::move(page));
  return sheets;
}

}  // namespace

std::vector<Sheet> overviewSheets(const PlanSource& source, const std::string& totalText) {
  const Box site = siteOf(source.yard);
  if (site.empty()) return emptyOverview(source);
  const auto rows = scheduleRows(scheduleOf(source.yard, source.facts), source.units());
  const auto need = [&](int scale) { return needAt(site, scale); };
  std::vector<int> scales = siteScales(source.units());
  while (true) {
    if (const auto fit = fitOnPage(source, scales, need, rows))
      return overviewAt(source, rows, site, fit->scale, *fit, totalText);
    scales = {scales.back() * 2};  // larger than any garden; still exact
  }
}

}  // namespace tussock
