// SPDX-License-Identifier: MIT
// A bed filled with an eye to the checks: what is avoidable is avoided, the rest is told in words.
#include "core/checks/checked_fill.h"

#include <cmath>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/checks/registry.h"
#include "core/edit/draft.h"
#include "core/planting/measures.h"
#include "tests/support/random_beds.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

const Catalogue& facts() {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  return catalogue;
}

FillResult filled(const Yard& yard, Id<Bed> bed, std::vector<ListedSpecies> plants = {}) {
  IdSource ids(largestId(yard) + 1);
  FillRequest request;
  request.bed = bed;
  request.plants = std::move(plants);
  return fillChecked(yard, facts(), nullptr, request, ids).value_or(FillResult());
}

std::vector<Finding> findingsAfter(const Yard& yard, const FillResult& result) {
  const Yard after = apply(yard, result.edit);
  return runChecks({after, facts(), nullptr}).value_or(std::vector<Finding>());
}

class CheckedFill : public testing::TestWithParam<unsigned> {};

// The list is the fill's own, so it is to blame for whatever the checks find.
TEST_P(CheckedFill, OfARandomBedLeavesNothingToFind) {
  const test::RandomBed random = test::randomBed(GetParam());
  const FillResult result = filled(random.yard, random.bed);
  ASSERT_FALSE(result.edit.empty());
  for (const Finding& finding : findingsAfter(random.yard, result))
    ADD_FAILURE() << test::nameOf(random.shape) << ": " << wordOf(finding.check) << " "
                  << finding.about << " " << finding.measured;
}
INSTANTIATE_TEST_SUITE_P(Beds, CheckedFill, testing::Values(0u, 1u, 3u, 4u, 6u, 8u, 9u, 11u));

// Common practice: drifts of one species do not touch. These two are seen from two sides, which
// leaves the tall ones one corner.
TEST(CheckedFill, OfABedSeenFromTwoSidesKeepsDriftsOfASpeciesApart) {
  for (const auto& [seed, wildness] : {std::pair(14u, 0.9), std::pair(2u, 0.9)}) {
    const test::RandomBed random = test::randomBed(seed);
    IdSource ids(largestId(random.yard) + 1);
    FillRequest request;
    request.bed = random.bed;
    request.wildness = wildness;
    request.timeLimit = std::chrono::minutes(5);
    const auto result = fillChecked(random.yard, facts(), nullptr, request, ids);
    ASSERT_TRUE(result);
    const BedMeasures measured = measure(apply(random.yard, result->edit), random.bed);
    EXPECT_LE(measured.besideOwn, measured.drifts / 50) << seed;
  }
}

TEST(CheckedFill, TakesTheLimitsTheYardSets) {
  Settings settings;
  EXPECT_EQ(fillLimits(settings).speciesShare, 0.10);  // Santamour (1990): 10, 20 and 30 %
  EXPECT_EQ(fillLimits(settings).genusShare, 0.20);
  EXPECT_EQ(fillLimits(settings).familyShare, 0.30);
  settings.thresholds = {{"species_share", 0.25}, {"eye_height", 1.2}};
  EXPECT_EQ(fillLimits(settings).speciesShare, 0.25);
  EXPECT_EQ(fillLimits(settings).sight.eyeHeight, 1.2);
}

Yard meadow(Id<Bed>& bed) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))").viewing("S");
  bed = builder.lastBed();
  return builder.build();
}

// Three species cannot each stay under a tenth: arithmetic.
TEST(CheckedFill, TellsThatAListIsTooShortForItsShares) {
  Id<Bed> bed;
  const Yard yard = meadow(bed);
  const FillResult result =
      filled(yard, bed,
             {{"Monarda fistulosa", 0.0}, {"Schizachyrium scoparium", 0.0}, {"Zizia aurea", 0.0}});
  ASSERT_FALSE(result.edit.empty());
  EXPECT_THAT(result.notes, Contains(HasSubstr("the list has too few kinds")));
}

TEST(CheckedFill, ComesNearSharesThatAreAskedForAndSaysWhatCame) {
  Id<Bed> bed;
  const Yard yard = meadow(bed);
  const FillResult result =
      filled(yard, bed, {{"Schizachyrium scoparium", 0.7}, {"Monarda fistulosa", 0.3}});
  double grass = 0.0, all = 0.0;
  for (const Drift& drift : apply(yard, result.edit).drifts) {
    all += static_cast<double>(drift.plants.size());
    if (drift.species == "Schizachyrium scoparium")
      grass += static_cast<double>(drift.plants.size());
  }
  EXPECT_NEAR(grass / all, 0.7, 0.1);
  const bool kept = std::abs(grass / all - 0.7) <= 0.03;
  EXPECT_THAT(result.notes,
              Contains(HasSubstr(kept ? "as the plant list asks" : "asked 70\u00a0%, planted ")));
}

