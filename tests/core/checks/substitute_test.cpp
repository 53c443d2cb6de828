// SPDX-License-Identifier: MIT
#include "core/checks/substitute.h"

#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/plan_codes.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using test::kAster;
using test::kBergamot;
using test::kConeflower;
using test::kJoePye;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

std::vector<Point> triangle(int rows, double step, Point from) {
  std::vector<Point> places;
  for (int row = 0; row < rows; ++row)
    for (int i = 0; i < rows; ++i)
      places.push_back({from.x + step * (i + 0.5 * (row % 2)), from.y + step * 0.87 * row});
  return places;
}

class SubstituteTest : public testing::Test {
 protected:
  SubstituteTest() {
    test::YardBuilder builder;
    builder.bed("Bed", test::kSquareBed).drift(kBergamot, triangle(3, 0.5, {4.0, 4.0}));
    builder.spaced(0.5);
    drift_ = builder.lastDrift();
    yard_ = builder.build();
  }
  [[nodiscard]] const Species& of(const char* name) const { return *facts_.find(name); }

  Catalogue facts_ = test::tinyCatalogue();
  Yard yard_;
  Id<Drift> drift_;
  IdSource ids_{1000};
};

// Nine at 50 cm stand on 9 x 0.5² √3/2; at 80 cm that ground takes 3.5, the odd number near is 3.
TEST_F(SubstituteTest, TheGroundStaysAndTheCountFollows) {
  const Substitution done = substitute(yard_, kBergamot, of(kJoePye), ids_);
  ASSERT_EQ(done.drifts.size(), 1u);
  EXPECT_EQ(done.drifts.front(), (CountChange{drift_, 9, 3}));
  const Yard after = apply(yard_, done.edit);
  const Drift& drift = *after.drifts.find(drift_);
  EXPECT_EQ(drift.species, kJoePye);
  EXPECT_EQ(drift.spacing, of(kJoePye).spacing);
  EXPECT_FALSE(codeOf(after, kJoePye).empty());
}

// An even count was asked for: where the ground takes just as many it stays.
TEST_F(SubstituteTest, AnEvenCountStaysWhereTheGroundTakesIt) {
  Drift even = *yard_.drifts.find(drift_);
  even.plants.pop_back();
  even.spacing = of(kJoePye).spacing;
  yard_.drifts = yard_.drifts.with(even);
  const Substitution done = substitute(yard_, kBergamot, of(kJoePye), ids_);
  ASSERT_EQ(done.drifts.size(), 1u);
  EXPECT_EQ(done.drifts.front(), (CountChange{drift_, 8, 8}));
}

// By hand: 9 x 0.5² √3/2 = 1.949 m² before, 3 x 0.8² √3/2 = 1.663 m² after.
TEST_F(SubstituteTest, TellsTheGroundBeforeAndAfter) {
  const Substitution done = substitute(yard_, kBergamot, of(kJoePye), ids_);
  EXPECT_NEAR(done.groundBefore.squareMetres(), 1.949, 0.001);
  EXPECT_NEAR(done.groundAfter.squareMetres(), 1.663, 0.001);
  EXPECT_EQ(groundWords(done, UnitSystem::Metres),
            "They take 1.66 m² in place of 1.95 m², which leaves 15 % of the ground bare.");
  EXPECT_NEAR(bareShare(done), 0.147, 0.001);
  Substitution same = done;
  same.groundAfter = same.groundBefore;
  EXPECT_EQ(groundWords(same, UnitSystem::Metres), "");
}

// By hand: 9 x 0.5² = 25 x 0.3², and 25 such do not find a place on 1.2 x 1.2 m: even without a
// distance kept from the edge, five rows of 26 cm hold at most five and four by turns.
TEST_F(SubstituteTest, TellsHowManyFindNoPlace) {
  test::YardBuilder builder;
  builder.bed("Small", "POLYGON ((4 4, 5.2 4, 5.2 5.2, 4 5.2, 4 4))");
  builder.drift(kBergamot, triangle(3, 0.45, {4.1, 4.1})).spaced(0.5);
  Species small = of(kJoePye);
  small.botanicalName = "Eutrochium 'Small'";
  small.spacing = Length::metres(0.3);
  const Substitution done = substitute(builder.build(), kBergamot, small, ids_);
  ASSERT_EQ(done.drifts.size(), 1u);
  EXPECT_GT(done.noPlace, 0);
  EXPECT_EQ(done.drifts.front().after + done.noPlace, 25);
  EXPECT_THAT(groundWords(done, UnitSystem::Metres), HasSubstr("As many as find a place"));
  EXPECT_THAT(groundWords(substitute(yard_, kBergamot, of(kJoePye), ids_), UnitSystem::Metres),
              Not(HasSubstr("find a place")));
}

