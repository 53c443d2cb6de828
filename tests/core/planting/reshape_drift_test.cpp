// SPDX-License-Identifier: MIT
// 1 reshaping  2 count, spacing, area  3 single plants and locking
#include "core/planting/reshape_drift.h"

#include <cmath>
#include <set>

#include <gmock/gmock.h>

#include "core/geometry/overlay.h"
#include "core/planting/one_piece.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

class Reshape : public testing::Test {
 protected:
  Reshape() {
    builder_.bed("Front", "POLYGON ((0 0, 12 0, 12 7, 0 7, 0 0))").viewing("S");
    builder_.drift("Carex", test::row(3, 0.4, {1.0, 1.0}));
    other_ = builder_.lastDrift();
    yard_ = builder_.build();
    GrowRequest request;
    request.bed = builder_.lastBed();
    request.spacing = Length::metres(0.4);
    request.count = 13;
    request.at = {6, 3.5};
    yard_ = test::withDrift(yard_, request, growDrift(yard_, request).places, ids_);
    id_ = (--yard_.drifts.end())->id;
  }
  [[nodiscard]] const Drift& drift() const { return *yard_.drifts.find(id_); }
  void apply(const DriftEdit& edit) {
    ASSERT_FALSE(edit.edit.empty());
    ASSERT_EQ(edit.edit.changes.size(), 1U);  // nobody else's plants
    yard_ = tussock::apply(yard_, edit.edit);
  }
  [[nodiscard]] std::set<Id<Plant>> plantIds() const {
    std::set<Id<Plant>> result;
    for (const Plant& plant : drift().plants) result.insert(plant.id);
    return result;
  }

  test::YardBuilder builder_;
  Id<Drift> other_, id_;
  Yard yard_;
  IdSource ids_{1000};
};

TEST_F(Reshape, EveryPatternPlantsTheSameIdsAboutTheSameMiddle) {
  for (const Pattern pattern :
       {Pattern::Triangular, Pattern::Square, Pattern::Single, Pattern::Staggered}) {
    const auto before = plantIds();
    const Point middle = middleOf(drift());
    DriftShape shape = shapeOf(drift());
    shape.pattern = pattern;
    const DriftEdit edit = reshapeDrift(yard_, id_, shape, ids_);
    apply(edit);
    EXPECT_EQ(drift().pattern, pattern);
    EXPECT_EQ(edit.fitted, 13);
    EXPECT_EQ(plantIds(), before);
    EXPECT_LT(distance(middleOf(drift()), middle), pattern == Pattern::Single ? 2.0 : 0.6);
  }
}

TEST_F(Reshape, StretchingMakesItLongerWithTheSameCount) {
  DriftShape shape = shapeOf(drift());
  shape.axis = Angle::degrees(0);
  shape.stretch = 1.5;
  apply(reshapeDrift(yard_, id_, shape, ids_));
  const auto stout = smallestRectangle(positionsOf(drift()), drift().spacing / 2.0);
  shape.stretch = 5.0;
  const DriftEdit edit = reshapeDrift(yard_, id_, shape, ids_);
  EXPECT_EQ(edit.edit.label, "Stretch drift");
  apply(edit);
  const auto slender = smallestRectangle(positionsOf(drift()), drift().spacing / 2.0);
  EXPECT_GT(slender.length / slender.width, 1.5 * stout.length / stout.width);
  EXPECT_EQ(drift().plants.size(), 13U);
}

TEST_F(Reshape, AWiderSpacingKeepsTheCount) {
  DriftShape shape = shapeOf(drift());
  shape.spacing = Length::metres(0.6);
  apply(reshapeDrift(yard_, id_, shape, ids_));
  EXPECT_EQ(drift().plants.size(), 13U);
  const auto places = positionsOf(drift());
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      EXPECT_GE(distance(places[i], places[j]), 0.85 * 0.6 - 1e-3);
}

TEST_F(Reshape, ACountAloneLeavesStandingPlants) {
  const Drift before = drift();
  DriftShape shape = shapeOf(drift());
  shape.count = 17;
  apply(reshapeDrift(yard_, id_, shape, ids_));
  for (const Plant& plant : before.plants) EXPECT_THAT(drift().plants, testing::Contains(plant));
  EXPECT_EQ(drift().plants.size(), 17U);
}

