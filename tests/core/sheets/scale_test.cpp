// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"

namespace tussock {
namespace {

using namespace test;

double farthestApart(const std::vector<Point>& points) {
  double most = 0.0;
  for (const Point a : points)
    for (const Point b : points) most = std::max(most, distance(a, b));
  return most;
}

TEST(Plan, DistancesOnPaperAreExactlyToScale) {
  const Yard yard = plantedYard();
  for (const Sheet& sheet : planOf(yard).sheets) {
    const auto plants = itemsOf<PaperPlant>(sheet);
    if (plants.size() < 2 || sheet.title == "Overview") continue;
    std::vector<Point> site;
    for (const Drift* drift :
         driftsIn(yard, yard.beds.find(Id<Bed>(sheet.title == "Walk bed" ? 10 : 11))->id))
      for (const Plant& plant : drift->plants) site.push_back(plant.at);
    ASSERT_EQ(site.size(), plants.size());
    std::vector<Point> paper;
    for (const PaperPlant& plant : plants) paper.push_back({plant.at.x, plant.at.y});
    EXPECT_NEAR(farthestApart(paper), farthestApart(site) * 1000.0 / sheet.scale, 1e-9);
  }
}

// At 1/4 in = 1 ft a 20 ft bed measures 5.000 in; at 1:50, 6 m is 120 mm (arithmetic).
TEST(Plan, KnownLengthsComeOutAtTheirPaperSize) {
  const Yard bed = griddedYard(20 * 0.3048, 1.5, 3, 1);
  const Sheet quarter = planAt(bed, 48).sheets[1];
  EXPECT_NEAR(toPaper(quarter, {20 * 0.3048, 0}).x - toPaper(quarter, {0, 0}).x, 5.0 * 25.4, 1e-9);
  const Sheet fifty = planAt(griddedYard(6, 1.5, 3, 1), 50).sheets[1];
  EXPECT_NEAR(toPaper(fifty, {6, 0}).x - toPaper(fifty, {0, 0}).x, 120.0, 1e-9);
}

TEST(Plan, ABedTakesTheLargestUsualScaleThatFits) {
  EXPECT_EQ(planOf(griddedYard(3, 1.5, 3, 1)).sheets[1].scale, 24);
  EXPECT_EQ(planOf(griddedYard(6, 2.5, 3, 1)).sheets[1].scale, 32);
  EXPECT_EQ(planOf(griddedYard(9, 4, 3, 1)).sheets[1].scale, 40);
}

// Architects' scales: 12 over the inches to the foot.
TEST(Scale, AreDescribedAsARuleShowsThem) {
  const auto feet = UnitSystem::FeetInches;
  EXPECT_EQ(describeScale(24, feet), "1:24 (1/2 in = 1 ft)");
  EXPECT_EQ(describeScale(48, feet), "1:48 (1/4 in = 1 ft)");
  EXPECT_EQ(describeScale(64, feet), "1:64 (3/16 in = 1 ft)");
  EXPECT_EQ(describeScale(128, feet), "1:128 (3/32 in = 1 ft)");
  EXPECT_EQ(describeScale(36, feet), "1:36 (1 in = 3 ft)");
  EXPECT_EQ(describeScale(40, feet), "1:40 (0.3 in = 1 ft)");
  EXPECT_EQ(describeScale(8, feet), "1:8 (1 1/2 in = 1 ft)");
  EXPECT_EQ(describeScale(120, feet), "1:120 (1 in = 10 ft)");
  EXPECT_EQ(describeScale(720, feet), "1:720 (1 in = 60 ft)");
  EXPECT_EQ(describeScale(50, UnitSystem::Metres), "1:50 (2 cm = 1 m)");
}

// The architects' scales, as inches to the foot, with their ratios.
TEST(Scale, AreReadInBothForms) {
  const std::vector<std::pair<std::string, int>> known{
      {"1:24", 24},           {"1 : 50", 50},
      {"1/2 in = 1 ft", 24},  {"3/32 in = 1 ft", 128},
      {"1/8\" = 1'-0\"", 96}, {"1-1/2 in = 1 ft", 8},
      {"3 in = 1 ft", 4},     {"1 in = 20 ft", 240},
      {"2 cm = 1 m", 50}};
  for (const auto& [text, scale] : known) EXPECT_EQ(parseScale(text), scale) << text;
  for (const char* wrong : {"", "24", "1:0", "1:", ":24", "0:24", "1:2001", "1:24.5", "1:-24",
                            "big", "1 in = ", "1:nan", "2:1"})
    EXPECT_EQ(parseScale(wrong), std::nullopt) << wrong;
}

}  // namespace
}  // namespace tussock