// Every place of a 10 x 10 m bed is within 35 cm of a plant at 50 cm; of one at 1.6 m such a plant
// keeps 0.85 x (0.5 + 1.6) / 2 = 89 cm. So it finds a place where the middle nine go, none where
// but one does.
class CrowdedTest : public SubstituteTest {
 protected:
  CrowdedTest() {
    wide_ = of(kJoePye);
    wide_.botanicalName = "Eutrochium 'Wide'";
    wide_.spacing = Length::metres(1.6);
  }
  // All of the bed a grid of 50 cm, those within `metres` of its middle a drift of their own.
  Yard crowded(double metres) {
    std::vector<Point> own, others;
    for (double x = 0.5; x < 9.9; x += 0.5)
      for (double y = 0.5; y < 9.9; y += 0.5)
        (distance({x, y}, {5.0, 5.0}) < metres ? own : others).push_back({x, y});
    test::YardBuilder builder;
    builder.bed("Bed", test::kSquareBed).drift(kBergamot, own).spaced(0.5);
    drift_ = builder.lastDrift();
    builder.drift(kAster, others).spaced(0.5);
    return builder.build();
  }
  Species wide_;
};

TEST_F(CrowdedTest, AFullBedTakesAsManyAsKeepTheRules) {
  const Yard yard = crowded(0.8);
  const Substitution done = substitute(yard, kBergamot, wide_, ids_);
  ASSERT_EQ(done.drifts.size(), 1u);
  EXPECT_EQ(done.drifts.front(), (CountChange{drift_, 9, 1}));
  const Yard after = apply(yard, done.edit);
  const Drift& changed = *after.drifts.find(drift_);
  EXPECT_EQ(changed.spacing, wide_.spacing);
  for (const Drift& drift : after.drifts)
    for (const Plant& plant : drift.plants)
      if (drift.id != drift_) {
        EXPECT_GE(distance(plant.at, changed.plants.front().at), 0.85 * 1.05 - 0.001);
      }
}

TEST_F(CrowdedTest, ADriftWithNoPlaceForOneStaysAndIsTold) {
  const Yard yard = crowded(0.1);
  const Substitution done = substitute(yard, kBergamot, wide_, ids_);
  EXPECT_TRUE(done.edit.empty());
  EXPECT_EQ(done.withoutPlace, 1);
  EXPECT_NEAR(bareShare(done), 1.0, 1e-9);
  EXPECT_THAT(groundWords(done, UnitSystem::Metres), HasSubstr("1 drift stays as it is"));
}

// Bare ground counts: 40 points for all of it, so 40 x 0.147 here.
TEST_F(SubstituteTest, TheRankingTakesOffForBareGround) {
  const Substitute one = substituteBy({yard_, facts_, nullptr}, of(kBergamot), of(kJoePye));
  EXPECT_NEAR(one.likeness - one.points, 40.0 * 0.147, 0.05);
}

TEST_F(SubstituteTest, IsUndoneInOne) {
  const Substitution done = substitute(yard_, kBergamot, of(kJoePye), ids_);
  EXPECT_EQ(done.edit.label, "Put Eutrochium purpureum in place of Monarda fistulosa");
  const Yard back = apply(apply(yard_, done.edit), inverse(done.edit));
  EXPECT_TRUE(difference(yard_, back, "").empty());
}

TEST_F(SubstituteTest, LeavesLockedAndExistingPlants) {
  Draft draft(yard_);
  Drift locked = *yard_.drifts.find(drift_);
  locked.locked = true;
  draft.put(locked);
  const Substitution done = substitute(draft.yard(), kBergamot, of(kAster), ids_);
  EXPECT_TRUE(done.edit.empty());
  EXPECT_EQ(done.keptAsTheyAre, 1);
}

TEST_F(SubstituteTest, RenamesThePlantList) {
  Draft draft(yard_);
  Bed bed = *yard_.beds.begin();
  bed.plantList = {{kBergamot, 0.4}, {kConeflower, 0.2}};
  draft.put(bed);
  const Yard after =
      apply(draft.yard(), substitute(draft.yard(), kBergamot, of(kAster), ids_).edit);
  EXPECT_EQ(after.beds.begin()->plantList.front(), (ListedSpecies{kAster, 0.4}));
}

TEST_F(SubstituteTest, TheBestIsTheMostAlikeThatSuits) {
  const SunMap sun = test::evenSun(8.0);
  const auto found = substitutesFor({yard_, facts_, &sun}, kBergamot, 3);
  ASSERT_EQ(found.size(), 3u);
  EXPECT_GE(found[0].points, found[1].points);
  EXPECT_GE(found[1].points, found[2].points);
  for (const Substitute& one : found) {
    EXPECT_NE(one.species->botanicalName, test::kFoamflower);  // shade
    EXPECT_EQ(plantsBefore(one.done), 9);
    EXPECT_EQ(plantsAfter(one.done) % 2, 1);
  }
  // None that is left out would have come before them.
  const auto all = substitutesFor({yard_, facts_, &sun}, kBergamot, 99);
  ASSERT_GT(all.size(), 3u);
  for (std::size_t i = 0; i < 3; ++i) EXPECT_EQ(all[i].species, found[i].species);
}

