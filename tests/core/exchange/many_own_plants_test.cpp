// SPDX-License-Identifier: MIT
// Plants of one's own by the thousand: what was worked out as they were read is not worked out
// again, and comes to the same.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/edit_plants.h"
#include "core/catalog/own_plants.h"
#include "core/exchange/plant_csv.h"
#include "tests/support/plant_text.h"
#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

// New plants, some with sources, and values over published ones.
std::string tableOfMany() {
  std::string csv = test::plantHeader();
  for (int i = 0; i < 300; ++i)
    csv += test::plantRow({{"botanical_name", "Monarda nova" + std::to_string(i)},
                           {"spacing_cm", std::to_string(20 + i % 60)},
                           {"deer_resistant", i % 5 == 0 ? "unknown" : "yes"},
                           {"sources", i % 2 == 0 ? "FNA: spacing_cm family; USDA: sun" : ""}});
  csv += test::plantRow({{"botanical_name", test::kBergamot}, {"notes", "by the gate"}});
  csv += test::plantRow({{"botanical_name", "Monarda wrong"}, {"spacing_cm", "wide"}});
  return csv;
}

TEST(ManyOwnPlants, AsTheyWereReadAreTheSameAsReadAgain) {
  const Catalogue published = test::tinyCatalogue();
  const OwnPlantsReading reading = readOwnPlants(tableOfMany(), "mine.csv", published);
  ASSERT_EQ(reading.plants.size(), 301u);
  ASSERT_EQ(reading.species.size(), reading.plants.size());
  const Yard yard;
  const PlantLayers layers{published, reading.plants, yard};
  const MergedPlants again = mergePlants(layers), ready = mergePlants(layers, reading.species);
  EXPECT_TRUE(ready.errors.empty());
  EXPECT_EQ(ready.catalogue.species(), again.catalogue.species());
  EXPECT_EQ(plantsCsv(ready.catalogue), plantsCsv(again.catalogue));
}

TEST(ManyOwnPlants, TheYardsValuesStillGoBeforeThoseRead) {
  const Catalogue published = test::tinyCatalogue();
  const OwnPlantsReading reading = readOwnPlants(tableOfMany(), "mine.csv", published);
  Yard yard;
  IdSource ids(2);
  const std::string name = "Monarda nova7";
  const PlantLayers before{published, reading.plants, yard};
  yard = apply(yard, setOwnValue(before, name, "spacing_cm", "99", ids).edit);
  const MergedPlants merged = mergePlants({published, reading.plants, yard}, reading.species);
  EXPECT_NEAR(merged.catalogue.find(name)->spacing.metres(), 0.99, 1e-12);
  EXPECT_NEAR(merged.catalogue.find("Monarda nova8")->spacing.metres(), 0.28, 1e-12);
}

TEST(ManyOwnPlants, KeepOneEntryForAllValuesOfTheSameSource) {
  const Catalogue published = test::tinyCatalogue();
  const OwnPlantsReading reading = readOwnPlants(tableOfMany(), "mine.csv", published);
  for (const Species& species : reading.species) {
    const bool isNew = species.botanicalName != test::kBergamot;
    EXPECT_TRUE(!isNew || species.sources.size() <= 3u) << species.botanicalName;
  }
  const Species& first = reading.species[1];
  ASSERT_EQ(first.botanicalName, "Monarda nova0");
  EXPECT_EQ(first.sourceOf("spacing_cm"), "own FNA");
  EXPECT_EQ(first.sourceOf("sun"), "own USDA");
  EXPECT_EQ(first.sourceOf("spread_cm"), "own");
  EXPECT_EQ(first.sourceOf("soil"), "") << "nothing was given";
  EXPECT_EQ(first.sourceOf("spacing"), "") << "only a part of a name";
}

}  // namespace
}  // namespace tussock
