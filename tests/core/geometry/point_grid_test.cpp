// SPDX-License-Identifier: MIT
// Against looking at every point.
#include "core/geometry/point_grid.h"

#include <algorithm>
#include <random>

#include <gmock/gmock.h>

namespace tussock {
namespace {

using testing::IsSubsetOf;

struct Asked {
  std::vector<std::size_t> inside, called;
};

Asked ask(const std::vector<Point>& points, const Box& box, double cell) {
  Asked asked;
  for (std::size_t i = 0; i < points.size(); ++i)
    if (box.contains(points[i])) asked.inside.push_back(i);
  const PointGrid grid(points, cell);
  grid.forEachAround(box, [&](std::size_t i) { asked.called.push_back(grid.order()[i]); });
  return asked;
}

void expectAllOnce(const std::vector<Point>& points, const Box& box, double cell) {
  Asked asked = ask(points, box, cell);
  std::sort(asked.called.begin(), asked.called.end());
  EXPECT_EQ(std::adjacent_find(asked.called.begin(), asked.called.end()), asked.called.end());
  EXPECT_THAT(asked.inside, IsSubsetOf(asked.called));
}

TEST(PointGrid, CallsForAllPointsInABoxOnce) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> x(-20.0, 12.0), y(3.0, 9.0), size(0.0, 4.0);
  std::vector<Point> points(500);
  for (Point& p : points) p = {x(random), y(random)};
  for (int i = 0; i < 200; ++i) {
    const Point low{x(random) - 2.0, y(random) - 2.0};
    expectAllOnce(points, {low, low + Point{size(random), size(random)}}, 0.1 + size(random));
  }
}

TEST(PointGrid, LooksAtFewBesideTheBox) {
  std::vector<Point> points;
  for (int i = 0; i < 100; ++i)
    for (int j = 0; j < 100; ++j) points.push_back({i * 0.3, j * 0.3});
  const Asked asked = ask(points, {{10.0, 10.0}, {11.0, 11.0}}, 0.5);
  EXPECT_EQ(asked.inside.size(), 9u);
  EXPECT_LE(asked.called.size(), 36u);
}

TEST(PointGrid, TakesPointsOnALineAtOnePlaceAndNone) {
  std::vector<Point> line, heap(30, Point{1.0, 1.0});
  for (int i = 0; i < 50; ++i) line.push_back({i * 1000.0, 0.0});
  expectAllOnce(line, {{2'500.0, -1.0}, {7'000.0, 1.0}}, 0.01);
  expectAllOnce(heap, {{1.0, 1.0}, {1.0, 1.0}}, 0.01);
  EXPECT_TRUE(ask({}, {{0.0, 0.0}, {1.0, 1.0}}, 0.5).called.empty());
  EXPECT_TRUE(ask(heap, {{2.0, 2.0}, {3.0, 3.0}}, 0.5).called.empty());
}

}  // namespace
}  // namespace tussock
