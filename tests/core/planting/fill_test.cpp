// SPDX-License-Identifier: MIT
// Filling beds: what must hold whatever the bed. Beds are random but the same on every machine; the
// placing rules are judged by the checks, which know nothing of how a fill works.
#include "core/planting/fill.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/checks/registry.h"
#include "core/edit/draft.h"
#include "tests/support/random_beds.h"

namespace tussock {
namespace {

const Catalogue& facts() {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  return catalogue;
}

FillResult filled(const Yard& yard, Id<Bed> bed, int seed = 1) {
  IdSource ids(largestId(yard) + 1);
  FillRequest request;
  request.bed = bed;
  request.seed = seed;
  request.wildness = 0.5;
  auto result = fillBed(yard, facts(), nullptr, request, ids);
  EXPECT_TRUE(result.has_value());
  return result.value_or(FillResult());
}

class FilledBed : public testing::TestWithParam<unsigned> {
 protected:
  const test::RandomBed random = test::randomBed(GetParam());
};

TEST_P(FilledBed, KeepsThePlacingRulesAndOddCounts) {
  const Yard after = apply(random.yard, filled(random.yard, random.bed).edit);
  ASSERT_GT(after.drifts.size(), 0u);
  const CheckInput input{after, facts(), nullptr};
  for (const CheckId rule :
       {CheckId::Spacing, CheckId::SetBack, CheckId::OddCount, CheckId::Obstructed})
    EXPECT_EQ(runCheck(rule, input).size(), 0u) << test::nameOf(random.shape) << int(rule);
}

TEST_P(FilledBed, ComesOutTheSameForTheSameSeed) {
  const FillResult once = filled(random.yard, random.bed), again = filled(random.yard, random.bed);
  ASSERT_FALSE(once.cutShort || again.cutShort);
  EXPECT_EQ(once.edit, again.edit);
}

INSTANTIATE_TEST_SUITE_P(Shapes, FilledBed, testing::Range(0u, 12u));

TEST(Fill, OfABedThatStandsSoAlreadyChangesNothing) {
  const test::RandomBed random = test::randomBed(3);
  const Yard after = apply(random.yard, filled(random.yard, random.bed).edit);
  const FillResult again = filled(after, random.bed);
  EXPECT_TRUE(again.unchanged);
  EXPECT_TRUE(again.edit.empty());
  EXPECT_GT(again.planted, 0);
  EXPECT_EQ(apply(after, again.edit), after);
}

TEST(Fill, AListIsProposedForThePlantedBedAsForTheBare) {
  const test::RandomBed random = test::randomBed(3);
  const Yard after = apply(random.yard, filled(random.yard, random.bed).edit);
  const auto bare = proposeList(random.yard, facts(), nullptr, random.bed, 1, 0.5);
  EXPECT_GT(bare.size(), 3u);
  EXPECT_EQ(proposeList(after, facts(), nullptr, random.bed, 1, 0.5), bare);
}

TEST(Fill, AnotherSeedGivesAnotherBed) {
  const test::RandomBed random = test::randomBed(2);
  EXPECT_NE(filled(random.yard, random.bed, 1).edit, filled(random.yard, random.bed, 2).edit);
}

TEST(Fill, LockedDriftsStayPlantForPlant) {
  const test::RandomBed random = test::randomBed(0);
  Yard yard = apply(random.yard, filled(random.yard, random.bed).edit);
  Drift locked = *yard.drifts.begin();
  locked.locked = true;
  yard.drifts = yard.drifts.with(locked);
  const Yard after = apply(yard, filled(yard, random.bed, 5).edit);
  ASSERT_NE(after.drifts.find(locked.id), nullptr);
  EXPECT_EQ(*after.drifts.find(locked.id), locked);
  EXPECT_GT(after.drifts.size(), 1u);
}

TEST(Fill, WhenStoppedThereIsNothing) {
  const test::RandomBed random = test::randomBed(1);
  IdSource ids(largestId(random.yard) + 1);
  FillRequest request;
  request.bed = random.bed;
  std::stop_source stop;
  stop.request_stop();
  EXPECT_FALSE(fillBed(random.yard, facts(), nullptr, request, ids, stop.get_token()).has_value());
}

TEST(Fill, StoppedHalfwayThereIsNothing) {
  const test::RandomBed random = test::randomBed(1);
  IdSource ids(largestId(random.yard) + 1);
  FillRequest request;
  request.bed = random.bed;
  std::stop_source stop;
  int planted = 0;
  const auto result = fillBed(random.yard, facts(), nullptr, request, ids, stop.get_token(),
                              [&](const FillProgress& progress) {
                                if (progress.best.empty()) return;
                                ++planted;
                                stop.request_stop();
                              });
  EXPECT_FALSE(result.has_value());
  EXPECT_EQ(planted, 1) << "nothing more is tried";
}

TEST(Fill, TellsHowFarItIsBeforeAnythingIsPlanted) {
  const test::RandomBed random = test::randomBed(1);
  IdSource ids(largestId(random.yard) + 1);
  FillRequest request;
  request.bed = random.bed;
  std::vector<double> shares;
  std::size_t before = 0;  // anything is planted
  bool planted = false;
  const auto result =
      fillBed(random.yard, facts(), nullptr, request, ids, {}, [&](const FillProgress& progress) {
        shares.push_back(progress.share);
        planted = planted || !progress.best.empty();
        before += planted ? 0 : 1;
      });
  ASSERT_TRUE(result.has_value());
  EXPECT_GE(before, 5u);
  EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
  EXPECT_GT(shares.front(), 0.0);
  EXPECT_EQ(shares.back(), 1.0);
}

TEST(Fill, ShowsDriftsAsTheyGrowBeforeAnythingIsPlanted) {
  const test::RandomBed random = test::randomBed(1);
  const Bed& bed = *random.yard.beds.find(random.bed);
  IdSource ids(largestId(random.yard) + 1);
  FillRequest request;
  request.bed = random.bed;
  std::size_t grown = 0, outside = 0, all = 0;
  bool planted = false;
  const auto result =
      fillBed(random.yard, facts(), nullptr, request, ids, {}, [&](const FillProgress& progress) {
        planted = planted || !progress.best.empty();
        if (progress.grown.empty()) return;
        ++grown;
        EXPECT_FALSE(planted) << "what is planted is worth more";
        EXPECT_GT(progress.grown.size(), 2u);
        for (const KeptDrift& drift : progress.grown)
          for (const Point p : drift.places) {
            ++all;
            outside += contains(bed.outline, p) || distanceToEdge(bed.outline, p) < 0.3 ? 0 : 1;
          }
      });
  ASSERT_TRUE(result.has_value());
  EXPECT_GE(grown, 5u);
  EXPECT_GT(all, 0u);
  EXPECT_EQ(outside, 0u);
}

TEST(Fill, BeingWatchedChangesNothing) {
  const test::RandomBed random = test::randomBed(1);
  FillRequest request;
  request.bed = random.bed;
  request.timeLimit = std::chrono::minutes(10);
  const auto filled = [&](const FillProgressCall& progress) {
    IdSource ids(largestId(random.yard) + 1);
    return fillBed(random.yard, facts(), nullptr, request, ids, {}, progress);
  };
  const auto alone = filled({}), watched = filled([](const FillProgress&) {});
  ASSERT_TRUE(alone.has_value() && watched.has_value());
  EXPECT_EQ(apply(random.yard, alone->edit), apply(random.yard, watched->edit));
}

}  // namespace
}  // namespace tussock
