// SPDX-License-Identifier: MIT
// Checked cell by cell against whether the polygon holds the centre.
#include "core/sun/ground_cells.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

#include "core/geometry/overlay.h"
#include "core/sun/map.h"

namespace tussock {
namespace {

Grid gridOfCells(Box area, double cell) {
  return {area.low,
          cell,
          static_cast<int>(std::ceil(area.width() / cell)),
          static_cast<int>(std::ceil(area.height() / cell)),
          {}};
}

std::size_t expectSameAsContains(const std::vector<Polygon>& polygons, const Grid& grid) {
  const AskedCells cells = cellsUnder(polygons, grid);
  std::size_t inside = 0;
  for (int row = 0; row < grid.rows; ++row)
    for (int column = 0; column < grid.columns; ++column) {
      const Point centre = grid.low + Point{column + 0.5, row + 0.5} * grid.cell;
      const bool held = std::ranges::any_of(
          polygons, [&](const Polygon& polygon) { return contains(polygon, centre); });
      EXPECT_EQ(cells.contains(column, row), held) << centre.x << ", " << centre.y;
      if (!held) continue;
      EXPECT_EQ(cells.starts()[static_cast<std::size_t>(row)] +
                    static_cast<std::size_t>(cells.place(row, column)),
                inside);
      ++inside;
    }
  EXPECT_EQ(cells.cells(), inside);
  return inside;
}

TEST(GroundCellsTest, EdgesAlongTheCentresCountAsInside) {
  const Grid grid = gridOfCells({{0, 0}, {10, 6}}, 1.0);
  EXPECT_EQ(expectSameAsContains({rectangle({1.5, 1.5}, {7.5, 4.5})}, grid), 7u * 4u);
  EXPECT_EQ(expectSameAsContains({{{{0.5, 0.5}, {9.5, 0.5}, {9.5, 5.5}}, {}}}, grid), 31u);
}

TEST(GroundCellsTest, HolesAreLeftOut) {
  const Polygon ring{rectangle({0, 0}, {10, 10}).outer, {rectangle({3, 3}, {7, 7}).outer}};
  EXPECT_EQ(expectSameAsContains({ring}, gridOfCells({{0, 0}, {10, 10}}, 1.0)), 100u - 16u);
}

TEST(GroundCellsTest, BedsBesideOneAnotherInARow) {
  std::vector<Polygon> beds;
  for (int i = 0; i < 40; ++i) beds.push_back(rectangle({2.0 * i, 1}, {2.0 * i + 1.3, 2.2}));
  EXPECT_GT(expectSameAsContains(beds, gridOfCells({{-1, 0}, {82, 3}}, 0.1)), 40u * 150u);
}

TEST(GroundCellsTest, GroundBeyondTheGridIsCut) {
  const Grid grid = gridOfCells({{0, 0}, {4, 3}}, 0.5);
  EXPECT_EQ(expectSameAsContains({rectangle({-9, 1}, {90, 50})}, grid), 8u * 4u);
  EXPECT_EQ(expectSameAsContains({rectangle({20, 1}, {90, 50})}, grid), 0u);
  EXPECT_EQ(expectSameAsContains({Polygon()}, grid), 0u);
}

class RandomGround : public testing::TestWithParam<unsigned> {};

// Corners on tenths of a metre, so that many lie on rows and columns of centres.
TEST_P(RandomGround, IsAsThePolygonsHoldIt) {
  std::mt19937 random(GetParam());
  std::uniform_int_distribution<int> tenths(0, 80);
  std::vector<Polygon> polygons;
  for (int i = 0; i < 3; ++i) {
    Ring corners;
    for (int corner = 0; corner < 3 + i; ++corner)
      corners.push_back(Point{tenths(random) / 10.0, tenths(random) / 10.0});
    polygons.push_back({convexHull(corners), {}});
  }
  // One that goes in and out.
  Ring comb{{0, 8}, {0, 7}};
  for (int tooth = 0; tooth < 8; ++tooth) {
    comb.push_back({tooth + 0.1, tenths(random) / 12.0});
    comb.push_back({tooth + 0.7, 7});
  }
  comb.push_back({8, 8});
  polygons.push_back({comb, {}});
  expectSameAsContains(polygons, gridOfCells({{0, 0}, {8, 8}}, 0.2));
  for (const Polygon& polygon : polygons)
    expectSameAsContains({polygon}, gridOfCells({{-0.05, 0.05}, {8, 8}}, 0.3));
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomGround, testing::Range(0u, 20u));

TEST(UnmappedBeds, LieBetweenTheCentresOrOutside) {
  Yard yard;
  const auto add = [&](std::int64_t id, Point low, Point high) {
    Bed bed;
    bed.id = Id<Bed>(id);
    bed.outline = rectangle(low, high);
    yard.beds = yard.beds.with(bed);
  };
  add(1, {1, 1}, {3, 3});
  add(2, {5.1, 5.1}, {5.4, 5.4});
  add(3, {20, 1}, {22, 3});
  SunMapRequest request;
  request.cell = Length::metres(1);
  request.area = {{0, 0}, {8, 8}};
  request.day = Date(std::chrono::year(2026), std::chrono::June, std::chrono::day(21));
  const SunMap map = computeSunMap(yard, request).value();
  const auto unmapped = unmappedBeds(yard, map);
  ASSERT_EQ(unmapped.size(), 2u);
  EXPECT_EQ(unmapped[0].bed->id, Id<Bed>(2));
  EXPECT_FALSE(unmapped[0].outside);
  EXPECT_EQ(unmapped[1].bed->id, Id<Bed>(3));
  EXPECT_TRUE(unmapped[1].outside);
}

}  // namespace
}  // namespace tussock
