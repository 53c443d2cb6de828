// SPDX-License-Identifier: MIT
#include "core/planting/edit_drift.h"

#include <algorithm>
#include <set>

#include <gmock/gmock.h>

#include "core/planting/one_piece.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::YardBuilder;

Species coneflower() {
  Species species;
  species.botanicalName = "Echinacea purpurea";
  species.commonName = "purple coneflower";
  species.spacing = Length::metres(0.45);
  return species;
}

std::set<std::int64_t> idsOf(const Drift& drift) {
  std::set<std::int64_t> ids;
  for (const Plant& plant : drift.plants) ids.insert(plant.id.value());
  return ids;
}

class EditDrift : public testing::Test {
 protected:
  EditDrift() {
    builder_.bed("Front", "POLYGON ((0 0, 12 0, 12 5, 0 5, 0 0))").viewing("S");
    front_ = builder_.lastBed();
    builder_.bed("Back", "POLYGON ((0 8, 12 8, 12 12, 0 12, 0 8))").viewing("S");
    back_ = builder_.lastBed();
    yard_ = builder_.build();
  }
  DriftEdit plant(int count, Point at = {5, 2.5}) {
    GrowRequest request;
    request.bed = front_;
    request.count = count;
    request.at = at;
    const DriftEdit edit = plantDrift(yard_, coneflower(), request, ids_);
    yard_ = apply(yard_, edit.edit);
    return edit;
  }
  const Drift& drift(const DriftEdit& edit) { return *yard_.drifts.find(edit.drift); }

  YardBuilder builder_;
  Id<Bed> front_, back_;
  Yard yard_;
  IdSource ids_{100};
};

TEST_F(EditDrift, PlantingSaysWhatItPlanted) {
  const DriftEdit edit = plant(7);
  EXPECT_EQ(edit.edit.label, "Plant 7 purple coneflower");
  EXPECT_EQ(edit.asked, 7);
  EXPECT_EQ(edit.fitted, 7);
  EXPECT_EQ(drift(edit).plants.size(), 7U);
  EXPECT_EQ(drift(edit).spacing, Length::metres(0.45));
}

TEST_F(EditDrift, PlantingGivesTheSpeciesOneCodeForGood) {
  plant(3);
  const std::string code = codeOf(yard_, "Echinacea purpurea");
  EXPECT_FALSE(code.empty());
  const DriftEdit second = plant(3, {9, 2.5});
  EXPECT_EQ(yard_.planCodes.size(), 1U);
  yard_.drifts = yard_.drifts.without(second.drift);
  EXPECT_EQ(codeOf(yard_, "Echinacea purpurea"), code);
}

TEST_F(EditDrift, PlantingWhereNothingFitsIsNoEdit) {
  const DriftEdit edit = plant(5, {500, 500});
  EXPECT_TRUE(edit.edit.empty());
  EXPECT_EQ(edit.fitted, 0);
}

TEST_F(EditDrift, MovingKeepsTheShapeAndTakesTheBedUnderTheMiddle) {
  const DriftEdit planted = plant(5);
  const Drift before = drift(planted);
  const DriftEdit moved = moveDrift(yard_, planted.drift, {1.0, 7.5});
  yard_ = apply(yard_, moved.edit);
  EXPECT_EQ(moved.edit.label, "Move drift");
  EXPECT_EQ(drift(planted).bed, back_);
  for (std::size_t i = 0; i < before.plants.size(); ++i)
    EXPECT_EQ(drift(planted).plants[i].at, before.plants[i].at + (Point{1.0, 7.5}));
}

TEST_F(EditDrift, MovingOutOfEveryBedKeepsTheOldOne) {
  const DriftEdit planted = plant(5);
  yard_ = apply(yard_, moveDrift(yard_, planted.drift, {0.0, 300.0}).edit);
  EXPECT_EQ(drift(planted).bed, front_);
}

TEST_F(EditDrift, ALockedDriftStays) {
  const DriftEdit planted = plant(5);
  Drift locked = drift(planted);
  locked.locked = true;
  yard_.drifts = yard_.drifts.with(locked);
  EXPECT_TRUE(moveDrift(yard_, planted.drift, {1, 0}).edit.empty());
  EXPECT_TRUE(turnDrift(yard_, planted.drift, Angle::degrees(20)).edit.empty());
  EXPECT_TRUE(resizeDrift(yard_, planted.drift, 9, ids_).edit.empty());
  EXPECT_TRUE(regrowDrift(yard_, planted.drift, ids_).edit.empty());
}

