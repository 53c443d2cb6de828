// SPDX-License-Identifier: MIT
// What is planted anew keeps the ground that its drift has: bands painted along a line.
#include "core/planting/set_out.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include <gmock/gmock.h>

#include "core/geometry/tolerance.h"
#include "core/planting/measures.h"
#include "core/planting/one_piece.h"
#include "core/planting/replant_drift.h"
#include "core/planting/reshape_drift.h"
#include "core/planting/slope.h"
#include "core/planting/stroke.h"
#include "tests/core/planting/kept_ground.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::named, test::outside, test::shareOnGround, test::shareTaken;

// An S over 8 m, 3 m from crest to trough.
Polyline bigS() {
  Polyline line;
  for (int i = 0; i <= 80; ++i)
    line.push_back({1.5 + 0.1 * i, 4.0 + 1.5 * std::sin(0.785398 * 0.1 * i)});
  return line;
}

std::set<Id<Plant>> idsIn(const Drift& drift) {
  std::set<Id<Plant>> ids;
  for (const Plant& plant : drift.plants) ids.insert(plant.id);
  return ids;
}

class Painted : public testing::TestWithParam<double> {  // the ground's slope, rise over run
 protected:
  Painted() {
    builder_.bed("Lawn", "POLYGON ((0 0, 11 0, 11 8, 0 8, 0 0))").viewing("S");
    builder_.drift("Carex", test::row(5, 0.4, {4.5, 1.2}));
    yard_ = builder_.build();
    yard_.settings.slope = Angle::radians(std::atan(GetParam()));
    yard_.settings.aspect = Angle::degrees(160);
  }
  void paint(double spacing, double width) {
    const Species sedge = named("Carex pensylvanica", spacing);
    const DriftEdit edit = plantAlong(yard_, sedge, {bigS(), Length::metres(width)}, ids_);
    yard_ = apply(yard_, edit.edit);
    id_ = edit.drift;
  }
  [[nodiscard]] const Drift& drift() const { return *yard_.drifts.find(id_); }
  [[nodiscard]] Slope slope() const { return Slope(yard_.settings); }
  void expectRulesKept() const {
    std::vector<Point> places;
    for (const Point p : positionsOf(drift())) places.push_back(slope().onGround(p));
    EXPECT_TRUE(inOnePiece(places, drift().spacing));
    for (const Plant& plant : drift().plants)
      for (const Drift& other : yard_.drifts)
        for (const Plant& near : other.plants) {
          const Length apart = Length::metres(slope().distance(plant.at, near.at));
          const Length least = kLooseSpacing * (other.spacing + drift().spacing) / 2.0;
          EXPECT_TRUE(near.id == plant.id || atLeast(apart, least));
        }
  }
  // Makes the edit; the drift is to stand on the ground that it had, and nothing else is touched.
  void expectGroundKept(const DriftEdit& edit) {
    const Drift before = drift();
    ASSERT_EQ(edit.edit.changes.size(), 1U);
    EXPECT_EQ(edit.fitted, edit.asked);
    yard_ = apply(yard_, edit.edit);
    EXPECT_EQ(drift().plants.size() % 2, 1U);
    EXPECT_GE(shareOnGround(before, drift()), 0.97);
    EXPECT_GE(shareTaken(slope(), before, drift()), 0.95) << edit.edit.label;
    const auto old = idsIn(before), now = idsIn(drift());
    const auto& [less, more] = old.size() < now.size() ? std::tie(old, now) : std::tie(now, old);
    EXPECT_TRUE(std::includes(more.begin(), more.end(), less.begin(), less.end()));
    expectRulesKept();
  }
  DriftEdit respaced(double metres) {
    return reshapeDrift(yard_, id_, withSpacing(shapeOf(drift()), Length::metres(metres)), ids_);
  }
  test::YardBuilder builder_;
  Yard yard_;
  Id<Drift> id_;
  IdSource ids_{1000};
};

TEST_P(Painted, SpacedNearerItKeepsItsGround) {
  for (const double width : {0.9, 1.6}) {
    paint(0.4, width);
    expectGroundKept(respaced(0.25));
    yard_.drifts = yard_.drifts.without(id_);
  }
}

// No further than halfway from random directions (1) to a lattice (4), see measures.h.
TEST_P(Painted, SetOutAnewItShowsNoRows) {
  for (const double spacing : {0.25, 0.35}) {
    paint(0.3, 2.0);
    yard_ = apply(yard_, respaced(spacing).edit);
    std::vector<Point> places;
    for (const Point p : positionsOf(drift())) places.push_back(slope().onGround(p));
    const Rows rows = rowsOf(places, std::vector<double>(places.size(), spacing));
    EXPECT_GE(rows.pairs, 300);
    EXPECT_LE(rows.rowiness, 2.0);
    yard_.drifts = yard_.drifts.without(id_);
  }
}

TEST_P(Painted, SpacedWiderItKeepsItsGround) {
  for (const double width : {0.9, 1.6}) {
    paint(0.3, width);
    expectGroundKept(respaced(0.45));
    yard_.drifts = yard_.drifts.without(id_);
  }
}

