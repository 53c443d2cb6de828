// SPDX-License-Identifier: MIT
// Beds and lists that a fill can do little with: it says so, plants what it honestly can and always
// comes to an end.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/planting/measures.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

using test::Filled;
using test::filled;
using test::filledBed;
using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

constexpr auto kPlainBed = "POLYGON ((0 0, 5 0, 5 3, 0 3, 0 0))";

double shareOf(std::string_view species, const Filled& bed) {
  int plants = 0;
  for (const Drift& drift : bed.after.drifts)
    if (drift.species == species) plants += static_cast<int>(drift.plants.size());
  return static_cast<double>(plants) / bed.result.planted;
}

TEST(FillBadInput, ABedThinnerThanAnySpacingStaysEmptyAndSaysWhy) {
  const Filled bed = filledBed("POLYGON ((0 0, 6 0, 6 0.08, 0 0.08, 0 0))");
  EXPECT_EQ(bed.result.planted, 0);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("too narrow")));
}

TEST(FillBadInput, ASetBackThatLeavesNoGroundIsNamed) {
  test::YardBuilder builder;
  builder.units(UnitSystem::FeetInches).bed("Walk", kPlainBed).setback(Length::feet(16));
  const Filled far = filled(builder.build(), {});
  EXPECT_EQ(far.result.planted, 0);
  EXPECT_THAT(far.result.notes,
              Contains(AllOf(HasSubstr("set-back of 16'"), HasSubstr("Make the set-back less"))));
  EXPECT_THAT(far.result.notes, Not(Contains(HasSubstr("too narrow"))));
}

TEST(FillBadInput, ASetBackIsNotBlamedWhereTheBedHasNoRoomAnyway) {
  test::YardBuilder builder;
  builder.bed("Walk", "POLYGON ((0 0, 6 0, 6 0.08, 0 0.08, 0 0))").setback(Length::metres(0.5));
  EXPECT_THAT(filled(builder.build(), {}).result.notes, Contains(HasSubstr("too narrow")));
}

// As wide as the smallest spacings, or nearly: whatever is planted or not, it is told why not.
TEST(FillBadInput, ABedAsNarrowAsASpacingSaysWhyNothingStandsInIt) {
  for (const char* wide : {"0.12", "0.16", "0.2", "0.26"}) {
    const std::string w = wide;
    const Filled bed = filledBed("POLYGON ((0 0, 6 0, 6 " + w + ", 0 " + w + ", 0 0))");
    EXPECT_EQ(bed.broken(), 0) << w;
    if (bed.result.planted == 0) {
      EXPECT_FALSE(bed.result.notes.empty()) << w;
    }
  }
}

// One line of plants 0.9 spacings apart takes 0.866 / 0.9 of a strip just as wide as their spacing,
// and less of a wider one: at a spacing of 0.25 m in 0.35 m two thirds.
TEST(FillBadInput, ANarrowStripIsPlantedAllAlong) {
  for (const char* wide : {"0.2", "0.3", "0.35", "0.4"}) {
    const std::string w = wide;
    const Filled bed = filledBed("POLYGON ((0 0, 6 0, 6 " + w + ", 0 " + w + ", 0 0))");
    EXPECT_EQ(bed.broken(), 0) << w;
    EXPECT_GT(measure(bed.after, bed.after.beds.begin()->id).groundTaken, 0.6) << w;
  }
}

TEST(FillBadInput, ASpeciesListedTwiceIsPlantedOnceWithBothShares) {
  const Filled bed = filledBed(kPlainBed, {{"Schizachyrium scoparium", 0.3},
                                           {"Monarda fistulosa", 0.4},
                                           {"Schizachyrium scoparium", 0.3}});
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("more than once")));
  EXPECT_NEAR(shareOf("Schizachyrium scoparium", bed), 0.6, 0.1);
}

TEST(FillBadInput, PlantsTooWideForTheBedAreLeftOutByName) {
  const Filled bed = filledBed(
      "POLYGON ((0 0, 6 0, 6 0.5, 0 0.5, 0 0))",
      {{"Eutrochium purpureum", 0.0}, {"Carex pensylvanica", 0.0}, {"Coreopsis lanceolata", 0.0}});
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("nowhere as wide as the spacing")));
  EXPECT_EQ(bed.broken(), 0);
}

class OddOutline : public testing::TestWithParam<const char*> {};
TEST_P(OddOutline, IsPlantedByTheRules) {
  const Filled bed = filledBed(GetParam());
  EXPECT_GT(bed.result.planted, 0) << testing::PrintToString(bed.result.notes);
  EXPECT_EQ(bed.broken(), 0);
}
INSTANTIATE_TEST_SUITE_P(Outlines, OddOutline,
                         testing::Values(
                             // a hole that touches the edge in a point
                             "POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (3 0, 4 1.5, 2 1.5, 3 0))",
                             // an edge that touches itself in a point
                             "POLYGON ((0 0, 3 0, 6 0, 6 3, 3 0.0, 3 3, 0 3, 0 0))",
                             // a hole that shares a length of the edge
                             "POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (2 0, 4 0, 4 1, 2 1, 2 0))",
                             "POLYGON ((0 0, 0.5 0, 0.5 0.4, 0 0.4, 0 0))"));  // 0.2 m²

