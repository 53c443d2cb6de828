// SPDX-License-Identifier: MIT
#include <cmath>
#include <set>
#include <utility>

#include <gtest/gtest.h>

#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"

namespace tussock {
namespace {

using namespace test;

TEST(Plan, ABedTooLargeForItsScaleGoesOnTilesAtThatScale) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  const Plan plan = planAt(yard, 24);
  expectAllAgree(yard, plan);
  expectSoundPages(plan);
  int parts = 0;
  for (const Sheet& sheet : plan.sheets) {
    if (sheet.title.find("part") == std::string::npos) continue;
    ++parts;
    EXPECT_EQ(sheet.scale, 24);
    EXPECT_TRUE(hasText(sheet, "match line"));
  }
  EXPECT_GT(parts, 3);
}

// Every plant in one part only, and the parts' grounds meet edge to edge.
TEST(Plan, TilesCoverTheBedExactlyOnce) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  std::set<std::pair<long, long>> seen;
  std::size_t drawn = 0;
  double area = 0.0;
  for (const Sheet& sheet : planAt(yard, 24).sheets) {
    if (sheet.title.find("part") == std::string::npos) continue;
    area += sheet.drawing.width() * sheet.drawing.height() * 24 * 24 / 1e6;
    for (const PaperPlant& plant : itemsOf<PaperPlant>(sheet)) {
      const double x = sheet.siteAtTopLeft.x + (plant.at.x - sheet.drawing.left) * 0.024;
      const double y = sheet.siteAtTopLeft.y - (plant.at.y - sheet.drawing.top) * 0.024;
      seen.insert({std::lround(x * 1e4), std::lround(y * 1e4)});
      ++drawn;
      EXPECT_GE(plant.at.x, sheet.drawing.left - 1e-9);
      EXPECT_LE(plant.at.x, sheet.drawing.right + 1e-9);
      EXPECT_GE(plant.at.y, sheet.drawing.top - 1e-9);
      EXPECT_LE(plant.at.y, sheet.drawing.bottom + 1e-9);
    }
  }
  EXPECT_EQ(drawn, 300u);
  EXPECT_EQ(seen.size(), 300u);
  EXPECT_GE(area, 15.0 * 6.0);
}

TEST(Plan, AHugeBedStillMakesFiniteExactPages) {
  const Yard yard = griddedYard(900, 600, 12, 8);
  const Plan plan = planOf(yard);
  expectAllAgree(yard, plan);
  EXPECT_LE(plan.sheets.size(), 60u);
}

}  // namespace
}  // namespace tussock
