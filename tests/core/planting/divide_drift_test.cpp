// SPDX-License-Identifier: MIT
// 1 splitting  2 merging  3 any ground
#include "core/planting/divide_drift.h"

#include <cmath>
#include <set>

#include <gmock/gmock.h>

#include "core/planting/one_piece.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::row;
using test::YardBuilder;

std::set<Id<Plant>> idsOf(const Yard& yard) {
  std::set<Id<Plant>> ids;
  for (const Drift& drift : yard.drifts)
    for (const Plant& plant : drift.plants) ids.insert(plant.id);
  return ids;
}

class Divide : public testing::Test {
 protected:
  void lay(int count, std::string_view bed = "POLYGON ((0 0, 9 0, 9 3, 0 3, 0 0))") {
    builder_.bed("Front", bed);
    builder_.drift("Carex", row(count, 0.4, {1.0, 1.5}));
    yard_ = builder_.build();
  }
  YardBuilder builder_;
  Yard yard_;
  IdSource ids_{1000};
};

TEST_F(Divide, AnOddDriftGainsAPlantForItsEvenPart) {
  lay(7);
  const Division split = splitDrift(yard_, builder_.lastDrift(), {2.4, 0}, {2.4, 3}, ids_);
  EXPECT_EQ(split.edit.label, "Split drift into 5 and 3, 1 added");
  EXPECT_EQ(split.added, 1);
  EXPECT_EQ(split.removed, 0);
  const Yard after = apply(yard_, split.edit);
  EXPECT_EQ(after.drifts.find(split.first)->plants.size(), 5U);
  EXPECT_EQ(after.drifts.find(split.second)->plants.size(), 3U);
  for (const Id<Plant> id : idsOf(yard_)) EXPECT_TRUE(idsOf(after).contains(id));
}

TEST_F(Divide, WithoutRoomTheEvenPartGivesOneUp) {
  lay(7, "POLYGON ((0.78 1.28, 3.62 1.28, 3.62 1.72, 0.78 1.72, 0.78 1.28))");
  const Division split = splitDrift(yard_, builder_.lastDrift(), {2.4, 0}, {2.4, 3}, ids_);
  EXPECT_EQ(split.edit.label, "Split drift into 3 and 3, 1 given up");
  EXPECT_EQ(split.removed, 1);
}

TEST_F(Divide, TwoEvenPartsHandOneOver) {
  lay(8);
  const Division split = splitDrift(yard_, builder_.lastDrift(), {2.4, 0}, {2.4, 3}, ids_);
  EXPECT_EQ(split.edit.label, "Split drift into 3 and 5");
  const Yard after = apply(yard_, split.edit);
  EXPECT_EQ(idsOf(after), idsOf(yard_));
  EXPECT_TRUE(inOnePiece(positionsOf(*after.drifts.find(split.first)), Length::metres(0.4)));
  EXPECT_TRUE(inOnePiece(positionsOf(*after.drifts.find(split.second)), Length::metres(0.4)));
}

TEST_F(Divide, ALineBesideTheDriftSplitsNothing) {
  lay(5);
  const Division split = splitDrift(yard_, builder_.lastDrift(), {8, 0}, {8, 3}, ids_);
  EXPECT_EQ(split.refusal, Refusal::AllOnOneSide);
  EXPECT_TRUE(split.edit.empty());
  EXPECT_FALSE(explain(split.refusal).empty());
}

// An L of two rows is cut where they meet: one part lies east to west, the other north.
TEST_F(Divide, EachPartHasTheAxisItsPlantsLieAlong) {
  builder_.bed("Front", "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0))");
  std::vector<Point> places = row(5, 0.4, {1.0, 1.5});
  for (int i = 1; i <= 5; ++i) places.push_back({2.6, 1.5 + 0.4 * i});
  builder_.drift("Carex", places);
  yard_ = builder_.build();
  const Division split = splitDrift(yard_, builder_.lastDrift(), {3.3, 1.0}, {1.3, 3.0}, ids_);
  ASSERT_EQ(split.refusal, Refusal::None);
  const Yard after = apply(yard_, split.edit);
  for (const Id<Drift> id : {split.first, split.second}) {
    const Drift& part = *after.drifts.find(id);
    const Box box = boundsOf(positionsOf(part));
    const double wanted = box.width() > box.height() ? 0.0 : 90.0;
    const double axis = std::fmod(part.axis.degrees() + 180.0, 180.0);
    EXPECT_LT(std::abs(std::remainder(axis - wanted, 180.0)), 25.0) << wanted;
    EXPECT_GT(part.stretch, 1.5);
  }
}

