// SPDX-License-Identifier: MIT
#include "tests/support/special_yards.h"

#include "core/edit/draft.h"
#include "tests/support/planted_yard.h"

namespace tussock::test {

namespace {

Yard withSettings(const Yard& yard, const std::string& name, UnitSystem units, double latitude) {
  Draft draft(yard);
  Settings settings = draft.yard().settings;
  if (!name.empty()) settings.name = name;
  settings.units = units;
  settings.latitude = Angle::degrees(latitude);
  draft.put(settings);
  return draft.yard();
}

Drift driftOf(std::int64_t& next, Id<Bed> bed, std::size_t species, std::vector<Point> places) {
  Drift drift;
  const Catalogue facts = smallCatalogue();
  drift.id = Id<Drift>(next++), drift.bed = bed;
  drift.species = facts.species()[species % 9].botanicalName;
  drift.spacing = Length::centimetres(30);
  for (const Point place : places) drift.plants.push_back({Id<Plant>(next++), place});
  return drift;
}

Yard nameless() {
  Draft draft(plantedYard());
  const Yard whole = draft.yard();
  for (Bed bed : whole.beds) bed.name.clear(), draft.put(bed);
  for (Building building : whole.buildings) building.name.clear(), draft.put(building);
  for (Tree tree : whole.trees) tree.name.clear(), draft.put(tree);
  for (Paving paving : whole.pavings) paving.name.clear(), draft.put(paving);
  Settings settings = whole.settings;
  settings.name.clear();
  draft.put(settings);
  return draft.yard();
}

// A strip 40 cm wide with many short drifts.
Yard narrowBed() {
  Draft draft{Yard{}};
  Bed bed;
  bed.id = Id<Bed>(10), bed.name = "Strip along the fence";
  bed.outline = rectangle({0, 0}, {12, 0.4});
  draft.put(bed);
  std::int64_t next = 20;
  for (std::size_t i = 0; i < 30; ++i) {
    const double x = 0.2 + 0.4 * static_cast<double>(i);
    draft.put(driftOf(next, bed.id, i, {{x, 0.2}}));
  }
  return draft.yard();
}

}  // namespace

Yard inMetres(const Yard& yard) {
  return withSettings(yard, "", UnitSystem::Metres, 48.0);
}

Yard fortyBeds() {
  Draft draft{Yard{}};
  Settings settings;
  settings.name = "Nursery field";
  draft.put(settings);
  std::int64_t next = 2000;
  for (int i = 0; i < 40; ++i) {
    Bed bed;
    const Point corner{2.0 * (i % 8), 1.6 * (i / 8)};
    bed.id = Id<Bed>(10 + i), bed.name = "Stock bed number " + std::to_string(i + 1);
    bed.outline = rectangle(corner, corner + Point{1.4, 1.0});
    draft.put(bed);
    draft.put(
        driftOf(next, bed.id, static_cast<std::size_t>(i),
                {corner + Point{0.4, 0.5}, corner + Point{0.7, 0.5}, corner + Point{1, 0.5}}));
  }
  return draft.yard();
}

Yard crowdedSite() {
  Draft draft(griddedYard(4, 2, 3, 1));
  for (int i = 0; i < 60; ++i) {
    Tree tree;
    tree.id = Id<Tree>(5000 + i),
    tree.name = "Witness tree " + std::to_string(i + 1) + " of the 1931 survey";
    tree.at = {-1.0 + 0.6 * (i % 10), -1.0 + 0.7 * (i / 10)};
    tree.crownRadius = Length::metres(1), tree.trunkDiameter = Length::centimetres(20);
    draft.put(tree);
  }
  return draft.yard();
}

Yard longNames() {
  Draft draft(plantedYard());
  const Yard whole = draft.yard();
  Settings settings = whole.settings;
  settings.name =
      "Friends of the Upper Patoka Watershed Native Seed Library and Community Demonstration "
      "Garden at the Old Railway Freight Depot";
  draft.put(settings);
  for (Bed bed : whole.beds) {
    bed.name += " between the accessible parking and the north entrance of the freight depot";
    bed.viewing.allRound = false;
    for (const double side : {0.0, 45.0, 90.0, 135.0, 180.0, 225.0, 270.0})
      bed.viewing.from.push_back(Angle::degrees(side));
    draft.put(bed);
  }
  for (Tree tree : whole.trees) {
    tree.name = "White oak planted by the graduating class of the consolidated school, 1931";
    draft.put(tree);
  }
  int number = 10;
  for (PlanCode code : whole.planCodes)
    code.code = "WWWMMMWWW" + std::to_string(number++), draft.put(code);
  return draft.yard();
}

std::vector<SpecialYard> specialYards() {
  return {{"empty", {}},
          {"nameless", nameless()},
          {"forty beds", fortyBeds()},
          {"sixty drifts", griddedYard(15, 6, 10, 6)},
          {"crowded site", crowdedSite()},
          {"long names", longNames()},
          {"metres", inMetres(plantedYard())},
          {"south", withSettings(plantedYard(), "Waikanae", UnitSystem::Metres, -40.9)},
          {"narrow bed", narrowBed()}};
}

}  // namespace tussock::test