TEST(CheckedFill, NamesWhatItProposesForTheGapsOfABedWithoutAList) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))").viewing("S");
  builder.drift("Monarda fistulosa", test::row(9, 0.6, {1.0, 2.0})).spaced(0.6);
  const Yard yard = builder.build();
  IdSource ids(largestId(yard) + 1);
  FillRequest request;
  request.bed = builder.lastBed();
  request.what = FillWhat::EmptyPart;
  const auto gaps = fillChecked(yard, facts(), nullptr, request, ids);
  ASSERT_TRUE(gaps && gaps->proposed && !gaps->edit.empty());
  const Drift* planted = nullptr;
  for (const Change& change : gaps->edit.changes)
    if (change.after && planted == nullptr) planted = std::get_if<Drift>(&*change.after);
  ASSERT_NE(planted, nullptr);
  const Species* first = facts().find(planted->species);
  ASSERT_NE(first, nullptr);
  EXPECT_THAT(gaps->notes, Contains(AllOf(HasSubstr("were proposed from the plant facts"),
                                          HasSubstr(facts().nameApart(*first)))));
  request.plants = {{"Zizia aurea", 0.0}};
  const auto listed = fillChecked(yard, facts(), nullptr, request, ids);
  ASSERT_TRUE(listed.has_value());
  EXPECT_THAT(listed->notes, Not(Contains(HasSubstr("proposed"))));
}

// A lawn of sedge: nothing else is on the list, so it is all of the bed, whatever share it has.
TEST(CheckedFill, TakesTheShareOfCoversAloneInProportion) {
  test::YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 5 0, 5 4, 0 4, 0 0))").viewing("S");
  const Yard yard = builder.build();
  IdSource ids(largestId(yard) + 1);
  FillRequest request;
  request.bed = builder.lastBed();
  request.plants = {{"Carex pensylvanica", 0.3}};
  const auto lawn = fillChecked(yard, facts(), nullptr, request, ids);
  ASSERT_TRUE(lawn && !lawn->edit.empty());
  EXPECT_THAT(lawn->notes, Contains(HasSubstr("come to 30 %; they were taken in proportion")));
  EXPECT_THAT(lawn->notes, Not(Contains(HasSubstr("asked"))));
}

TEST(CheckedFill, OfWhatItDidNotPlantItSaysNothing) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 8 0, 8 5, 0 5, 0 0))").viewing("S");
  const Yard bare = builder.build();
  IdSource ids(largestId(bare) + 1);
  FillRequest request;
  request.bed = builder.lastBed();
  const auto whole = fillChecked(bare, facts(), nullptr, request, ids);
  ASSERT_TRUE(whole && whole->proposed && !whole->edit.empty());
  request.what = FillWhat::EmptyPart;
  const auto gaps = fillChecked(apply(bare, whole->edit), facts(), nullptr, request, ids);
  ASSERT_TRUE(gaps && gaps->proposed && gaps->edit.empty());
  EXPECT_THAT(gaps->notes, Contains(HasSubstr("no room left for a group")));
  EXPECT_THAT(gaps->notes, Not(Contains(HasSubstr("proposed"))));
}

// Two that are kept stand nearer than their spacing, whatever is planted beside them.
TEST(CheckedFill, TellsThatWhatIsKeptHasAPartInAFinding) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))").viewing("S");
  const Id<Bed> bed = builder.lastBed();
  builder.drift("Monarda fistulosa", {{4.0, 2.0}, {4.1, 2.0}, {4.5, 2.2}});
  Yard yard = builder.build();
  Drift kept = *yard.drifts.find(builder.lastDrift());
  kept.locked = true;
  yard.drifts = yard.drifts.with(kept);
  const FillResult result = filled(yard, bed);
  ASSERT_FALSE(result.edit.empty());
  EXPECT_THAT(result.notes, Contains(AllOf(HasSubstr("Too close together"),
                                           HasSubstr("what was kept in the bed has a part"))));
}

// A moment is not enough to try every exchange on so much ground.
TEST(CheckedFill, TellsThatTheTimeWasUp) {
  test::YardBuilder builder;
  builder.bed("Field", "POLYGON ((0 0, 60 0, 60 40, 0 40, 0 0))").viewing("S");
  FillRequest request;
  request.bed = builder.lastBed();
  request.timeLimit = std::chrono::milliseconds(200);
  const Yard yard = builder.build();
  IdSource ids(largestId(yard) + 1);
  const auto result = fillChecked(yard, facts(), nullptr, request, ids);
  ASSERT_TRUE(result && result->cutShort);
  EXPECT_THAT(result->notes, Contains(HasSubstr("The time was up")));
  EXPECT_THAT(result->notes, Not(Contains(HasSubstr("no exchange between drifts"))));
}