TEST(FillBadInput, AListOfOneSpeciesFillsTheBedWithIt) {
  const Filled bed =
      filledBed("POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))", {{"Schizachyrium scoparium", 0.0}});
  EXPECT_GT(bed.result.planted, 100);
  EXPECT_EQ(bed.broken(), 0);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("too few kinds")));
}

TEST(FillBadInput, AListOfEightySpeciesIsCutToWhatTheBedTakes) {
  std::vector<ListedSpecies> plants;
  for (const Species& species : test::shippedFacts().species())
    if (plants.size() < 80) plants.push_back({species.botanicalName, 0.0});
  const Filled bed = filledBed(kPlainBed, plants);
  EXPECT_GT(bed.result.planted, 20);
  EXPECT_EQ(bed.broken(), 0);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("left out, as it is too small")));
}

TEST(FillBadInput, SharesBeyondTheWholeAreTakenInProportion) {
  const Filled bed =
      filledBed(kPlainBed, {{"Schizachyrium scoparium", 0.9}, {"Monarda fistulosa", 0.9}});
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("come to 180 %")));
  EXPECT_NEAR(shareOf("Schizachyrium scoparium", bed), 0.5, 0.1);
}

TEST(FillBadInput, NamesThatNobodyKnowsAreTold) {
  const Filled bed =
      filledBed(kPlainBed, {{"Planta ignota", 0.0}, {"Schizachyrium scoparium", 0.0}});
  EXPECT_THAT(bed.result.notes,
              Contains(AllOf(HasSubstr("Planta ignota"), HasSubstr("not in the catalogue"))));
  EXPECT_GT(bed.result.planted, 0);
  const Filled none = filledBed(kPlainBed, {{"Planta ignota", 0.0}});
  EXPECT_EQ(none.result.planted, 0);
  EXPECT_THAT(none.result.notes, Not(IsEmpty()));
}

TEST(FillBadInput, AFullBedHasNoEmptyPart) {
  const Filled full = filledBed(kPlainBed);
  FillRequest request;
  request.what = FillWhat::EmptyPart;
  const Filled again = filled(full.after, request);
  for (const Drift& drift : full.after.drifts) EXPECT_EQ(*again.after.drifts.find(drift.id), drift);
  EXPECT_EQ(again.broken(), 0);
  if (again.result.planted == 0) {
    EXPECT_THAT(again.result.notes, Contains(HasSubstr("no room")));
  }
}

// Ground covers and bulbs are few by choice: a full bed has its share of them.
TEST(FillBadInput, FillingTheGapsOfAFullBedAddsNothingUnderIt) {
  const Filled full = filledBed("POLYGON ((0 0, 8 0, 8 5, 0 5, 0 0))");
  FillRequest request;
  request.what = FillWhat::EmptyPart;
  const auto under = [](const Filled& bed) {
    std::size_t plants = 0;
    for (const Drift& drift : bed.after.drifts)
      if (drift.layer != Layer::Main) plants += drift.plants.size();
    return plants;
  };
  ASSERT_GT(under(full), 0u);
  const Filled again = filled(full.after, request);
  EXPECT_THAT(again.result.notes, Contains(HasSubstr("no room left for a group")));
  EXPECT_EQ(under(again), under(full));
  EXPECT_EQ(again.result.planted, 0);
}

TEST(FillBadInput, OneSpeciesThatIsNotInTheBedIsPlantedWhereRoomIs) {
  const Filled full = filledBed(kPlainBed);
  FillRequest request;
  request.what = FillWhat::OneSpecies;
  request.species = "Planta ignota";
  const Filled again = filled(full.after, request);
  EXPECT_EQ(again.result.planted, 0);
  EXPECT_TRUE(again.result.edit.empty());
  EXPECT_THAT(again.result.notes, Not(IsEmpty()));
}

// Two hectares in no time at all: it ends, says that the time was up, and breaks no rule.
TEST(FillBadInput, AFieldOfTwoHectaresEndsWhenTheTimeIsUp) {
  test::YardBuilder builder;
  builder.bed("Field", "POLYGON ((0 0, 200 0, 200 100, 0 100, 0 0))").viewing("S");
  FillRequest request;
  request.timeLimit = std::chrono::milliseconds(50);
  const Filled bed = filled(builder.build(), request);
  EXPECT_TRUE(bed.result.cutShort);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("The time was up")));
  EXPECT_EQ(bed.broken(), 0);
}

}  // namespace
}  // namespace tussock