TEST_F(Reshape, AnEvenCountIsPlantedWhereAskedFor) {
  for (const Pattern pattern : {Pattern::Staggered, Pattern::Square, Pattern::Single}) {
    DriftShape shape = withCount(shapeOf(drift()), 8);
    shape.pattern = pattern;
    const DriftEdit edit = reshapeDrift(yard_, id_, shape, ids_);
    apply(edit);
    EXPECT_EQ(edit.asked, 8);
    EXPECT_EQ(drift().plants.size(), 8U);
    shape.axis = shape.axis + Angle::degrees(20);
    apply(reshapeDrift(yard_, id_, shape, ids_));
    EXPECT_EQ(drift().plants.size(), 8U);
    apply(regrowDrift(yard_, id_, ids_));
    EXPECT_EQ(drift().plants.size(), 8U);
    yard_ = tussock::apply(yard_, resizeDrift(yard_, id_, 8, ids_).edit);
    EXPECT_EQ(drift().plants.size(), 7U) << "not asked for";
  }
}

// Where not all fit there is nothing to keep to: an odd number does.
TEST_F(Reshape, OfAnEvenCountThatDoesNotFitAnOddOneIsPlanted) {
  const DriftEdit edit = resizeDrift(yard_, id_, 2000, ids_, CountAs::Asked);
  EXPECT_EQ(edit.asked, 2000);
  EXPECT_LT(edit.fitted, 2000);
  EXPECT_EQ(edit.fitted % 2, 1);
}

TEST_F(Reshape, AStrictDriftGrowsOnItsLattice) {
  DriftShape shape = shapeOf(drift());
  shape.pattern = Pattern::Square;
  shape.axis = Angle();
  apply(reshapeDrift(yard_, id_, shape, ids_));
  shape.count = 21;
  apply(reshapeDrift(yard_, id_, shape, ids_));
  ASSERT_EQ(drift().plants.size(), 21U);
  const Point first = drift().plants.front().at;
  for (const Plant& plant : drift().plants) {
    const Point cells = (plant.at - first) * (1.0 / 0.4);
    EXPECT_NEAR(cells.x, std::round(cells.x), 1e-6);
    EXPECT_NEAR(cells.y, std::round(cells.y), 1e-6);
  }
}

// By hand: five in a row, 0.4 m apart, are 2.0 m long and 0.4 m wide with their discs of 0.2 m. On
// ground that rises at 60 degrees along the row they are 1.6 / cos 60° + 0.4 = 3.6 m long.
TEST(Standing, LengthToWidthIsMeasuredAlongTheGround) {
  test::YardBuilder builder;
  builder.bed("Front", "POLYGON ((0 0, 12 0, 12 7, 0 7, 0 0))");
  builder.drift("Carex", test::row(5, 0.4, {1.0, 1.0}));
  const Yard yard = builder.build();
  Drift drift = *yard.drifts.find(builder.lastDrift());
  Settings settings = yard.settings;
  EXPECT_NEAR(standingStretch(settings, drift).value_or(0.0), 5.0, 1e-6);
  settings.slope = Angle::degrees(60);
  settings.aspect = Angle::degrees(90);
  EXPECT_NEAR(standingStretch(settings, drift).value_or(0.0), 9.0, 1e-6);
  drift.plants.pop_back();
  EXPECT_FALSE(standingStretch(settings, drift).has_value()) << "too few to speak of length";
}

TEST(Standing, IsToldWhereItIsFarFromWhatIsAsked) {
  test::YardBuilder builder;
  builder.bed("Front", "POLYGON ((0 0, 12 0, 12 7, 0 7, 0 0))");
  builder.drift("Carex", test::row(5, 0.4, {1.0, 1.0}));
  const Yard yard = builder.build();
  Drift drift = *yard.drifts.find(builder.lastDrift());
  for (const auto& [asked, told] :
       {std::pair{3.9, true}, {4.1, false}, {5.0, false}, {6.2, false}, {6.3, true}}) {
    drift.stretch = asked;
    EXPECT_EQ(stretchIfOther(yard.settings, drift).has_value(), told) << asked;
  }
  drift.pattern = Pattern::Matrix;
  EXPECT_FALSE(stretchIfOther(yard.settings, drift).has_value());
}

