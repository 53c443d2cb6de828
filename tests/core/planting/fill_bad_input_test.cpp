// SPDX-License-Identifier: MIT
// Beds and lists that a fill can do little with: it says so, plants what it honestly can and always
// comes to an end.
#include <algorithm>
#include <map>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/checks/checked_fill.h"
#include "core/checks/registry.h"
#include "core/edit/draft.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

const Catalogue& facts() {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  return catalogue;
}

struct Filled {
  Yard before, after;
  FillResult result;

  [[nodiscard]] int broken() const {
    const CheckInput input{after, facts(), nullptr};
    std::size_t count = 0;
    for (const CheckId rule :
         {CheckId::Spacing, CheckId::SetBack, CheckId::OddCount, CheckId::Obstructed})
      count += runCheck(rule, input).size();
    return static_cast<int>(count);
  }
};

Filled filled(const Yard& yard, FillRequest request) {
  IdSource ids(largestId(yard) + 1);
  request.bed = yard.beds.begin()->id;
  FillResult result = fillChecked(yard, facts(), nullptr, request, ids).value_or(FillResult());
  return {yard, apply(yard, result.edit), result};
}

Filled filledBed(std::string_view outline, std::vector<ListedSpecies> plants = {}) {
  test::YardBuilder builder;
  builder.bed("Bed", outline).viewing("S");
  FillRequest request;
  request.plants = std::move(plants);
  return filled(builder.build(), request);
}

constexpr auto kOrdinary = "POLYGON ((0 0, 5 0, 5 3, 0 3, 0 0))";

TEST(FillBadInput, ABedThinnerThanAnySpacingStaysEmptyAndSaysWhy) {
  const Filled bed = filledBed("POLYGON ((0 0, 6 0, 6 0.08, 0 0.08, 0 0))");
  EXPECT_EQ(bed.result.planted, 0);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("too narrow")));
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
  const Filled bed = filledBed(kOrdinary, {{"Schizachyrium scoparium", 0.0}});
  EXPECT_GT(bed.result.planted, 20);
  EXPECT_EQ(bed.broken(), 0);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("too few kinds")));
}

TEST(FillBadInput, AListOfEightySpeciesIsCutToWhatTheBedTakes) {
  std::vector<ListedSpecies> plants;
  for (const Species& species : facts().species())
    if (plants.size() < 80) plants.push_back({species.botanicalName, 0.0});
  const Filled bed = filledBed(kOrdinary, plants);
  EXPECT_GT(bed.result.planted, 20);
  EXPECT_EQ(bed.broken(), 0);
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("that suit the bed were planted")));
}

TEST(FillBadInput, SharesBeyondTheWholeAreTakenInProportion) {
  const Filled bed =
      filledBed(kOrdinary, {{"Schizachyrium scoparium", 0.9}, {"Monarda fistulosa", 0.9}});
  EXPECT_THAT(bed.result.notes, Contains(HasSubstr("come to 180 %")));
  int grass = 0;
  for (const Drift& drift : bed.after.drifts)
    if (drift.species == "Schizachyrium scoparium") grass += static_cast<int>(drift.plants.size());
  EXPECT_NEAR(static_cast<double>(grass) / bed.result.planted, 0.5, 0.1);
}

TEST(FillBadInput, NamesThatNobodyKnowsAreTold) {
  const Filled bed =
      filledBed(kOrdinary, {{"Planta ignota", 0.0}, {"Schizachyrium scoparium", 0.0}});
  EXPECT_THAT(bed.result.notes,
              Contains(AllOf(HasSubstr("Planta ignota"), HasSubstr("not in the catalogue"))));
  EXPECT_GT(bed.result.planted, 0);
  const Filled none = filledBed(kOrdinary, {{"Planta ignota", 0.0}});
  EXPECT_EQ(none.result.planted, 0);
  EXPECT_THAT(none.result.notes, Not(IsEmpty()));
}

// Sedges and bulbs stand under and between the main plants, a trowel's width from each.
TEST(FillLayers, GroundAndBulbsStandUnderAndBetweenTheMainLayer) {
  const Filled bed = filledBed(kOrdinary, {{"Schizachyrium scoparium", 0.0},
                                           {"Monarda fistulosa", 0.0},
                                           {"Carex pensylvanica", 0.0},
                                           {"Dodecatheon meadia", 0.0}});
  EXPECT_EQ(bed.broken(), 0);
  std::vector<Point> main;
  std::map<Layer, int> plants;
  int under = 0;
  for (const Drift& drift : bed.after.drifts)
    if (drift.layer == Layer::Main) {
      for (const Plant& plant : drift.plants) main.push_back(plant.at);
    }
  for (const Drift& drift : bed.after.drifts)
    for (const Plant& plant : drift.plants) {
      ++plants[drift.layer];
      if (drift.layer != Layer::Main && std::any_of(main.begin(), main.end(), [&](Point p) {
            return distance(p, plant.at) < 0.25;
          }))
        ++under;
    }
  EXPECT_GT(plants[Layer::Main], 30);
  EXPECT_GT(plants[Layer::Ground], 30);
  EXPECT_GT(plants[Layer::Bulbs], 30);
  EXPECT_GT(under, 20);
}

TEST(FillBadInput, AFullBedHasNoEmptyPart) {
  const Filled full = filledBed(kOrdinary);
  FillRequest request;
  request.what = FillWhat::EmptyPart;
  const Filled again = filled(full.after, request);
  for (const Drift& drift : full.after.drifts) EXPECT_EQ(*again.after.drifts.find(drift.id), drift);
  EXPECT_EQ(again.broken(), 0);
  if (again.result.planted == 0) {
    EXPECT_THAT(again.result.notes, Contains(HasSubstr("no room")));
  }
}

TEST(FillBadInput, OneSpeciesThatIsNotInTheBedIsPlantedWhereRoomIs) {
  const Filled full = filledBed(kOrdinary);
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
