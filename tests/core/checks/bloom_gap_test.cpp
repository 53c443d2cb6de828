// SPDX-License-Identifier: MIT
// At least three kinds in flower early, in the middle and late: rule of nine species after the
// Xerces Society. That no week goes without is common practice.
#include <gtest/gtest.h>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"
#include "core/checks/describe.h"
#include "core/checks/suggestions.h"
#include "core/planting/bed_mix.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

// Frosts of 20 April and 18 October: weeks 15 to 41, counted from 0.
std::vector<Finding> gapsOf(const std::vector<const char*>& species, const YardBuilder& from = {}) {
  YardBuilder yard = from;
  yard.bed("Walk", kSquareBed);
  for (const char* name : species) yard.drift(name, {{5.0, 5.0}});
  std::vector<Finding> gaps;
  for (const Finding& finding : found(CheckId::BloomGap, yard))
    if (finding.unit == Quantity::Weeks) gaps.push_back(finding);
  return gaps;
}

TEST(BloomGap, SeasonRunsFromFrostToFrost) {
  const auto weeks = seasonWeeks(YardBuilder().build().settings);
  EXPECT_EQ(weeks.front(), 15);
  EXPECT_EQ(weeks.back(), 41);
  EXPECT_EQ(weeks.size(), 27U);
}

TEST(BloomGap, SeasonRunsOverNewYearInTheSouth) {
  Settings settings;
  settings.latitude = Angle::degrees(-37.0);
  const auto weeks = seasonWeeks(settings);
  EXPECT_EQ(weeks.front(), weekOf(std::chrono::October / 1));
  EXPECT_EQ(weeks.back(), weekOf(std::chrono::April / 30));
  EXPECT_EQ(weeks.size(), 31U);
}

TEST(BloomGap, FlowersThroughoutLeaveNone) {
  EXPECT_TRUE(gapsOf({kAlexanders, kBergamot, kAster}).empty());
}

TEST(BloomGap, AnEmptyYardIsAskedNothing) {
  EXPECT_TRUE(found(CheckId::BloomGap, YardBuilder().bed("Walk", kSquareBed)).empty());
}

TEST(BloomGap, WeeksWithoutFlowersAreFound) {  // April to June, then August to October
  const auto gaps = gapsOf({kAlexanders, kAster});
  ASSERT_EQ(gaps.size(), 1U);
  const auto weeks = parseWeeks(gaps[0].about);
  ASSERT_TRUE(weeks.has_value());
  EXPECT_EQ(gaps[0].measured, lengthOf(*weeks));
  // July's gap lies between the end of June (week 25) and the start of August (week 30).
  EXPECT_GE(weeks->first, 25);
  EXPECT_LE(weeks->last, 30);
  EXPECT_GE(gaps[0].measured, 3.0);
  EXPECT_EQ(gaps[0].severity, Severity::Caution);
}

TEST(BloomGap, AGapAsLongAsTheLimitPasses) {
  const double length = gapsOf({kAlexanders, kAster}).at(0).measured;
  EXPECT_TRUE(
      gapsOf({kAlexanders, kAster}, YardBuilder().threshold("bloom_gap_weeks", length)).empty());
  EXPECT_EQ(gapsOf({kAlexanders, kAster}, YardBuilder().threshold("bloom_gap_weeks", length - 1.0))
                .size(),
            1U);
}

// 20 April is in week 15, the 5th day of it (16 to 22 April): from frost to the end of the next
// week are 10 days, counted on the calendar.
TEST(BloomGap, OnlyDaysOfTheSeasonCount) {
  const Settings settings = YardBuilder().build().settings;
  const DayRange days = daysWithin({15, 16}, growingSeason(settings));
  EXPECT_EQ(days.first, std::chrono::April / 20);
  EXPECT_EQ(days.last, std::chrono::April / 29);
  EXPECT_DOUBLE_EQ(weeksLong(days), 10.0 / 7.0);
  EXPECT_DOUBLE_EQ(weeksLong({std::chrono::December / 25, std::chrono::January / 7}), 2.0);
}

TEST(BloomGap, GrassesAndSedgesAreNoFlowers) {
  EXPECT_EQ(gapsOf({kBluestem, kSedge}).size(), 0U);  // none that flowers, so nothing is asked
  EXPECT_EQ(gapsOf({kAlexanders, kBergamot, kBluestem}).size(), 1U);
}

