// SPDX-License-Identifier: MIT
// The points are our own; what is checked is that each thing counts the way it says.
#include "core/catalog/rank.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/season_weeks.h"
#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using test::kAlexanders;
using test::kAster;
using test::kBergamot;
using test::kFoamflower;
using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class Rank : public testing::Test {
 protected:
  [[nodiscard]] std::vector<Ranked> all() const { return rankFor(facts_, request_); }
  [[nodiscard]] Ranked of(std::string_view name) const {
    for (const Ranked& ranked : all())
      if (ranked.species->botanicalName == name) return ranked;
    throw std::invalid_argument(std::string(name));
  }
  void plant(const char* name, double amount) {
    const Species* species = facts_.find(name);
    request_.planted.push_back({species, species->usualLayer(), amount});
  }

  Catalogue facts_ = test::tinyCatalogue();
  RankRequest request_;
};

TEST_F(Rank, LeavesOutWhatDoesNotSuitAndSaysWhy) {
  request_.place.sunHours = 8.0;
  const Ranked foamflower = of(kFoamflower);
  EXPECT_FALSE(foamflower.suits());
  EXPECT_EQ(foamflower.points, 0.0);
  EXPECT_THAT(foamflower.whyNot, ElementsAre(HasSubstr("8.0 hours of sun")));
  EXPECT_TRUE(of(kBergamot).suits());
}

TEST_F(Rank, PutsWhatSuitsFirstBestFirst) {
  request_.place.sunHours = 8.0;
  const auto ranked = all();
  ASSERT_EQ(ranked.size(), facts_.species().size());
  bool out = false;
  double last = 101.0;
  for (const Ranked& one : ranked) {
    if (!one.suits()) out = true;
    EXPECT_EQ(one.suits(), !out);
    if (!out) {
      EXPECT_LE(one.points, last);
    }
    last = one.points;
  }
  EXPECT_TRUE(out);
}

TEST_F(Rank, WellInsideTheHoursBeatsTheEdge) {
  request_.place.sunHours = 6.1;  // joe-pye asks for part, 3 to 6; bluestem for full, 6 and more
  const double edge = of(test::kBluestem).points;
  request_.place.sunHours = 8.0;
  EXPECT_GT(of(test::kBluestem).points, edge);
}

// "Full sun to part shade" means that it takes some shade, not that it wants it (common practice).
TEST_F(Rank, InPartShadeWhatIsListedForItGoesBeforeWhatOnlyTakesIt) {
  std::vector<Species> three(3, *facts_.find(kBergamot));
  three[0].botanicalName = "Monarda a";
  three[0].sun = {SunNeed::Full, SunNeed::Part};
  three[1].botanicalName = "Monarda b";
  three[1].sun = {SunNeed::Part};
  three[2].botanicalName = "Monarda c";
  three[2].sun = {SunNeed::Part, SunNeed::Shade};
  facts_ = Catalogue(three);
  request_.place.sunHours = 4.6;
  EXPECT_GT(of("Monarda b").points, of("Monarda a").points);
  EXPECT_EQ(of("Monarda b").points, of("Monarda c").points);
  EXPECT_THAT(of("Monarda a").costs, Contains("4.6 hours of sun are fewer than suit it best"));
  EXPECT_THAT(of("Monarda b").reasons, Contains("4.6 hours of sun are what it asks for"));
}

TEST_F(Rank, MoreSunNeverCountsAgainstWhatTakesFullSun) {
  std::vector<Species> kinds(3, *facts_.find(kBergamot));
  kinds[0].botanicalName = "Monarda a";
  kinds[0].sun = {SunNeed::Full};
  kinds[1].botanicalName = "Monarda b";
  kinds[1].sun = {SunNeed::Full, SunNeed::Part};
  kinds[2].botanicalName = "Monarda c";
  kinds[2].sun = {SunNeed::Full, SunNeed::Part, SunNeed::Shade};
  facts_ = Catalogue(kinds);
  for (const char* name : {"Monarda a", "Monarda b", "Monarda c"}) {
    double last = 0.0;
    for (int tenths = 0; tenths <= 140; ++tenths) {
      request_.place.sunHours = tenths / 10.0;
      const Ranked ranked = of(name);
      EXPECT_GE(ranked.points, last) << name << " at " << tenths / 10.0;
      last = ranked.points;
    }
    EXPECT_GT(last, 0.0);
  }
}

TEST_F(Rank, WhatFlowersInPoorWeeksGains) {
  request_.season = seasonWeeks(Settings{});
  plant(kBergamot, 10.0);
  const Ranked aster = of(kAster);
  EXPECT_THAT(aster.reasons, Contains(HasSubstr("when little else is")));
  EXPECT_GT(aster.points, of(test::kSedge).points);
}

TEST_F(Rank, WhatIsPlentyAlreadyLoses) {
  const double before = of(kAster).points;
  plant(test::kConeflower, 10.0);  // all of it Asteraceae
  const Ranked aster = of(kAster);
  EXPECT_LT(aster.points, before + 1e-9);
  EXPECT_THAT(aster.costs, Contains("100 % of the plants are Asteraceae already"));
  EXPECT_THAT(of(test::kConeflower).costs, Contains("grows here already"));
}

