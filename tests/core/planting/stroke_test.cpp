// SPDX-License-Identifier: MIT
#include "core/planting/stroke.h"

#include <algorithm>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/lattice.h"
#include "core/geometry/tolerance.h"
#include "core/planting/corridor.h"
#include "core/planting/one_piece.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

Species sedge(double spacing) {
  Species species;
  species.botanicalName = "Carex pensylvanica";
  species.commonName = "Pennsylvania sedge";
  species.spacing = Length::metres(spacing);
  return species;
}

Polyline wave() {
  Polyline line;
  for (int i = 0; i <= 40; ++i) line.push_back({1.0 + 0.2 * i, 3.0 + 1.2 * std::sin(0.2 * i)});
  return line;
}

TEST(PlantAlong, FollowsTheLineInOnePieceAtItsDensity) {
  test::YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 6, 0 6, 0 0))");
  IdSource ids(100);
  const DriftEdit edit =
      plantAlong(builder.build(), sedge(0.3), {wave(), Length::metres(1.2)}, ids);
  const Yard yard = apply(builder.build(), edit.edit);
  const Drift& drift = *yard.drifts.find(edit.drift);
  EXPECT_EQ(drift.plants.size() % 2, 1U);
  EXPECT_TRUE(inOnePiece(positionsOf(drift), drift.spacing));
  const Corridor corridor(wave(), 0.6);
  double last = 0.0;
  for (const Point p : positionsOf(drift)) {
    EXPECT_TRUE(corridor.holds(p));
    last = std::max(last, corridor.along(p));
  }
  EXPECT_GT(last, corridor.length() - 0.5);
  const double expected =
      triangularCount(Area::squareMetres(corridor.length() * 1.2), drift.spacing);
  EXPECT_NEAR(static_cast<double>(drift.plants.size()) / expected, 1.0, 0.15);
}

TEST(PlantAlong, ANarrowLineIsOnePlantWide) {
  test::YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 6, 0 6, 0 0))");
  IdSource ids(100);
  const DriftEdit edit = plantAlong(builder.build(), sedge(0.3), {wave(), Length()}, ids);
  const Corridor corridor(wave(), 0.15);
  EXPECT_NEAR(edit.fitted, corridor.length() / 0.3, 0.2 * corridor.length() / 0.3);
}

// A drift lies across the line half way: what is planted ends before it, and the whole is asked.
TEST(PlantAlong, TellsWhatTheWholeLineWouldTakeWhereItIsCutShort) {
  test::YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 6, 0 6, 0 0))");
  const Polyline line{{1.0, 3.0}, {11.0, 3.0}}, overEdge{{1.0, 3.0}, {14.0, 3.0}};
  IdSource ids(100);
  const auto along = [&](const Polyline& way) {
    return plantAlong(builder.build(), sedge(0.3), {way, Length::metres(0.9)}, ids);
  };
  const DriftEdit free = along(line);
  EXPECT_EQ(free.asked, free.fitted);
  EXPECT_EQ(along(overEdge).asked, along(overEdge).fitted) << "the line leaves the bed";
  std::vector<Point> across;
  for (int i = 0; i < 19; ++i) across.push_back({6.0, 0.2 + 0.3 * i});
  builder.drift("Carex pensylvanica", across).spaced(0.3);
  const DriftEdit cut = along(line);
  EXPECT_LT(cut.fitted, free.fitted * 2 / 3);
  EXPECT_NEAR(cut.asked, free.fitted, 0.15 * free.fitted);
}

TEST(PlantAlong, OutsideEveryBedItIsNoEdit) {
  test::YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 6, 0 6, 0 0))");
  IdSource ids(100);
  EXPECT_TRUE(
      plantAlong(builder.build(), sedge(0.3), {{{50, 50}, {60, 50}}, Length()}, ids).edit.empty());
  EXPECT_TRUE(plantAlong(builder.build(), sedge(0.3), {{}, Length()}, ids).edit.empty());
}

class AnyStroke : public testing::TestWithParam<unsigned> {};

TEST_P(AnyStroke, KeepsTheRules) {
  const test::RandomGround ground = test::randomGround(GetParam());
  IdSource ids(1000);
  Yard yard = ground.yard;
  const GrowRequest& drop = ground.drops[1];
  yard = test::withDrift(yard, drop, growDrift(yard, drop).places, ids);
  const Polyline line{ground.drops[0].at, ground.drops[2].at, ground.drops[3].at};
  const Species species = sedge(ground.drops[0].spacing.metres());
  const DriftEdit edit = plantAlong(yard, species, {line, Length::metres(0.9)}, ids);
  if (edit.edit.empty()) GTEST_SKIP() << "nothing free along this line";
  yard = apply(yard, edit.edit);
  test::expectByTheRules(yard, *yard.drifts.find(edit.drift));
}
INSTANTIATE_TEST_SUITE_P(Seeds, AnyStroke, testing::Range(0U, 60U));

}  // namespace
}  // namespace tussock