TEST(BloomGap, ABedIsAskedWhereTheYardHasFlowers) {
  auto yard = YardBuilder()
                  .bed("Late", kSquareBed)
                  .drift(kBergamot, {{5.0, 5.0}})
                  .drift(kAster, {{6.0, 5.0}})
                  .drift(kConeflower, {{7.0, 5.0}});
  const auto late = yard.lastBed();
  yard.bed("Early", kSquareBed).drift(kAlexanders, {{5.0, 5.0}});
  std::vector<Finding> ofBeds;
  for (const Finding& finding : found(CheckId::BloomGap, yard))
    if (!finding.subjects.empty()) ofBeds.push_back(finding);
  ASSERT_EQ(ofBeds.size(), 1U);
  EXPECT_EQ(ofBeds[0].subjects.front(), refTo(late));
  EXPECT_EQ(ofBeds[0].severity, Severity::Hint);
  EXPECT_EQ(parseWeeks(ofBeds[0].about)->first, 15);
}

TEST(BloomGap, FewerThanThreeSpeciesInAThirdIsAHint) {
  auto yard = YardBuilder()
                  .bed("Walk", kSquareBed)
                  .drift(kAlexanders, {{5.0, 5.0}})
                  .drift(kFoamflower, {{5.0, 5.0}})
                  .drift(kBergamot,
                         {{5.0, 5.0}});  // from April, April and June; only this flowers after June
  auto thirds = [&] {
    std::vector<std::string> names;
    for (const Finding& finding : found(CheckId::BloomGap, yard))
      if (finding.unit == Quantity::Count) names.push_back(finding.about);
    return names;
  };
  EXPECT_EQ(thirds(), (std::vector<std::string>{"middle third", "late third"}));
  yard.drift(kAster, {{5.0, 5.0}});
  EXPECT_EQ(thirds(), (std::vector<std::string>{"late third"}));
  yard.drift(kGoldenrod, {{5.0, 5.0}});
  EXPECT_TRUE(thirds().empty());
}

TEST(Suggestions, FillTheGapAndSuitTheGround) {
  const Catalogue facts = tinyCatalogue();
  const WeekRange july{26, 29};
  auto builder = YardBuilder().bed("Walk", kSquareBed).drift(kBergamot, {{5.0, 5.0}});
  Yard yard = builder.build();
  const auto found =
      speciesToFill(july, yard.beds.find(builder.lastBed()), yard, facts, nullptr, 3);
  ASSERT_EQ(found.size(), 3U);
  for (const Species* species : found) {
    EXPECT_TRUE(species->bloomsInMonth(7)) << species->botanicalName;
    EXPECT_NE(species->botanicalName, kBergamot) << "grows there already";
  }
  const WeekRange may{17, 20};
  yard = builder.moisture(Moisture::Moist).build();
  const auto moist = speciesToFill(may, yard.beds.find(builder.lastBed()), yard, facts, nullptr, 3);
  ASSERT_EQ(moist.size(), 1U);
  EXPECT_EQ(moist[0]->botanicalName, kAlexanders);
}

// The season begins with the last frost, 20 April, within the week of 16 to 22 April.
TEST(BloomGap, ThePlantListTellsOfTheSameDaysAndSpecies) {
  const Catalogue facts = tinyCatalogue();
  auto builder = YardBuilder()
                     .bed("Walk", kSquareBed)
                     .drift(kBergamot, {{5.0, 5.0}})
                     .drift(kAster, {{6.0, 5.0}});
  const Yard yard = builder.build();
  const Bed& bed = *yard.beds.find(builder.lastBed());
  const BedMix mix = mixOf(yard, facts, bed, MixOf::Planted, std::nullopt);
  ASSERT_FALSE(mix.remedies.empty());
  const Remedy& listed = mix.remedies.front();
  ASSERT_EQ(listed.missing.lack, Lack::Flowers);
  const auto gaps = gapsOf({kBergamot, kAster});
  ASSERT_FALSE(gaps.empty());
  const std::string finding = describe(gaps.front(), yard, facts).text;
  const std::string days =
      daysInWords(*parseWeeks(gaps.front().about), growingSeason(yard.settings));
  EXPECT_TRUE(days.starts_with("20 April to ")) << days;
  EXPECT_NE(listed.missing.text.find(days), std::string::npos) << listed.missing.text;
  EXPECT_NE(finding.find(days), std::string::npos) << finding;
  const auto proposed =
      speciesToFill(*listed.missing.weeks, nullptr, yard, facts, nullptr, listed.species.size());
  ASSERT_EQ(proposed.size(), listed.species.size());
  ASSERT_FALSE(proposed.empty());
  for (std::size_t i = 0; i < proposed.size(); ++i)
    EXPECT_EQ(proposed[i]->botanicalName, listed.species[i].species->botanicalName);
}

}  // namespace
}  // namespace tussock
