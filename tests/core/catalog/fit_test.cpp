// SPDX-License-Identifier: MIT
#include "core/catalog/fit.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/plan_codes.h"

namespace tussock {
namespace {

struct ClassAt {
  double hours;
  const char* profile;
  SunNeed expected;
};

class SunClassAt : public testing::TestWithParam<ClassAt> {};

TEST_P(SunClassAt, IsAsPublished) {
  const ClassAt& at = GetParam();
  EXPECT_EQ(sunClass(at.hours, sunProfile(at.profile)), at.expected)
      << at.hours << " h, " << at.profile;
}

// Penn State Extension, Planting in Sun or Shade: full sun 6 hours and more, partial sun 4 to 6,
// partial shade 2 to 4, shade less than 2; Nebraska Extension, Right Plant, Right Place, alike.
// UF/IFAS Extension Duval County: partial sun roughly four to five, partial shade roughly three.
// Huddleston and Crawford: partial shade more than one and a half. Lady Bird Johnson Wildflower
// Center and NC State Extension: part shade 2 to 6, shade less than 2. Central Michigan University
// botanical garden: part three to five, shade less than three. A limit itself belongs to the
// sunnier class; the sources leave that open below 6.
INSTANTIATE_TEST_SUITE_P(
    Boundaries, SunClassAt,
    testing::Values(
        ClassAt{6.0, "usual", SunNeed::Full}, ClassAt{6.0, "two-to-six", SunNeed::Full},
        ClassAt{6.0, "four-to-six", SunNeed::Full}, ClassAt{6.0, "one-and-a-half", SunNeed::Full},
        ClassAt{5.9, "usual", SunNeed::Part}, ClassAt{5.9, "two-to-six", SunNeed::Part},
        ClassAt{5.9, "four-to-six", SunNeed::Part}, ClassAt{4.0, "four-to-six", SunNeed::Part},
        ClassAt{3.9, "four-to-six", SunNeed::Shade}, ClassAt{3.0, "usual", SunNeed::Part},
        ClassAt{3.0, "two-to-six", SunNeed::Part}, ClassAt{2.9, "usual", SunNeed::Shade},
        ClassAt{2.0, "two-to-six", SunNeed::Part}, ClassAt{1.9, "two-to-six", SunNeed::Shade},
        ClassAt{1.9, "four-to-six", SunNeed::Shade}, ClassAt{0.0, "usual", SunNeed::Shade},
        ClassAt{4.0, "two-to-six", SunNeed::Part}, ClassAt{4.5, "usual", SunNeed::Part},
        ClassAt{1.6, "one-and-a-half", SunNeed::Part},
        ClassAt{1.4, "one-and-a-half", SunNeed::Shade}));

TEST(SunProfiles, AnUnknownOneIsTheUsual) {
  EXPECT_EQ(sunProfile("no such").id, "usual");
  for (const SunProfile& profile : sunProfiles()) {
    EXPECT_FALSE(profile.source.empty()) << profile.id;
    EXPECT_LT(profile.partFrom, profile.fullFrom) << profile.id;
  }
}

Species prairieDropseed() {
  Species species;
  species.botanicalName = "Sporobolus heterolepis";
  species.sun = {SunNeed::Full, SunNeed::Part};
  species.moisture = {Moisture::Dry, Moisture::Medium};
  species.zoneLow = 3;
  species.zoneHigh = 8;
  species.nativeStates = {"IL", "IN"};
  return species;
}

TEST(HoursWanted, IsTheUnionOfTheClasses) {
  const HoursRange wanted = hoursWanted(prairieDropseed(), sunProfile("usual"));
  EXPECT_EQ(wanted.least, 3.0);
  EXPECT_EQ(wanted.most, 24.0);
  Species shade;
  shade.sun = {SunNeed::Shade};
  EXPECT_EQ(hoursWanted(shade, sunProfile("usual")).most, 3.0);
  EXPECT_EQ(hoursWanted(Species{}, sunProfile("usual")).most, 24.0);
}

TEST(WhyNot, IsEmptyWhereTheSpeciesFits) {
  const Place place{7.0, Moisture::Dry, "IN", "6a"};
  EXPECT_TRUE(whyNot(prairieDropseed(), place, sunProfile("usual")).empty());
  EXPECT_TRUE(whyNot(prairieDropseed(), Place{}, sunProfile("usual")).empty());
}

TEST(WhyNot, SaysEachReason) {
  const Place place{1.0, Moisture::Wet, "ME", "9b"};
  EXPECT_THAT(whyNot(prairieDropseed(), place, sunProfile("usual")),
              testing::ElementsAre("has 1.0 hours of sun here; asks for 3 and more",
                                   "the ground is wet; asks for dry or medium",
                                   "grows in zones 3 to 8; here it is 9b",
                                   "not recorded as native in ME (USDA PLANTS)"));
}

TEST(WhyNot, TheListThatWasReadIsNamed) {
  Species species = prairieDropseed();
  const auto said = [&](const char* key) {
    species.sources = {{"native_states", key}};
    const auto reasons = whyNot(species, {{}, {}, "ME", ""}, sunProfile("usual"));
    return reasons.size() == 1 ? reasons.front() : std::string();
  };
  EXPECT_EQ(said("USDA"), "not recorded as native in ME (USDA PLANTS)");
  EXPECT_EQ(said("USDA PLF"), "not recorded as native in ME (USDA PLANTS)");
  EXPECT_EQ(said("WFC"), "not recorded as native in ME (Lady Bird Johnson Wildflower Center)");
  EXPECT_EQ(said("memory"), "not recorded as native in ME (from memory)");
  EXPECT_EQ(said("own"), "not recorded as native in ME (by your own account)");
}

TEST(WhyNot, TheZonesAtBothEndsFit) {
  for (const char* zone : {"3a", "8b"})
    EXPECT_TRUE(whyNot(prairieDropseed(), {{}, {}, "", zone}, sunProfile("usual")).empty()) << zone;
  EXPECT_EQ(whyNot(prairieDropseed(), {{}, {}, "", "2b"}, sunProfile("usual")).size(), 1u);
}

TEST(PlanCode, TakesThreeLettersOfEachName) {
  EXPECT_EQ(proposeCode("Monarda fistulosa", {}), "MONFIS");
  EXPECT_EQ(proposeCode("Symphyotrichum novae-angliae", {}), "SYMNOV");
  EXPECT_EQ(proposeCode("Iris × germanica", {}), "IRIGER");
  EXPECT_EQ(proposeCode("Rosa", {}), "ROSXXX");
  EXPECT_EQ(proposeCode("", {}).size(), 6u);
}

TEST(PlanCode, NeverGivesOneThatIsTaken) {
  // Three asters whose names differ late, or not at all in six letters.
  std::vector<std::string> taken;
  for (const char* name : {"Symphyotrichum laeve", "Symphyotrichum lateriflorum",
                           "Symphyotrichum lanceolatum", "Symphyotrichum latifolium"})
    taken.push_back(proposeCode(name, taken));
  EXPECT_THAT(taken, testing::ElementsAre("SYMLAE", "SYMLAT", "SYMLAN", "SYMLA2"));
}

TEST(PlanCode, GoesOnPastNine) {
  std::vector<std::string> taken;
  for (int i = 0; i < 120; ++i) {
    const std::string code = proposeCode("Carex pensylvanica", taken);
    EXPECT_EQ(code.size(), 6u);
    EXPECT_THAT(taken, testing::Not(testing::Contains(code)));
    taken.push_back(code);
  }
}

TEST(PlanCode, IsKeptOnceGiven) {
  IdSource ids(10);
  Draft draft{Yard{}};
  takeCode(draft, "Monarda fistulosa", ids, "WB");
  takeCode(draft, "Monarda fistulosa", ids, "XX");
  takeCode(draft, "Monarda didyma", ids, "WB");
  EXPECT_EQ(codeOf(draft.yard(), "Monarda fistulosa"), "WB");
  EXPECT_EQ(codeOf(draft.yard(), "Monarda didyma"), "MONDID");
  takeCode(draft, "Aster", ids, "thirteenbytes");
  EXPECT_NE(codeOf(draft.yard(), "Aster"), "thirteenbytes");
  takeCode(draft, "Carex", ids, "twelve bytes");
  EXPECT_EQ(codeOf(draft.yard(), "Carex"), "twelve bytes");
  EXPECT_EQ(codeOf(draft.yard(), "Iris versicolor"), "");
}

}  // namespace
}  // namespace tussock