TEST_F(Rank, WhatSpeaksAgainstItIsToldAfterWhatSpeaksForItAndMarked) {
  request_.season = seasonWeeks(Settings{});
  plant(test::kConeflower, 10.0);
  Ranked aster = of(kAster);
  ASSERT_FALSE(aster.reasons.empty());
  aster.overEquals = "before others that fit as well";
  const std::vector<std::string> told = toldReasons(aster);
  ASSERT_EQ(told.size(), aster.reasons.size() + 1 + aster.costs.size());
  EXPECT_EQ(told.front(), aster.reasons.front());
  EXPECT_EQ(told[aster.reasons.size()], aster.overEquals);
  EXPECT_THAT(told, Contains("but 100 % of the plants are Asteraceae already"));
  for (std::size_t i = 0; i < told.size(); ++i)
    EXPECT_EQ(told[i].starts_with("but "), i > aster.reasons.size()) << told[i];
}

TEST_F(Rank, ALayerWithNothingYetGains) {
  plant(kBergamot, 10.0);
  EXPECT_THAT(of(test::kSedge).reasons, Contains("the ground layer has nothing yet"));
  EXPECT_THAT(of(kAster).reasons, Not(Contains(HasSubstr("layer has nothing"))));
}

TEST_F(Rank, FiltersCombine) {
  PlantFilter filter;
  filter.sun = {SunNeed::Full};
  filter.families = {"Asteraceae"};
  filter.highest = Length::metres(1.0);
  std::vector<std::string> names;
  for (const Ranked& one : filtered(all(), facts_, filter))
    names.push_back(one.species->botanicalName);
  EXPECT_THAT(names, testing::UnorderedElementsAre(test::kConeflower, kAster));
  filter.words = "smooth";
  EXPECT_EQ(filtered(all(), facts_, filter).size(), 1u);
  filter.traits = {Trait::Evergreen};
  EXPECT_THAT(filtered(all(), facts_, filter), IsEmpty());
}

TEST_F(Rank, FiltersByMonthsInFlower) {
  PlantFilter filter;
  const auto names = [&] {
    std::vector<std::string> found;
    for (const Ranked& one : filtered(all(), facts_, filter))
      found.push_back(one.species->botanicalName);
    return found;
  };
  filter.months = {5};
  EXPECT_THAT(names(), AllOf(Contains(kAlexanders), Contains(kFoamflower), Not(Contains(kAster))));
  filter.months = {9};
  EXPECT_THAT(names(), AllOf(Contains(kAster), Not(Contains(kBergamot))))
      << "to August, though a week reaches over";
}

TEST_F(Rank, SortsByHeightAndName) {
  auto ranked = all();
  sortBy(ranked, RankOrder::Height, facts_.hemisphere());
  EXPECT_EQ(ranked.front().species->botanicalName, test::kSpringBeauty);
  EXPECT_EQ(ranked.back().species->botanicalName, test::kJoePye);
  sortBy(ranked, RankOrder::BotanicalName, facts_.hemisphere());
  EXPECT_EQ(ranked.front().species->botanicalName, test::kSedge);
}

// Points for weeks stop at 12 of them, so equal points are common; a mix that lacks flowers for
// longer is served by the longer bloom (the order is ours).
TEST_F(Rank, AmongEqualsTheLongerBloomGoesFirstAndSaysSo) {
  std::vector<Species> twins(2, *facts_.find(kBergamot));
  twins[0].botanicalName = "Monarda brevis";
  twins[0].bloomFirstMonth = 6, twins[0].bloomLastMonth = 8;
  twins[1].botanicalName = "Monarda longa";
  twins[1].bloomFirstMonth = 5, twins[1].bloomLastMonth = 9;
  facts_ = Catalogue(twins);
  request_.season = seasonWeeks(Settings{});
  const auto ranked = all();
  ASSERT_EQ(ranked[0].points, ranked[1].points);
  EXPECT_EQ(ranked[0].species->botanicalName, "Monarda longa");
  EXPECT_THAT(ranked[0].overEquals, HasSubstr("more weeks in flower"));
  EXPECT_THAT(ranked[1].overEquals, IsEmpty());
}

TEST_F(Rank, AmongEqualsInFlowerTheGentlerOneGoesFirst) {
  std::vector<Species> twins(2, *facts_.find(kBergamot));
  twins[0].botanicalName = "Monarda a";
  twins[0].competitiveness = Competitiveness::Medium;
  twins[1].botanicalName = "Monarda b";
  twins[1].competitiveness = Competitiveness::Low;
  facts_ = Catalogue(twins);
  const auto ranked = all();
  EXPECT_EQ(ranked[0].species->botanicalName, "Monarda b");
  EXPECT_THAT(ranked[0].overEquals, HasSubstr("crowding its neighbours less"));
}

}  // namespace
}  // namespace tussock
