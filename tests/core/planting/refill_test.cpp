// SPDX-License-Identifier: MIT
// One species planted anew: its drifts stay where they were and about as large, in odd counts, and
// nothing else changes.
#include <algorithm>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

using test::Filled;
using test::filled;
using test::filledBed;
using testing::Contains;
using testing::HasSubstr;

constexpr auto kBorder = "POLYGON ((0 0, 8 0, 8 3.5, 0 3.5, 0 0))";

std::vector<const Drift*> driftsOf(std::string_view species, const Yard& yard) {
  std::vector<const Drift*> drifts;
  for (const Drift& drift : yard.drifts)
    if (drift.species == species) drifts.push_back(&drift);
  return drifts;
}

std::size_t countOf(std::string_view species, const Yard& yard) {
  std::size_t plants = 0;
  for (const Drift* drift : driftsOf(species, yard)) plants += drift->plants.size();
  return plants;
}

Filled anew(const Yard& yard, const std::string& species, int seed) {
  FillRequest request;
  request.what = FillWhat::OneSpecies;
  request.species = species;
  request.seed = seed;
  return filled(yard, request);
}

// Metres from the place to the nearest where one of the species stood.
double awayFrom(std::string_view species, const Yard& yard, Point p) {
  double nearest = 1e9;
  for (const Drift* drift : driftsOf(species, yard))
    for (const Plant& plant : drift->plants) nearest = std::min(nearest, distance(p, plant.at));
  return nearest;
}

std::set<std::string> speciesIn(const Yard& yard) {
  std::set<std::string> species;
  for (const Drift& drift : yard.drifts) species.insert(drift.species);
  return species;
}

TEST(Refill, StaysWhereTheSpeciesStoodAndAsMany) {
  const Filled full = filledBed(kBorder);
  ASSERT_GT(speciesIn(full.after).size(), 4u);
  for (const std::string& species : speciesIn(full.after)) {
    SCOPED_TRACE(species);
    const Filled bed = anew(full.after, species, 5);
    const std::size_t before = countOf(species, full.after);
    EXPECT_LE(countOf(species, bed.after), before);
    EXPECT_GE(countOf(species, bed.after) + 2, before);
    EXPECT_LE(driftsOf(species, bed.after).size(), driftsOf(species, full.after).size());
    for (const Drift* drift : driftsOf(species, bed.after)) {
      EXPECT_EQ(drift->plants.size() % 2, 1u);
      for (const Plant& plant : drift->plants)
        EXPECT_LE(awayFrom(species, full.after, plant.at), 1.5 * drift->spacing.metres());
    }
    for (const Drift& drift : full.after.drifts)
      if (drift.species != species) {
        ASSERT_NE(bed.after.drifts.find(drift.id), nullptr);
        EXPECT_EQ(*bed.after.drifts.find(drift.id), drift);
      }
    EXPECT_LE(bed.broken(), full.broken());
  }
}

TEST(Refill, IsAnotherArrangementForAnotherSeed) {
  const Filled full = filledBed(kBorder);
  const std::string species = full.after.drifts.begin()->species;
  EXPECT_NE(anew(full.after, species, 5).after, anew(full.after, species, 6).after);
  EXPECT_EQ(anew(full.after, species, 5).after, anew(full.after, species, 5).after);
}

// The half of the bed beside a lone drift is free, and stays so.
TEST(Refill, DoesNotRunIntoEmptyGround) {
  const Filled full = filledBed(kBorder);
  const Drift* lone = &*full.after.drifts.begin();
  for (const Drift& drift : full.after.drifts)
    if (drift.layer == Layer::Main && drift.plants.size() > lone->plants.size()) lone = &drift;
  Draft draft(full.after);
  for (const Drift& drift : full.after.drifts)
    if (drift.id != lone->id) draft.remove(drift.id);
  const Filled bed = anew(draft.yard(), lone->species, 3);
  EXPECT_EQ(countOf(lone->species, bed.after), lone->plants.size());
  for (const Drift* drift : driftsOf(lone->species, bed.after))
    for (const Plant& plant : drift->plants)
      EXPECT_LE(awayFrom(lone->species, full.after, plant.at), 1.5 * drift->spacing.metres());
}

// Where paving has been laid over half of it there is room for the other half, and it says so.
TEST(Refill, SaysWhenTheGroundHasBecomeLess) {
  const Filled full = filledBed(kBorder, {{"Schizachyrium scoparium", 0.0}});
  const std::size_t before = countOf("Schizachyrium scoparium", full.after);
  Draft draft(full.after);
  IdSource ids(largestId(full.after) + 1);
  Paving paving;
  paving.id = ids.take<Paving>();
  paving.outline = rectangle({4, 0}, {8, 3.5});
  draft.put(paving);
  const Filled bed = anew(draft.yard(), "Schizachyrium scoparium", 3);
  EXPECT_LT(countOf("Schizachyrium scoparium", bed.after), before * 2 / 3);
  EXPECT_GT(countOf("Schizachyrium scoparium", bed.after), before / 3);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("find room where they stood")));
}

}  // namespace
}  // namespace tussock