TEST_F(Divide, SquareRowsKeepTheAxisTheyStandAlong) {
  lay(7);
  Drift square = *yard_.drifts.find(builder_.lastDrift());
  square.pattern = Pattern::Square;
  square.axis = Angle::degrees(12);
  yard_.drifts = yard_.drifts.with(square);
  const Division split = splitDrift(yard_, square.id, {2.4, 0}, {2.4, 3}, ids_);
  const Yard after = apply(yard_, split.edit);
  for (const Drift& part : after.drifts) EXPECT_EQ(part.axis, square.axis);
}

// 2 Merging

TEST_F(Divide, TwoTouchingDriftsBecomeOne) {
  lay(5);
  const Id<Drift> first = builder_.lastDrift();
  builder_.drift("Carex", row(3, 0.4, {3.0, 1.5}));
  yard_ = builder_.build();
  const Division merged = mergeDrifts(yard_, builder_.lastDrift(), first, ids_);
  EXPECT_EQ(merged.first, first);  // the larger keeps its id
  EXPECT_EQ(merged.edit.label, "Merge drifts to 9, 1 added");
  const Yard after = apply(yard_, merged.edit);
  EXPECT_EQ(after.drifts.size(), 1U);
  for (const Id<Plant> id : idsOf(yard_)) EXPECT_TRUE(idsOf(after).contains(id));
  EXPECT_EQ(apply(after, inverse(merged.edit)), yard_);
}

TEST_F(Divide, DriftsThatDifferOrStandApartAreNotMerged) {
  lay(5);
  const Id<Drift> first = builder_.lastDrift();
  builder_.drift("Aster", row(3, 0.4, {3.0, 1.5}));
  const Id<Drift> other = builder_.lastDrift();
  builder_.drift("Carex", row(3, 0.4, {6.0, 1.5}));
  const Id<Drift> far = builder_.lastDrift();
  builder_.drift("Carex", row(3, 0.4, {3.0, 2.2})).layer(Layer::Ground);
  const Id<Drift> under = builder_.lastDrift();
  yard_ = builder_.build();
  EXPECT_EQ(mergeDrifts(yard_, first, other, ids_).refusal, Refusal::OtherSpecies);
  EXPECT_EQ(mergeDrifts(yard_, first, far, ids_).refusal, Refusal::Apart);
  EXPECT_EQ(mergeDrifts(yard_, first, under, ids_).refusal, Refusal::OtherPlanting);
  EXPECT_EQ(mergeDrifts(yard_, first, first, ids_).refusal, Refusal::Missing);
  Drift locked = *yard_.drifts.find(first);
  locked.locked = true;
  yard_.drifts = yard_.drifts.with(locked);
  EXPECT_EQ(mergeDrifts(yard_, first, far, ids_).refusal, Refusal::Locked);
  EXPECT_EQ(splitDrift(yard_, first, {2, 0}, {2, 3}, ids_).refusal, Refusal::Locked);
}

// 3 Any ground

class AnySplit : public testing::TestWithParam<unsigned> {};

TEST_P(AnySplit, LosesNoPlantUntoldAndMovesNone) {
  const test::RandomGround ground = test::randomGround(GetParam());
  IdSource ids(1000);
  GrowRequest request = ground.drops.front();
  request.count = 5 + 2 * static_cast<int>(GetParam() % 7);
  const auto places = growDrift(ground.yard, request).places;
  if (places.size() < 2) GTEST_SKIP() << "no room for a drift here";
  const Yard yard = test::withDrift(ground.yard, request, places, ids);
  const Drift& before = *yard.drifts.begin();
  const Point middle = middleOf(before) + Point{0.01, 0.013};
  const Point across = rotated({0.0, 1.0}, before.axis + Angle::degrees(7.0 * GetParam()));
  const Division split = splitDrift(yard, before.id, middle, middle + across, ids);
  if (split.refusal == Refusal::AllOnOneSide) GTEST_SKIP() << "the line misses the plants";
  const Yard after = apply(yard, split.edit);
  const Drift& first = *after.drifts.find(split.first);
  const Drift& second = *after.drifts.find(split.second);
  EXPECT_EQ(first.plants.size() % 2, 1U);
  EXPECT_EQ(second.plants.size() % 2, 1U);
  EXPECT_EQ(std::ssize(first.plants) + std::ssize(second.plants),
            std::ssize(before.plants) + split.added - split.removed);
  int kept = 0;
  for (const Plant& plant : before.plants)
    for (const Drift* part : {&first, &second})
      kept += static_cast<int>(std::count(part->plants.begin(), part->plants.end(), plant));
  EXPECT_EQ(kept, std::ssize(before.plants) - split.removed);
}
INSTANTIATE_TEST_SUITE_P(Seeds, AnySplit, testing::Range(0U, 60U));

}  // namespace
}  // namespace tussock
