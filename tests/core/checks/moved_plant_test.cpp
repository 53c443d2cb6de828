// SPDX-License-Identifier: MIT
// What a plant would break while it moves is what the checks find once it is there.
#include "core/checks/moved_plant.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/checks/mend_drift.h"
#include "core/edit/draft.h"
#include "core/planting/edit_drift.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

class MovedPlant : public testing::Test {
 protected:
  MovedPlant() {
    builder_.bed("Front", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))");
    builder_.drift("Aster", test::row(3, 0.5, {5.0, 2.0})).spaced(0.5);
    other_ = builder_.lastDrift();
    builder_.paving("Path", "POLYGON ((3 3, 4 3, 4 4, 3 4, 3 3))");
    builder_.drift("Carex", test::row(3, 0.4, {1.0, 2.0}));
    yard_ = builder_.build();
    plant_ = yard_.drifts.find(builder_.lastDrift())->plants[1].id;
  }
  // Of its place; that it stands apart from its drift there is another matter.
  [[nodiscard]] std::vector<Finding> at(Point to) const {
    const CheckInput input{yard_, facts_};
    return ofPlaces(findingsAt(surveyOf(input), builder_.lastDrift(), plant_, to));
  }
  static std::vector<Finding> ofPlaces(std::vector<Finding> findings) {
    std::erase_if(findings, [](const Finding& f) { return f.check == CheckId::Pieces; });
    return findings;
  }

  test::YardBuilder builder_;
  Catalogue facts_;
  Yard yard_;
  Id<Drift> other_;
  Id<Plant> plant_;
};

TEST_F(MovedPlant, BreaksNothingWhereItStands) {
  EXPECT_TRUE(at({1.4, 2.0}).empty());
}

TEST_F(MovedPlant, TellsTheNearestPlantOfAnotherDrift) {
  const auto findings = at({5.3, 2.0});
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].check, CheckId::Spacing);
  EXPECT_EQ(findings[0].subjects.back(), refTo(other_));
  EXPECT_NEAR(findings[0].measured, 0.2, 1e-9);
  EXPECT_NEAR(findings[0].required, 0.85 * 0.45, 1e-9);
}

TEST_F(MovedPlant, TellsSetBackAndPaving) {
  const auto edge = at({2.0, 0.05});
  ASSERT_EQ(edge.size(), 1U);
  EXPECT_EQ(edge[0].check, CheckId::SetBack);
  EXPECT_NEAR(edge[0].measured, 0.05, 1e-9);
  const auto path = at({3.5, 3.5});
  ASSERT_EQ(path.size(), 1U);
  EXPECT_EQ(path[0].check, CheckId::Obstructed);
}

TEST_F(MovedPlant, OnASlopeDistancesRunAlongTheGround) {
  EXPECT_EQ(at({1.0, 2.33}).size(), 1U);  // 0.33 of the 0.34 m asked
  yard_.settings.slope = Angle::radians(std::atan(0.5));
  yard_.settings.aspect = Angle::degrees(180);
  EXPECT_TRUE(at({1.0, 2.33}).empty());  // 0.33 times 1.118
}

TEST_F(MovedPlant, AgreesWithTheChecksEverywhere) {
  for (int i = 0; i < 400; ++i) {
    const Point to{-0.5 + 0.47 * (i % 20), -0.3 + 0.24 * (i / 20)};
    const Yard moved = apply(yard_, nudgePlant(yard_, builder_.lastDrift(), plant_, to).edit);
    const CheckInput input{moved, facts_};
    const Survey survey = surveyOf(input);
    std::vector<Finding> found;
    for (const auto check : {checkSpacing, checkSetBack, checkObstructed, checkPieces})
      for (Finding& finding : check(survey, survey.beds.front()))
        if (finding.check == CheckId::Pieces ||
            std::count(finding.plants.begin(), finding.plants.end(), plant_) > 0)
          found.push_back(std::move(finding));
    const auto told = findingsAt(surveyOf({yard_, facts_}), builder_.lastDrift(), plant_, to);
    ASSERT_EQ(told.size(), found.size()) << to.x << " " << to.y;
    for (const Finding& finding : told)
      EXPECT_TRUE(std::any_of(found.begin(), found.end(),
                              [&](const Finding& f) {
                                return f.check == finding.check &&
                                       std::abs(f.measured - finding.measured) < 1e-9 &&
                                       std::abs(f.required - finding.required) < 1e-9;
                              }))
          << to.x << " " << to.y;
  }
}