TEST_F(Reshape, ItsOwnShapeIsNoEdit) {
  EXPECT_TRUE(reshapeDrift(yard_, id_, shapeOf(drift()), ids_).edit.empty());
}

TEST_F(Reshape, ExistingPlantsAreNotPlantedAnew) {
  Drift standing = drift();
  standing.size = StockSize::Existing;
  yard_.drifts = yard_.drifts.with(standing);
  DriftShape shape = shapeOf(standing);
  shape.stretch = 5.0;
  EXPECT_TRUE(reshapeDrift(yard_, id_, shape, ids_).edit.empty());
}

// 2 Sums

// By the same table: on 100 sq ft 25 plants stand 24 in apart in squares, and 4 in 100 would be 12.
TEST(ThirdFromTwo, CountAndSpacingAnswerEachOtherOnTheSameGround) {
  DriftShape shape;
  shape.pattern = Pattern::Square;
  shape.spacing = Length::inches(24);
  shape.count = 25;
  const DriftShape nearer = withSpacing(shape, Length::inches(12));
  EXPECT_NEAR(nearer.count, 100, 1);
  EXPECT_EQ(nearer.spacing, Length::inches(12));
  const DriftShape more = withCount(shape, 99);
  EXPECT_EQ(more.count, 99);
  EXPECT_NEAR(more.spacing.inches(), 12.0, 0.1);
  EXPECT_NEAR(areaFor(more.pattern, more.spacing, more.count).squareFeet(), 100.0, 1e-9);
  const DriftShape less = onGround(shape, Area::squareFeet(36));
  EXPECT_EQ(less.count, 9);
  EXPECT_EQ(less.spacing, shape.spacing);
  EXPECT_EQ(withCount(shape, 25), shape);
  EXPECT_EQ(withCount(shape, 8).count, 8) << "as asked";
}

// An even count was asked for: it stays where the answer is the same, and is odd where it is not.
TEST(ThirdFromTwo, AnEvenCountStaysWhereNothingElseAnswers) {
  DriftShape shape;
  shape.spacing = Length::metres(0.4);
  shape.count = 8;
  EXPECT_EQ(withSpacing(shape, Length::metres(0.41)).count, 8);   // 7.6
  EXPECT_EQ(withSpacing(shape, Length::metres(0.43)).count, 7);   // 6.9
  EXPECT_EQ(withSpacing(shape, Length::metres(0.37)).count, 9);   // 9.3
  EXPECT_EQ(withSpacing(shape, Length::metres(0.358)).count, 9);  // 9.99: of 9 and 11 the nearer
}

// Mississippi State University Extension, "Ground Covers": 100 sq ft take 100 plants at 12 in and
// 25 at 24 in; the odd number nearest is said. Triangular: 1.1547 a square foot at 12 in.
TEST(ThirdFromTwo, AgreesWithTheTables) {
  const Area area = Area::squareFeet(100);
  EXPECT_NEAR(countFor(Pattern::Square, Length::inches(12), area), 100, 1);
  EXPECT_EQ(countFor(Pattern::Square, Length::inches(24), area), 25);
  EXPECT_EQ(countFor(Pattern::Staggered, Length::inches(12), area), 115);
  EXPECT_NEAR(areaFor(Pattern::Square, Length::inches(24), 25).squareFeet(), 100.0, 1e-9);
  EXPECT_NEAR(spacingFor(Pattern::Square, 25, area).inches(), 24.0, 1e-9);
}

TEST(ThirdFromTwo, EachGivesTheOthersBack) {
  for (const Pattern pattern : {Pattern::Staggered, Pattern::Square})
    for (const int count : {1, 7, 13, 101}) {
      const Area area = areaFor(pattern, Length::metres(0.37), count);
      EXPECT_EQ(countFor(pattern, Length::metres(0.37), area), count);
      EXPECT_NEAR(spacingFor(pattern, count, area).metres(), 0.37, 1e-12);
    }
}

TEST(ThirdFromTwo, TakesNothingCalmly) {
  EXPECT_EQ(countFor(Pattern::Staggered, {}, Area::squareMetres(4)), 1);
  EXPECT_EQ(countFor(Pattern::Staggered, Length::metres(0.4), {}), 1);
  EXPECT_EQ(spacingFor(Pattern::Staggered, 0, Area::squareMetres(4)), Length());
}

