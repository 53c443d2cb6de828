// SPDX-License-Identifier: MIT
// The map engine itself: the same in a yard turned with its sun, and no memory asked for once it
// runs.
#include "core/sun/sun_tally.h"

#include <gtest/gtest.h>

#include "core/sun/map.h"
#include "core/sun/shade_tracks.h"
#include "core/sun/sun_work.h"
#include "tests/core/sun/ray_scene.h"
#include "tests/support/allocations.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

constexpr double kCell = 0.2;

// The scenes' ground is 16 m by 12 m.
SunWork mayDayIn(const Yard& yard, int stepMinutes = 10) {
  SunMapRequest request;
  request.area = {{0, 0}, {16, 12}};
  request.cell = Length::metres(kCell);
  request.stepMinutes = stepMinutes;
  request.day = 2026y / 5 / 9;
  Yard placed = yard;
  placed.settings.latitude = Angle::degrees(42);
  return workOf(placed, request);
}

void takeSteps(const Solids& solids, const std::vector<SeasonStep>& steps, Angle turn,
               std::vector<Shadow>& shadows, SunTally& tally) {
  for (const SeasonStep& step : steps) {
    castShadows(solids, {step.sun.azimuth + turn, step.sun.altitude}, step.day, shadows);
    tally.take(shadows, step.hours, step.half);
  }
}

// A quarter turn clockwise takes east to south: cells come to lie on cells.
Point quarterTurned(Point p) {
  return {p.y, -p.x};
}

Ring quarterTurned(Ring ring) {
  for (Point& p : ring) p = quarterTurned(p);
  return ring;
}

Polygon quarterTurned(Polygon polygon) {
  polygon.outer = quarterTurned(polygon.outer);
  for (Ring& hole : polygon.holes) hole = quarterTurned(hole);
  return polygon;
}

Yard quarterTurned(const Yard& yard) {
  Yard result = yard;
  result.settings.aspect = yard.settings.aspect + Angle::degrees(90);
  for (SkylinePoint& p : result.settings.skyline) p.azimuth = p.azimuth + Angle::degrees(90);
  for (Building building : yard.buildings) {
    building.footprint = quarterTurned(building.footprint);
    result.buildings = result.buildings.with(building);
  }
  for (Barrier barrier : yard.barriers) {
    barrier.line = quarterTurned(barrier.line);
    barrier.footprint = quarterTurned(barrier.footprint);
    result.barriers = result.barriers.with(barrier);
  }
  for (Tree tree : yard.trees) {
    tree.at = quarterTurned(tree.at);
    result.trees = result.trees.with(tree);
  }
  return result;
}

Grid quarterTurned(const Grid& grid) {
  Grid result{
      {grid.low.y, -grid.low.x - grid.columns * grid.cell}, grid.cell, grid.rows, grid.columns, {}};
  result.asked = AskedCells(result.columns, result.rows);
  return result;
}

class AnyTally : public testing::TestWithParam<unsigned> {};

// A crown that is partly buried in a slope is told by corners that do not turn with the light, so
// that its edge may move by a thousandth of its size: a few cells' centres lie there.
TEST_P(AnyTally, TurnedWithTheSunCountsTheSameHours) {
  std::mt19937_64 random(GetParam() + 2000);
  const test::RayScene scene = test::randomScene(random);
  const Yard yard = test::yardOf(scene);
  const SunWork work = mayDayIn(yard);
  const std::vector<SeasonStep> steps = seasonStepsOf(work);
  const Grid other = quarterTurned(work.grid);
  SunTally here(work.grid), there(other);
  std::vector<Shadow> shadows;
  takeSteps(solidsOf(yard), steps, Angle(), shadows, here);
  takeSteps(solidsOf(quarterTurned(yard)), steps, Angle::degrees(90), shadows, there);

  int differ = 0;
  int shaded = 0;
  std::vector<std::vector<double>> turned(static_cast<std::size_t>(other.rows));
  std::vector<double> hours;
  for (const HalfDay half : {HalfDay::BeforeNoon, HalfDay::AfterNoon}) {
    for (int row = 0; row < other.rows; ++row)
      there.count().row(half, row, turned[static_cast<std::size_t>(row)]);
    for (int row = 0; row < work.grid.rows; ++row) {
      here.count().row(half, row, hours);
      for (std::size_t column = 0; column < hours.size(); ++column) {
        const double same = turned[turned.size() - 1 - column][static_cast<std::size_t>(row)];
        differ += std::abs(hours[column] - same) > 1e-6;
        shaded += hours[column] < hours.front();
      }
    }
  }
  EXPECT_LE(differ, scene.slope > 0.0 ? 20 : 0);
  EXPECT_GT(shaded + static_cast<int>(scene.houses.empty() && scene.fences.empty() &&
                                      scene.blocks.empty()),
            0);
}

INSTANTIATE_TEST_SUITE_P(RandomScenes, AnyTally, testing::Range(1u, 21u));

// The first day finds out how much room is needed; the same day again needs no more.
TEST(SunTallyTest, AStepAllocatesNothing) {
  if (!test::countsAllocations()) GTEST_SKIP() << "The sanitizers keep memory themselves.";
  std::mt19937_64 random(7);
  test::RayScene scene = test::randomScene(random);
  while (scene.houses.empty() || scene.fences.empty() || scene.trees.size() < 2)
    scene = test::randomScene(random);
  const Yard yard = test::yardOf(scene);
  const SunWork work = mayDayIn(yard, 2);
  const std::vector<SeasonStep> steps = seasonStepsOf(work);
  ASSERT_GT(steps.size(), 300u);
  SunTally tally(work.grid);
  std::vector<Shadow> shadows;
  takeSteps(work.solids, steps, Angle(), shadows, tally);
  tally.clear();
  const std::size_t before = test::allocations();
  takeSteps(work.solids, steps, Angle(), shadows, tally);
  EXPECT_EQ(test::allocations() - before, 0u);
}

// A whole map at steps ten times as fine: what is asked for grows with the cells, not the steps.
TEST(SunTallyTest, AMapAllocatesNoMoreForFinerSteps) {
  if (!test::countsAllocations()) GTEST_SKIP() << "The sanitizers keep memory themselves.";
  std::mt19937_64 random(7);
  Yard yard = test::yardOf(test::randomScene(random));
  yard.settings.latitude = Angle::degrees(42);
  SunMapRequest request;
  request.area = {{0, 0}, {16, 12}};
  request.cell = Length::metres(0.4);
  request.day = 2026y / 5 / 9;
  const auto allocationsAt = [&](int minutes) {
    request.stepMinutes = minutes;
    const std::size_t before = test::allocations();
    EXPECT_TRUE(computeSunMap(yard, request));
    return test::allocations() - before;
  };
  const std::size_t coarse = allocationsAt(10);  // some 90 steps
  const std::size_t fine = allocationsAt(1);     // some 870
  // Vectors that hold some steps' shadows row by row double their room a few times.
  EXPECT_LT(static_cast<double>(fine), static_cast<double>(coarse) + 4.0 * 30.0 + 20.0);
}

}  // namespace
}  // namespace tussock
