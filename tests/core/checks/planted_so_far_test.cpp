// SPDX-License-Identifier: MIT
// What a fill shows while it goes on may be kept: it is planted by the rules and told.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/checks/checked_fill.h"
#include "core/checks/registry.h"
#include "tests/support/random_beds.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

const Catalogue& allPlants() {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  return catalogue;
}

std::vector<FillResult> shownOf(const Yard& yard, const FillRequest& request) {
  std::vector<FillResult> shown;
  IdSource ids(largestId(yard) + 1);
  const auto finished =
      fillChecked(yard, allPlants(), nullptr, request, ids, {}, [&](const FillProgress& progress) {
        if (auto now = plantedSoFar(yard, allPlants(), request, progress, ids))
          shown.push_back(std::move(*now));
      });
  EXPECT_TRUE(finished.has_value());
  return shown;
}

// Spacing, set-back, odd counts, one piece: how a plant may stand, whatever the choice of species.
TEST(PlantedSoFar, KeepsTheRulesOfPlacingFromTheFirst) {
  for (const unsigned seed : {0u, 1u, 3u}) {
    const test::RandomBed random = test::randomBed(seed);
    FillRequest request;
    request.bed = random.bed;
    const std::vector<FillResult> shown = shownOf(random.yard, request);
    ASSERT_GE(shown.size(), 2u) << seed;
    for (const FillResult& now : shown) {
      EXPECT_TRUE(now.stopped && now.proposed && !now.plants.empty());
      const Yard after = apply(random.yard, now.edit);
      EXPECT_GT(after.drifts.size(), 0u);
      for (const Finding& finding :
           runChecks({after, allPlants(), nullptr}).value_or(std::vector<Finding>()))
        for (const CheckId rule : {CheckId::Spacing, CheckId::SetBack, CheckId::OddCount,
                                   CheckId::Pieces, CheckId::Obstructed})
          EXPECT_NE(finding.check, rule) << seed << ' ' << finding.measured;
    }
  }
}

TEST(PlantedSoFar, IsCalledAndToldAsTheWholeWouldBe) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))").viewing("S");
  builder.drift("Monarda fistulosa", test::row(9, 0.6, {1.0, 2.0})).spaced(0.6);
  FillRequest request;
  request.bed = builder.lastBed();
  request.what = FillWhat::EmptyPart;
  const std::vector<FillResult> shown = shownOf(builder.build(), request);
  ASSERT_FALSE(shown.empty());
  EXPECT_EQ(shown.front().edit.label, "Fill the gaps of Meadow");
  EXPECT_THAT(shown.front().notes,
              testing::Contains(testing::HasSubstr("were proposed from the plant facts")));
}

// Ground covers and bulbs come after the main layer.
TEST(PlantedSoFar, NamesWhatOfTheListIsNotPlantedYet) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0))").viewing("S");
  FillRequest request;
  request.bed = builder.lastBed();
  request.plants = {{"Zizia aurea", 0.0}, {"Echinacea purpurea", 0.0}, {"Carex pensylvanica", 0.1}};
  const std::vector<FillResult> shown = shownOf(builder.build(), request);
  ASSERT_GE(shown.size(), 2u);
  const auto names = [](const FillResult& result) {
    return testing::Value(result.notes,
                          testing::Contains(testing::HasSubstr(
                              "Not planted by then: Pennsylvania sedge. Fill the gaps")));
  };
  EXPECT_TRUE(names(shown.front()));
  EXPECT_FALSE(names(shown.back()));
}

TEST(PlantedSoFar, IsNothingWhileDriftsOnlyGrow) {
  const test::RandomBed random = test::randomBed(0);
  FillRequest request;
  request.bed = random.bed;
  FillProgress growing;
  growing.grown.resize(1);
  growing.grown.front().species = "Zizia aurea";
  EXPECT_FALSE(
      plantedSoFar(random.yard, allPlants(), request, growing, IdSource(1000)).has_value());
}

}  // namespace
}  // namespace tussock