// 3 Plants and locking

TEST_F(Reshape, MovingSomePlantsLeavesTheRest) {
  const Drift before = drift();
  const DriftEdit edit =
      movePlants(yard_, id_, {before.plants[0].id, before.plants[4].id}, {0.2, -0.1});
  EXPECT_EQ(edit.edit.label, "Move 2 plants");
  apply(edit);
  for (std::size_t i = 0; i < before.plants.size(); ++i)
    EXPECT_EQ(drift().plants[i].at,
              i == 0 || i == 4 ? before.plants[i].at + (Point{0.2, -0.1}) : before.plants[i].at);
}

TEST_F(Reshape, ALockedDriftTakesOnlyTheUnlocking) {
  apply(lockDrift(yard_, id_, DriftLock::Locked));
  EXPECT_TRUE(drift().locked);
  DriftShape shape = shapeOf(drift());
  shape.pattern = Pattern::Square;
  EXPECT_TRUE(reshapeDrift(yard_, id_, shape, ids_).edit.empty());
  EXPECT_TRUE(movePlants(yard_, id_, {drift().plants[0].id}, {1, 0}).edit.empty());
  apply(lockDrift(yard_, id_, DriftLock::Free));
  EXPECT_FALSE(drift().locked);
}

TEST_F(Reshape, SettlingTakesANudgedPlantToTheNearestFreePlace) {
  const Plant first = drift().plants[0];
  const Point on = drift().plants[1].at + Point{0.05, 0.0};
  yard_ = tussock::apply(yard_, nudgePlant(yard_, id_, first.id, on).edit);
  apply(settlePlant(yard_, id_, first.id));
  const Point now = drift().plants[0].at;
  EXPECT_LT(distance(now, on), 1.0);
  for (std::size_t i = 1; i < drift().plants.size(); ++i)
    EXPECT_GE(distance(now, drift().plants[i].at), 0.85 * 0.4);
}

// Wherever it was dragged to, out of the bed too.
TEST_F(Reshape, SettlingBringsAPlantBackToItsDrift) {
  const Plant first = drift().plants[0];
  for (const Point far : {Point{6.0, -1.0}, Point{6.0, 8.5}, Point{-2.0, 3.5}, Point{11.5, 0.5}}) {
    yard_ = tussock::apply(yard_, nudgePlant(yard_, id_, first.id, far).edit);
    ASSERT_FALSE(inOnePiece(positionsOf(drift()), drift().spacing));
    apply(settlePlant(yard_, id_, first.id));
    EXPECT_TRUE(inOnePiece(positionsOf(drift()), drift().spacing)) << far.x << " " << far.y;
    for (std::size_t i = 1; i < drift().plants.size(); ++i)
      EXPECT_GE(distance(drift().plants[0].at, drift().plants[i].at), 0.85 * 0.4);
  }
}

// All around it is planted up: then any free place is better than none.
TEST_F(Reshape, WithoutRoomBesideItsDriftAPlantSettlesElsewhere) {
  const Drift row = *yard_.drifts.find(other_);  // at (1, 1), (1.4, 1) and (1.8, 1)
  std::vector<Point> around{row.plants[2].at};
  for (int j = -2; j <= 3; ++j)
    for (int i = -2; i <= 6; ++i)
      if (j != 0 || i < 0 || i > 2) around.push_back({1.0 + 0.4 * i, 1.0 + 0.4 * j});
  GrowRequest request;
  request.bed = builder_.lastBed();
  request.spacing = Length::metres(0.4);
  yard_ = test::withDrift(yard_, request, around, ids_);
  id_ = other_;
  yard_ = tussock::apply(yard_, nudgePlant(yard_, id_, row.plants[2].id, {5.0, -0.3}).edit);
  apply(settlePlant(yard_, id_, row.plants[2].id));
  EXPECT_FALSE(inOnePiece(positionsOf(drift()), drift().spacing));
  EXPECT_GE(drift().plants[2].at.y, 0.2 - 1e-6) << "half its spacing inside the bed";
  EXPECT_LT(distance(drift().plants[2].at, {5.0, -0.3}), 1.0);
}

}  // namespace
}  // namespace tussock