TEST_F(EditDrift, GrowingKeepsEveryPlantWhereItIs) {
  const DriftEdit planted = plant(7);
  const Drift before = drift(planted);
  const DriftEdit grown = resizeDrift(yard_, planted.drift, 13, ids_);
  yard_ = apply(yard_, grown.edit);
  EXPECT_EQ(grown.edit.label, "Grow drift to 13");
  ASSERT_EQ(drift(planted).plants.size(), 13U);
  for (const Plant& plant : before.plants)
    EXPECT_THAT(drift(planted).plants, testing::Contains(plant));
  EXPECT_TRUE(inOnePiece(positionsOf(drift(planted)), drift(planted).spacing));
}

TEST_F(EditDrift, ShrinkingKeepsPlantsOfTheMiddleInOnePiece) {
  const DriftEdit planted = plant(13);
  const Drift before = drift(planted);
  const DriftEdit shrunk = resizeDrift(yard_, planted.drift, 5, ids_);
  yard_ = apply(yard_, shrunk.edit);
  EXPECT_EQ(shrunk.edit.label, "Shrink drift to 5");
  ASSERT_EQ(drift(planted).plants.size(), 5U);
  for (const Plant& plant : drift(planted).plants)
    EXPECT_THAT(before.plants, testing::Contains(plant));
  EXPECT_TRUE(inOnePiece(positionsOf(drift(planted)), drift(planted).spacing));
  EXPECT_LT(distance(middleOf(drift(planted)), middleOf(before)), 0.45);
}

TEST_F(EditDrift, GrowingPastTheRoomGivesWhatFits) {
  const DriftEdit planted = plant(7);
  const DriftEdit grown = resizeDrift(yard_, planted.drift, 2001, ids_);
  EXPECT_EQ(grown.asked, 2001);
  EXPECT_LT(grown.fitted, 400);
  EXPECT_GT(grown.fitted, 200);
  EXPECT_EQ(grown.fitted % 2, 1);
}

TEST_F(EditDrift, TurningTurnsAxisAndPlantsAboutTheMiddle) {
  const DriftEdit planted = plant(7);
  const Drift before = drift(planted);
  yard_ = apply(yard_, turnDrift(yard_, planted.drift, Angle::degrees(90)).edit);
  EXPECT_NEAR(distance(middleOf(drift(planted)), middleOf(before)), 0.0, 1e-9);
  EXPECT_NEAR((drift(planted).axis - before.axis).degrees(), 90.0, 1e-9);
  const Point was = before.plants[0].at - middleOf(before);
  const Point is = drift(planted).plants[0].at - middleOf(before);
  EXPECT_NEAR(is.x, -was.y, 1e-9);
  EXPECT_NEAR(is.y, was.x, 1e-9);
}

TEST_F(EditDrift, SettingOutAnewMendsWhatWasNudgedAndKeepsIds) {
  const DriftEdit planted = plant(7);
  const auto& first = drift(planted).plants[0];
  const auto& second = drift(planted).plants[1];
  yard_ = apply(yard_, nudgePlant(yard_, planted.drift, first.id, second.at).edit);
  const auto before = idsOf(drift(planted));
  yard_ = apply(yard_, regrowDrift(yard_, planted.drift, ids_).edit);
  EXPECT_EQ(idsOf(drift(planted)), before);
  const auto places = positionsOf(drift(planted));
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) EXPECT_GE(distance(places[i], places[j]), 0.85 * 0.449);
}

TEST_F(EditDrift, NudgingMovesOnePlantOnly) {
  const DriftEdit planted = plant(5);
  const Drift before = drift(planted);
  yard_ = apply(yard_, nudgePlant(yard_, planted.drift, before.plants[2].id, {1, 1}).edit);
  Drift expected = before;
  expected.plants[2].at = {1, 1};
  EXPECT_EQ(drift(planted), expected);
}

TEST_F(EditDrift, EveryEditCanBeUndone) {
  const DriftEdit planted = plant(7);
  for (const DriftEdit& edit :
       {moveDrift(yard_, planted.drift, {1, 1}), resizeDrift(yard_, planted.drift, 3, ids_),
        turnDrift(yard_, planted.drift, Angle::degrees(30))})
    EXPECT_EQ(apply(apply(yard_, edit.edit), inverse(edit.edit)), yard_);
}

TEST_F(EditDrift, TheOutlineIsOnePieceAroundEveryPlant) {
  const DriftEdit planted = plant(13);
  const auto outline = outlineOf(drift(planted));
  ASSERT_EQ(outline.size(), 1U);
  for (const Point p : positionsOf(drift(planted))) EXPECT_TRUE(contains(outline.front(), p));
}

}  // namespace
}  // namespace tussock