// What the checks say of the yard after, and did not say before.
TEST_F(SubstituteTest, TellsTheFindingsItWouldCause) {
  const auto keys = [&](const Yard& yard) {
    std::set<std::string> all;
    const std::vector<Finding> findings = runChecks({yard, facts_, nullptr}).value();
    for (const Finding& finding : findings) all.insert(keyOf(finding));
    return all;
  };
  const std::set<std::string> before = keys(yard_);
  bool any = false;
  for (const Substitute& one : substitutesFor({yard_, facts_, nullptr}, kBergamot, 20)) {
    std::set<std::string> expected =
        keys(apply(yard_, substitute(yard_, kBergamot, *one.species, ids_).edit));
    for (const std::string& key : before) expected.erase(key);
    std::set<std::string> told;
    for (const Finding& finding : one.caused) told.insert(keyOf(finding));
    EXPECT_EQ(told, expected) << one.species->botanicalName;
    any = any || !told.empty();
  }
  EXPECT_TRUE(any);
}

// Bergamot takes part shade, from 3 h a day, and little bluestem only full sun, from 6 h: in 2.5 h
// both have too little, the one by 0.5 h and the other by 3.5 h.
TEST_F(SubstituteTest, TellsTheFindingsItWouldMakeWorse) {
  const SunMap sun = test::evenSun(2.5);
  const CheckInput input{yard_, facts_, &sun};
  const Substitute grass = substituteBy(input, of(kBergamot), of(test::kBluestem));
  ASSERT_EQ(grass.worsened.size(), 1u);
  EXPECT_EQ(grass.worsened.front().check, CheckId::SunNeed);
  EXPECT_EQ(grass.worsened.front().required, 6.0);
  EXPECT_THAT(grass.worsenedTexts.front(), HasSubstr("ittle bluestem"));
  for (const Finding& finding : grass.caused) EXPECT_NE(finding.check, CheckId::SunNeed);
  // The coneflower lacks as much as the bergamot does.
  for (const Finding& finding : substituteBy(input, of(kBergamot), of(kConeflower)).worsened)
    EXPECT_NE(finding.check, CheckId::SunNeed);
}

TEST(LikenessTest, OfASpeciesWithItselfIsAHundred) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  for (const Species& species : facts.species())
    EXPECT_NEAR(likenessOf(species, species).points(), 100.0, 1e-9) << species.botanicalName;
}

TEST(LikenessTest, DoesNotDependOnTheOrder) {
  const Catalogue facts = test::tinyCatalogue();
  for (const Species& a : facts.species())
    for (const Species& b : facts.species())
      EXPECT_NEAR(likenessOf(a, b).points(), likenessOf(b, a).points(), 1e-12);
}

TEST(LikenessTest, SaysWhatWouldBeOther) {
  const Catalogue facts = test::tinyCatalogue();
  const auto words =
      differencesOf(*facts.find(kBergamot), *facts.find(kJoePye), UnitSystem::Metres);
  EXPECT_THAT(words, Contains(HasSubstr("higher: 2")));
  EXPECT_THAT(words, Contains("in flower July to September, not in flower June to August"));
}

// Two in flower from August to October, one a week before the other: the months would not tell.
TEST(LikenessTest, TellsWeeksWhereTheMonthsAreTheSame) {
  const Catalogue facts = test::tinyCatalogue();
  Species early = *facts.find(kAster), late = early;
  early.bloomFirstMonth = late.bloomFirstMonth = 8;
  early.bloomLastMonth = late.bloomLastMonth = 10;
  early.bloomFirstWeek = 31, early.bloomLastWeek = 40;
  late.bloomFirstWeek = 34, late.bloomLastWeek = 43;
  EXPECT_THAT(differencesOf(early, late, UnitSystem::Metres),
              Contains("in flower weeks 34 to 43, not weeks 31 to 40"));
}

// No proposal says of a plant that it is in flower when the other is, and is not.
TEST(LikenessTest, NeverTellsTheSameOfBoth) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  for (const Species& of : facts.species())
    for (const Species& with : facts.species())
      for (const std::string& words : differencesOf(of, with, UnitSystem::FeetInches)) {
        const auto at = words.find(", not ");
        if (!words.starts_with("in flower") || at == std::string::npos) continue;
        EXPECT_FALSE(words.substr(0, at).ends_with(words.substr(at + 6)))
            << of.botanicalName << ", " << with.botanicalName << ": " << words;
      }
}

}  // namespace
}  // namespace tussock
