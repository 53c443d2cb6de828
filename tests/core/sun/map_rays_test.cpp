// SPDX-License-Identifier: MIT
// The sun map against rays traced one by one, cell by cell and step by step: 200 random scenes of
// houses with L-shaped plans, gables, hips, eaves and open undersides, buildings and hedges on free
// outlines, some around a court, fences that bend, with openness, and trees of all crowns, half of
// them on a slope and a third with a skyline, north and south.
#include <gtest/gtest.h>

#include "core/sun/map.h"
#include "core/sun/sun_days.h"
#include "tests/core/sun/ray_scene.h"

namespace tussock {
namespace {

struct Bounds {
  double low = 0.0, high = 0.0;
};

class MapAgainstRays : public testing::TestWithParam<unsigned> {
 protected:
  std::mt19937_64 random{GetParam()};
  test::RayScene scene = test::randomScene(random);
  Yard yard = test::yardOf(scene);
  Angle latitude = Angle::degrees(std::uniform_real_distribution<double>(-60, 70)(random));
  int dayOfYear = std::uniform_int_distribution<int>(0, 364)(random);
  Date day = Date(std::chrono::sys_days(
                      Date(std::chrono::year(2026), std::chrono::January, std::chrono::day(1))) +
                  std::chrono::days(dayOfYear));

  // Where the edge of a shadow runs close by a cell's centre, either answer will do. On a slope a
  // crown that is partly buried is told by corners, to some thousandth of its size.
  [[nodiscard]] Bounds traced(Point p, const std::vector<SunStep>& steps, HalfDay half) const {
    const double doubt = scene.slope > 0.0 ? 0.0015 : 1e-6;
    Bounds result;
    for (const SunStep& step : steps) {
      if (step.half != half) continue;
      result.low += step.hours * test::rayShare(scene, p, step.sun, dayOfYear, doubt);
      result.high += step.hours * test::rayShare(scene, p, step.sun, dayOfYear, -doubt);
    }
    return result;
  }
};

class EveryCell : public MapAgainstRays {
 protected:
  SunMapRequest request;
  EveryCell() {
    yard.settings.latitude = latitude;
    request.area = {{0, 0}, {16, 12}};
    request.cell = Length::metres(0.8);
    request.stepMinutes = 40;
    request.day = day;
  }
  void agrees() const;
};

void EveryCell::agrees() const {
  const auto map = computeSunMap(yard, request);
  const auto steps = stepsOf(day, latitude, Angle(), request.stepMinutes, Horizon(yard.settings));
  ASSERT_TRUE(map);
  double doubt = 0.0;
  int sure = 0;
  for (int row = 0; row < map->rows(); ++row)
    for (int column = 0; column < map->columns(); ++column) {
      const Point p = map->centreOf(column, row);
      const Bounds before = traced(p, steps, HalfDay::BeforeNoon);
      const Bounds after = traced(p, steps, HalfDay::AfterNoon);
      const SunHours hours = map->at(column, row);
      ASSERT_GE(hours.beforeNoon, before.low - 1e-5) << p.x << ' ' << p.y;
      ASSERT_LE(hours.beforeNoon, before.high + 1e-5) << p.x << ' ' << p.y;
      ASSERT_GE(hours.afterNoon, after.low - 1e-5) << p.x << ' ' << p.y;
      ASSERT_LE(hours.afterNoon, after.high + 1e-5) << p.x << ' ' << p.y;
      sure += before.high - before.low < 1e-9 && after.high - after.low < 1e-9;
      doubt += before.high - before.low + after.high - after.low;
    }
  // So that the bounds cannot hide a difference: nearly everywhere they are one, and on average
  // they are minutes apart at most.
  const double cells = map->rows() * map->columns();
  RecordProperty("share_of_cells_with_one_answer", std::to_string(sure / cells));
  RecordProperty("hours_between_the_answers", std::to_string(doubt / cells));
  EXPECT_GT(sure / cells, 0.9);
  EXPECT_LT(doubt / cells, 0.05);
}

TEST_P(EveryCell, Agrees) {
  agrees();
}

// Rows of 200 columns, so that what is kept for 64 at a time is seen to hold together.
using EveryCellOfLongRows = EveryCell;
TEST_P(EveryCellOfLongRows, Agrees) {
  request.cell = Length::metres(0.08);
  request.area.high.y = 0.08 * 15;
  request.area.low.y += 3.0, request.area.high.y += 3.0;
  agrees();
}

// Skyline and slope let the sun in for as long as it is seen to be up, minute by minute.
TEST_P(MapAgainstRays, StepsLastWhileTheSunIsUp) {
  const auto steps = stepsOf(day, latitude, Angle(), 5, Horizon(yard.settings));
  double hours = 0.0;
  for (const SunStep& step : steps) {
    hours += step.hours;
    EXPECT_TRUE(test::isUp(scene, step.sun)) << step.sun.azimuth.degrees();
  }
  const UtcTime noon = tussock::daylight(day, latitude, Angle()).transit;
  int up = 0;
  for (int minute = -720; minute < 720; ++minute)
    up += test::isUp(scene, sunPosition(noon + std::chrono::minutes(minute), latitude, Angle()));
  EXPECT_NEAR(hours, up / 60.0, 0.1);
}

INSTANTIATE_TEST_SUITE_P(RandomScenes, MapAgainstRays, testing::Range(1u, 201u));
INSTANTIATE_TEST_SUITE_P(RandomScenes, EveryCell, testing::Range(1u, 201u));
INSTANTIATE_TEST_SUITE_P(RandomScenes, EveryCellOfLongRows, testing::Range(201u, 221u));

}  // namespace
}  // namespace tussock