// A whole drift, wherever it is taken: what is told is what the checks find of it there.
TEST_F(MovedPlant, OfAWholeDriftItAgreesWithTheChecksEverywhere) {
  const Id<Drift> id = builder_.lastDrift();
  const CheckInput before{yard_, facts_};
  for (int i = 0; i < 400; ++i) {
    const Point step{-2.0 + 0.43 * (i % 20), -2.3 + 0.24 * (i / 20)};
    const Yard moved = apply(yard_, moveDrift(yard_, id, step).edit);
    const CheckInput input{moved, facts_};
    const Survey survey = surveyOf(input);
    std::vector<std::pair<CheckId, double>> found, told;
    for (const auto check : {checkSpacing, checkSetBack, checkObstructed})
      for (const Finding& finding : check(survey, survey.beds.front()))
        if (std::count(finding.subjects.begin(), finding.subjects.end(), refTo(id)) > 0)
          found.emplace_back(finding.check, std::round(finding.measured * 1e6));
    for (const Finding& finding : findingsAt(surveyOf(before), *moved.drifts.find(id)))
      told.emplace_back(finding.check, std::round(finding.measured * 1e6));
    std::sort(found.begin(), found.end());
    std::sort(told.begin(), told.end());
    ASSERT_EQ(told, found) << step.x << " " << step.y;
  }
}

TEST_F(MovedPlant, MendingMovesOnlyWhatBreaksARule) {
  const Id<Drift> id = builder_.lastDrift();
  const Drift before = *yard_.drifts.find(id);
  yard_ = apply(yard_, nudgePlant(yard_, id, plant_, {1.1, 2.0}).edit);
  const ChangeSet edit = mendDrift(yard_, facts_, id).edit;
  EXPECT_EQ(edit.label, "Settle 1 plant");
  yard_ = apply(yard_, edit);
  const Drift& after = *yard_.drifts.find(id);
  int moved = 0;
  for (std::size_t i = 0; i < before.plants.size(); ++i) {
    EXPECT_EQ(after.plants[i].id, before.plants[i].id);
    EXPECT_TRUE(at(after.plants[1].at).empty());
    moved += before.plants[i].at == after.plants[i].at ? 0 : 1;
  }
  EXPECT_LE(moved, 2);  // the nudged one, or the one it was nudged onto and itself
  EXPECT_TRUE(mendDrift(yard_, facts_, id).edit.empty());
}

// Turned across a narrow bed most of it stands outside: plant after plant alone finds no way back.
TEST(MendDrift, SetsADriftOutAnewWhereSettlingPlantsDoesNotDo) {
  test::YardBuilder builder;
  builder.bed("Strip", "POLYGON ((0 0, 8 0, 8 1.5, 0 1.5, 0 0))");
  builder.drift("Liatris", test::row(3, 0.4, {0.4, 0.75})).spaced(0.4);
  builder.drift("Carex", {}).spaced(0.4);
  const Id<Drift> id = builder.lastDrift();
  Yard yard = builder.build();
  IdSource ids(1000);
  Drift drift = *yard.drifts.find(id);
  GrowRequest request;
  request.bed = drift.bed;
  request.spacing = drift.spacing;
  request.count = 13;
  request.at = {4.0, 0.75};
  for (const Point place : growDrift(yard, request).places)
    drift.plants.push_back({ids.take<Plant>(), place});
  ASSERT_EQ(drift.plants.size(), 13U);
  Draft draft(yard);
  draft.put(drift);
  const Yard planted = apply(yard, draft.finish("Plant"));
  for (const double turn : {30.0, 60.0, 90.0, 120.0, 150.0}) {
    const Yard turned = apply(planted, turnDrift(planted, id, Angle::degrees(turn)).edit);
    const Point middle = middleOf(*turned.drifts.find(id));
    const Yard nudged =
        apply(turned, nudgePlant(turned, id, drift.plants[4].id, middle + Point{0.05, 0.0}).edit);
    const MendedDrift mended = mendDrift(nudged, {}, id);
    ASSERT_FALSE(mended.edit.empty()) << turn;
    EXPECT_EQ(mended.broken, 0) << turn;
    EXPECT_EQ(mended.apart, 0) << turn;
    const Yard after = apply(nudged, mended.edit);
    EXPECT_EQ(after.drifts.find(id)->plants.size(), 13U);
    EXPECT_TRUE(mendDrift(after, {}, id).edit.empty()) << turn;
  }
}

TEST_F(MovedPlant, SomeOfADriftAreJudgedAgainstTheOthersOfIt) {
  const Drift carex = *yard_.drifts.find(builder_.lastDrift());
  const std::vector<Id<Plant>> two{carex.plants[1].id, carex.plants[2].id};
  const auto movedBy = [&](Point step) {
    const Yard after = apply(yard_, movePlants(yard_, carex.id, two, step).edit);
    const CheckInput input{after, facts_};
    return ofPlaces(findingsAt(surveyOf(input), carex.id, two));
  };
  EXPECT_TRUE(movedBy({0.0, 0.5}).empty());
  const auto crowded = movedBy({-0.3, 0.0});  // one of them 0.1 m from the first
  ASSERT_EQ(crowded.size(), 1U);
  EXPECT_EQ(crowded[0].plants, std::vector{two[0]});
  EXPECT_NEAR(crowded[0].measured, 0.1, 1e-9);
  const auto edge = movedBy({0.0, -1.95});  // both 0.05 m from the edge: one finding
  ASSERT_EQ(edge.size(), 1U);
  EXPECT_EQ(edge[0].plants, two);
}

}  // namespace
}  // namespace tussock
