// SPDX-License-Identifier: MIT
// The sun map against rays traced one by one, cell by cell and step by step.
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
  Angle latitude = Angle::degrees(std::uniform_real_distribution<double>(-55, 65)(random));
  int dayOfYear = std::uniform_int_distribution<int>(0, 364)(random);
  Date day = Date(std::chrono::sys_days(
                      Date(std::chrono::year(2026), std::chrono::January, std::chrono::day(1))) +
                  std::chrono::days(dayOfYear));

  // Where the edge of a shadow runs close by a cell's centre, either answer will do: a crown's
  // outline is told to 0.0008 of its size.
  [[nodiscard]] Bounds traced(Point p, const std::vector<SunStep>& steps, HalfDay half) const {
    constexpr double kDoubt = 0.0015;
    Bounds result;
    for (const SunStep& step : steps) {
      if (step.half != half) continue;
      result.low += step.hours * test::rayShare(scene, p, step.sun, dayOfYear, kDoubt);
      result.high += step.hours * test::rayShare(scene, p, step.sun, dayOfYear, -kDoubt);
    }
    return result;
  }
};

TEST_P(MapAgainstRays, EveryCellAgrees) {
  yard.settings.latitude = latitude;
  SunMapRequest request;
  request.area = {{0, 0}, {16, 12}};
  request.cell = Length::metres(0.8);
  request.stepMinutes = 40;
  request.day = day;
  const auto map = computeSunMap(yard, request);
  const auto steps = stepsOf(day, latitude, Angle(), request.stepMinutes);
  ASSERT_TRUE(map);
  double doubt = 0.0;
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
      doubt += before.high - before.low + after.high - after.low;
    }
  // So that the bounds cannot hide a difference: on average they are minutes apart at most.
  EXPECT_LT(doubt / (map->rows() * map->columns()), 0.05);
}

INSTANTIATE_TEST_SUITE_P(RandomScenes, MapAgainstRays, testing::Range(1u, 41u));

}  // namespace
}  // namespace tussock