// A list without a flower before July leaves the spring bare, whoever plants it.
TEST(CheckedFill, TellsThatNothingOnTheListFlowersThen) {
  Id<Bed> bed;
  const Yard yard = meadow(bed);
  const FillResult result = filled(yard, bed,
                                   {{"Symphyotrichum laeve", 0.0},
                                    {"Symphyotrichum oblongifolium", 0.0},
                                    {"Solidago speciosa", 0.0}});
  // The builder's season begins on 20 April; the asters and the goldenrod flower from August on.
  EXPECT_THAT(result.notes, Contains(AllOf(HasSubstr("Nothing flowers from 20 April to"),
                                           HasSubstr("nothing on the list does"))));
  EXPECT_THAT(result.notes, Not(Contains(HasSubstr("weeks"))));
}

// Bulbs alone leave most of the ground bare, however often they are listed.
TEST(CheckedFill, BareGroundIsToldFirstAndNotesBeginWithACapital) {
  Id<Bed> bed;
  const Yard yard = meadow(bed);
  const FillResult bare =
      filled(yard, bed, {{"Dodecatheon meadia", 0.0}, {"Dodecatheon meadia", 0.0}});
  ASSERT_FALSE(bare.notes.empty());
  EXPECT_THAT(bare.notes.front(), HasSubstr("lies bare"));
  EXPECT_THAT(bare.notes, Contains(testing::StartsWith("Shooting star is on the list more")));
}

// Four tenths in all, and nothing open: the rest can only go to these two.
TEST(CheckedFill, SharesUnderTheWholeAreTakenInProportionAndNotFoundWanting) {
  Id<Bed> bed;
  const Yard yard = meadow(bed);
  const FillResult result =
      filled(yard, bed, {{"Schizachyrium scoparium", 0.2}, {"Monarda fistulosa", 0.2}});
  EXPECT_THAT(result.notes, Contains(HasSubstr("come to 40 %; they were taken in proportion")));
  EXPECT_THAT(result.notes, Not(Contains(HasSubstr("asked 20"))));
  const FillResult near =
      filled(yard, bed, {{"Schizachyrium scoparium", 0.501}, {"Monarda fistulosa", 0.5}});
  EXPECT_THAT(near.notes, Not(Contains(HasSubstr("in proportion"))));
}

TEST(CheckedFill, ASpeciesThatDoesNotStandInTheBedIsNotPlantedAnew) {
  test::YardBuilder builder;
  builder.bed("Meadow", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))").viewing("S");
  builder.drift("Monarda fistulosa", test::row(9, 0.6, {1.0, 2.0})).spaced(0.6);
  Yard yard = builder.build();
  FillRequest request;
  request.bed = builder.lastBed();
  request.what = FillWhat::OneSpecies;
  request.species = "Zizia aurea";
  EXPECT_THAT(whyNoRefill(yard, facts(), request),
              AllOf(testing::StartsWith("Golden Alexanders does not stand in “Meadow”"),
                    HasSubstr("Add it to the plant list")));
  IdSource ids(largestId(yard) + 1);
  const auto none = fillChecked(yard, facts(), nullptr, request, ids);
  ASSERT_TRUE(none.has_value());
  EXPECT_TRUE(none->edit.empty());
  EXPECT_EQ(none->notes.size(), 1U);
  request.species = "Monarda fistulosa";
  EXPECT_EQ(whyNoRefill(yard, facts(), request), "");
  Drift kept = *yard.drifts.find(builder.lastDrift());
  kept.locked = true;
  yard.drifts = yard.drifts.with(kept);
  EXPECT_THAT(whyNoRefill(yard, facts(), request), HasSubstr("is locked"));
}

// What of a proposed list is not there afterwards is named, with how many they are: in a strip of a
// hand's breadth something is, in ordinary beds nothing.
TEST(CheckedFill, NamesWhatOfAProposedListItDidNotPlant) {
  const test::RandomBed one = test::randomBed(0), other = test::randomBed(3);
  test::YardBuilder builder;
  builder.bed("Strip", "POLYGON ((0 0, 8 0, 8 0.25, 0 0.25, 0 0))");
  std::size_t some = 0;
  for (const auto& [yard, bed] : {std::pair(one.yard, one.bed), std::pair(other.yard, other.bed),
                                  std::pair(builder.build(), builder.lastBed())}) {
    const FillResult result = filled(yard, bed);
    std::set<std::string> planted;
    for (const Drift& drift : apply(yard, result.edit).drifts)
      if (drift.bed == bed) planted.insert(drift.species);
    std::vector<std::string> missing;
    for (const ListedSpecies& listed : result.plants)
      if (!planted.contains(listed.species))
        missing.push_back(facts().nameApart(*facts().find(listed.species)));
    const std::string told = "species proposed, " + std::to_string(missing.size()) + " found";
    if (missing.empty()) {
      EXPECT_THAT(result.notes, Not(Contains(HasSubstr("species proposed"))));
      continue;
    }
    ++some;
    EXPECT_THAT(result.notes, Contains(AllOf(HasSubstr(told), HasSubstr(missing.front()))));
  }
  EXPECT_EQ(some, 1U);
}

}  // namespace
}  // namespace tussock