TEST_P(Painted, SetOutAnewItKeepsItsGround) {
  paint(0.35, 1.2);
  const Plant moved = drift().plants[5];
  yard_ = apply(yard_, nudgePlant(yard_, id_, moved.id, drift().plants[6].at).edit);
  expectGroundKept(regrowDrift(yard_, id_, ids_));
}

// Again and again the form stays: each time is judged by the first.
TEST_P(Painted, SetOutAnewFiveTimesItStaysWhereItWas) {
  paint(0.35, 1.2);
  const Drift first = drift();
  for (int i = 0; i < 5; ++i) yard_ = apply(yard_, regrowDrift(yard_, id_, ids_).edit);
  EXPECT_GE(shareOnGround(first, drift()), 0.95);
  EXPECT_GE(shareTaken(slope(), first, drift()), 0.95);
}

TEST_P(Painted, AsAnotherSpeciesItKeepsItsGround) {
  paint(0.3, 1.2);
  for (const double spacing : {0.4, 0.25}) {
    const int count = countFor(
        Pattern::Staggered, Length::metres(spacing),
        areaFor(Pattern::Staggered, drift().spacing, static_cast<int>(drift().plants.size())));
    expectGroundKept(replantDrift(yard_, id_, named("Aster laevis", spacing), count, ids_));
    EXPECT_EQ(drift().species, "Aster laevis");
  }
}

TEST_P(Painted, ALineOnePlantWideKeepsItsLength) {
  paint(0.3, 0.0);
  expectGroundKept(respaced(0.38));
  expectGroundKept(respaced(0.3));
}

// More than twice as wide apart, so few plants cannot reach from end to end: it is shorter, no
// oval.
TEST_P(Painted, ALineOfFewWiderPlantsStaysOnIt) {
  paint(0.3, 0.0);
  const Drift before = drift();
  yard_ = apply(yard_, respaced(0.5).edit);
  EXPECT_GE(shareOnGround(before, drift()), 0.95);
  EXPECT_GE(shareTaken(slope(), before, drift()), 0.6);
  expectRulesKept();
}

TEST_P(Painted, InRowsItKeepsItsGround) {
  paint(0.3, 1.2);
  DriftShape shape = shapeOf(drift());
  shape.pattern = Pattern::Triangular;
  expectGroundKept(reshapeDrift(yard_, id_, shape, ids_));
}

TEST_P(Painted, MoreThanItsGroundTakesGrowsBeyondItOnAllSides) {
  paint(0.3, 1.2);
  const Drift before = drift();
  DriftShape shape = shapeOf(before);
  shape.spacing = Length::metres(0.36);  // as many, 1.44 times the ground
  yard_ = apply(yard_, reshapeDrift(yard_, id_, shape, ids_).edit);
  EXPECT_EQ(drift().plants.size(), before.plants.size());
  EXPECT_GE(shareTaken(slope(), before, drift()), 0.99);
  const auto outline = outlineOf(before);
  for (const Plant& plant : drift().plants) EXPECT_LE(outside(outline, plant.at), 0.3);
}

TEST_P(Painted, AnotherAxisMakesAFigureOfIt) {
  paint(0.3, 1.2);
  const Drift before = drift();
  DriftShape shape = shapeOf(before);
  shape.stretch = 2.0;
  yard_ = apply(yard_, reshapeDrift(yard_, id_, shape, ids_).edit);
  EXPECT_LT(shareOnGround(before, drift()), 0.8);
}

INSTANTIATE_TEST_SUITE_P(Slopes, Painted, testing::Values(0.0, 0.3), [](const auto& ground) {
  return ground.param > 0.0 ? "Sloping" : "Level";
});

class AnyForm : public testing::TestWithParam<unsigned> {};

TEST_P(AnyForm, KeepsTheRules) {
  const test::RandomGround ground = test::randomGround(GetParam());
  IdSource ids(1000);
  Yard yard = ground.yard;
  for (const std::size_t i : {3U, 4U})
    if (const auto places = growDrift(yard, ground.drops[i]).places; !places.empty())
      yard = test::withDrift(yard, ground.drops[i], places, ids);
  const Polyline line{ground.drops[0].at, ground.drops[1].at, ground.drops[2].at};
  const DriftEdit painted =
      plantAlong(yard, named("Carex pensylvanica", 0.35), {line, Length::metres(0.9)}, ids);
  if (painted.edit.empty()) GTEST_SKIP() << "nothing free along this line";
  yard = apply(yard, painted.edit);
  const DriftShape before = shapeOf(*yard.drifts.find(painted.drift));
  for (const double spacing : {0.25, 0.5}) {
    const DriftEdit edit =
        reshapeDrift(yard, painted.drift, withSpacing(before, Length::metres(spacing)), ids);
    if (edit.edit.empty()) continue;
    const Yard after = apply(yard, edit.edit);
    test::expectByTheRules(after, *after.drifts.find(painted.drift));
  }
}
INSTANTIATE_TEST_SUITE_P(Seeds, AnyForm, testing::Range(0U, 40U));

}  // namespace
}  // namespace tussock
