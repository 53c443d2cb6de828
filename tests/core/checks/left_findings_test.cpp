// SPDX-License-Identifier: MIT
// Why a species has more than its share after a fill, where the list is long enough for none to.
#include "core/checks/left_findings.h"

#include <map>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

const Catalogue& shippedSpecies() {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  return catalogue;
}

// So many species of the main layer that species, genera and families can each keep to their limits
// with room to spare: one of a genus, two of a family.
std::vector<std::string> mixedSpecies() {
  std::map<std::string, int> genera, families;
  std::vector<std::string> result;
  for (const Species& species : shippedSpecies().species())
    if (species.usualLayer() == Layer::Main && genera[species.genus]++ == 0 &&
        families[species.family]++ < 2 && result.size() < 14)
      result.push_back(species.botanicalName);
  return result;
}

// Nine plants of each, and 21 of the first: 15 % of 138.
struct Overfull {
  Yard bare, planted;
  FillRequest request;
  FillResult result;

  Overfull() {
    test::YardBuilder builder;
    builder.bed("Bed", "POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))");
    bare = builder.build();
    request.bed = builder.lastBed();
    double y = 1.0;
    for (const std::string& species : mixedSpecies()) {
      builder.drift(species, test::row(y < 1.5 ? 21 : 9, 1.0, {1.0, y}));
      result.plants.push_back({species, 0.0});
      y += 1.2;
    }
    planted = builder.build();
    result.edit = difference(bare, planted, "Fill Bed");
  }
  [[nodiscard]] const std::string& most() const { return result.plants.front().species; }
  [[nodiscard]] std::vector<std::string> told() const {
    return whatIsLeft({planted, shippedSpecies(), nullptr}, request, result);
  }
};

TEST(LeftFindings, OfAShareNothingIsPutDownToWhatIsNotThere) {
  const Overfull yard;
  ASSERT_EQ(yard.result.plants.size(), 14U);
  EXPECT_THAT(yard.told(), Contains(HasSubstr("as more found room than of others: ")));
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("stood there"))));
}

TEST(LeftFindings, AShareThatCameByExchangeIsSaidToBeSo) {
  Overfull yard;
  yard.result.takers = {yard.result.plants.back().species};
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("given drifts"))));
  yard.result.takers.insert(yard.most());
  EXPECT_THAT(yard.told(), Contains(HasSubstr("having been given drifts of others")));
}

TEST(LeftFindings, AShareThatStoodThereIsSaidToBeSo) {
  Overfull yard;
  std::erase_if(yard.result.edit.changes, [&](const Change& change) {
    const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
    return after != nullptr && after->species == yard.most();
  });
  for (Drift drift : std::vector<Drift>(yard.planted.drifts.begin(), yard.planted.drifts.end()))
    if (drift.species == yard.most()) {
      drift.locked = true;
      yard.planted.drifts = yard.planted.drifts.with(drift);
    }
  EXPECT_THAT(yard.told(), Contains(HasSubstr("as so many stood there already: ")));
}

TEST(LeftFindings, AShareLeftForLackOfTimeIsSaidToBeSo) {
  Overfull yard;
  yard.result.cutShort = true;
  EXPECT_THAT(yard.told(), Contains(HasSubstr("as the time was up")));
}

// 21 of 138 plants are 15 %.
TEST(LeftFindings, AShareAskedForIsSaidToBeKeptOnlyWhereItWas) {
  Overfull yard;
  yard.result.plants.front().share = 0.16;
  EXPECT_THAT(yard.told(),
              Contains(AllOf(HasSubstr("as the plant list asks: "), EndsWith("(10\u00a0%)."))))
      << "no remedy is needed";
  yard.result.plants.front().share = 0.41;
  EXPECT_THAT(yard.told(), Contains(HasSubstr(": asked 41\u00a0%, planted 15\u00a0%.")));
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("as the plant list asks"))));
}

// Nine of 138 plants are 7 %, under the limit of a tenth.
TEST(LeftFindings, AShareThatCameOtherwiseIsToldWhereNothingIsFoundOfIt) {
  Overfull yard;
  yard.result.plants.back().share = 0.02;
  EXPECT_THAT(yard.told(), Contains(HasSubstr("asked 2\u00a0%, planted 7\u00a0%")));
  yard.result.plants.back().share = 0.05;
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("asked"))));
}

TEST(LeftFindings, OfASpeciesWithoutAShareNoneIsSaidToBeKept) {
  Overfull yard;
  yard.result.plants.back().share = 0.07;
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("as the plant list asks"))));
  EXPECT_THAT(yard.told(), Contains(HasSubstr("as more found room than of others: ")));
}

// Flowers in the middle third only, and is prone to mildew in a mass.
struct OneKind {
  Yard planted;
  FillRequest request;
  FillResult result;

  explicit OneKind(int drifts) {
    test::YardBuilder builder;
    builder.bed("Bed", "POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))");
    request.bed = builder.lastBed();
    const Yard bare = builder.build();
    for (int i = 0; i < drifts; ++i)
      builder.drift("Monarda fistulosa", test::row(31, 0.4, {1.0, 1.0 + 0.4 * i}));
    planted = builder.build();
    result.plants = {{"Monarda fistulosa", 0.0}, {"Monarda fistulosa", 0.0}};
    result.edit = difference(bare, planted, "Fill Bed");
  }
};

TEST(LeftFindings, OneSpeciesIsNamedOnceAndToldNothingOfArrangements) {
  const OneKind yard(3);
  const auto told =
      whatIsLeft({yard.planted, shippedSpecies(), nullptr}, yard.request, yard.result);
  EXPECT_THAT(told, Contains(HasSubstr("the list has only wild bergamot. Add others")));
  EXPECT_THAT(told, Contains(HasSubstr("with one species no arrangement differs in it")));
  EXPECT_THAT(told, Not(Contains(HasSubstr("Another arrangement"))));
}

// Five species cannot each keep to a tenth: one note for all, with one remedy.
TEST(LeftFindings, SharesWithTheSameReasonAreToldInOneNote) {
  Overfull yard;
  test::YardBuilder builder;
  builder.bed("Bed", "POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))");
  yard.bare = builder.build();
  yard.result.plants.resize(5);
  double y = 1.0;
  for (const ListedSpecies& listed : yard.result.plants)
    builder.drift(listed.species, test::row(21, 1.0, {1.0, y += 1.2}));
  yard.planted = builder.build();
  yard.result.edit = difference(yard.bare, yard.planted, "Fill Bed");
  std::vector<std::string> over;
  for (const std::string& note : yard.told())
    if (note.starts_with("Over the usual share")) over.push_back(note);
  ASSERT_EQ(over.size(), 1U);
  EXPECT_THAT(over.front(),
              AllOf(HasSubstr("as the list has too few kinds: "), HasSubstr("and 1 more (each 10"),
                    EndsWith("Add species of other genera and families.")));
}

TEST(LeftFindings, NamesTheSpeciesThatWhatIsLeftIsAbout) {
  const OneKind yard(3);
  const auto told =
      whatIsLeft({yard.planted, shippedSpecies(), nullptr}, yard.request, yard.result);
  EXPECT_THAT(told, Contains(HasSubstr("left, about wild bergamot; ")));
}

// The thirds in their order; three species are asked for in each (see thresholds.cpp).
TEST(LeftFindings, TheThirdsOfTheSeasonAreToldInOrderWithWhatIsAsked) {
  const OneKind yard(3);
  std::vector<std::string> thirds;
  for (const std::string& note :
       whatIsLeft({yard.planted, shippedSpecies(), nullptr}, yard.request, yard.result))
    if (note.find("third of the season, where 3 are asked: ") != std::string::npos)
      thirds.push_back(note);
  ASSERT_EQ(thirds.size(), 3U);
  EXPECT_THAT(thirds[0], HasSubstr("in the early third"));
  EXPECT_THAT(thirds[1], StartsWith("Only one species flowers in the middle third"));
  EXPECT_THAT(thirds[2], HasSubstr("in the late third"));
}

// As many on the list as are asked for, of which one was planted.
TEST(LeftFindings, AThirdForWhichTheListHasEnoughIsNotSaidToHaveOnlyThose) {
  OneKind yard(3);
  for (const char* summer : {"Liatris spicata", "Echinacea purpurea", "Agastache foeniculum"})
    yard.result.plants.push_back({summer, 0.0});
  const auto told =
      whatIsLeft({yard.planted, shippedSpecies(), nullptr}, yard.request, yard.result);
  EXPECT_THAT(told, Contains(AllOf(HasSubstr("in the middle third"),
                                   HasSubstr("not all of which found a fitting place"))));
  EXPECT_THAT(told, Not(Contains(AllOf(HasSubstr("middle third"), HasSubstr("has only")))));
}

TEST(LeftFindings, OfABedOfAPlantOrTwoNoMoreFlowersAreAsked) {
  test::YardBuilder builder;
  builder.bed("Strip", "POLYGON ((0 0, 0.5 0, 0.5 0.5, 0 0.5, 0 0))");
  OneKind yard(1);
  yard.request.bed = builder.lastBed();
  const Yard bare = builder.build();
  builder.drift("Monarda fistulosa", test::row(1, 0.4, {0.25, 0.25}));
  yard.planted = builder.build();
  yard.result.edit = difference(bare, yard.planted, "Fill Strip");
  const auto told =
      whatIsLeft({yard.planted, shippedSpecies(), nullptr}, yard.request, yard.result);
  EXPECT_THAT(told, Contains(HasSubstr("The bed has 1 plant, too few")));
  EXPECT_THAT(told, Not(Contains(HasSubstr("Add"))));
}

// What was so before and is not about it is not told again.
TEST(LeftFindings, OfARefillOnlyWhatConcernsTheSpeciesIsTold) {
  Overfull yard;
  yard.request.what = FillWhat::OneSpecies;
  yard.request.species = yard.result.plants.back().species;
  std::erase_if(yard.result.edit.changes, [&](const Change& change) {
    const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
    return after != nullptr && after->species != yard.request.species;
  });
  yard.result.plants = {yard.result.plants.back()};
  const auto others = yard.told();
  const std::string most =
      shippedSpecies().nameApart(*shippedSpecies().find(mixedSpecies().front()));
  EXPECT_THAT(others, Not(Contains(HasSubstr(most))));
  yard.request.species = mixedSpecies().front();
  EXPECT_THAT(yard.told(), Contains(AllOf(HasSubstr(most), HasSubstr("planted anew"))));
}

// Of the shipped plants only spring flowers are as small as 16 cm (spacing_cm, plants.csv).
TEST(LeftFindings, WhereNothingElseFitsNothingIsAskedFor) {
  for (const auto& [width, fits] : {std::pair{0.16, false}, std::pair{3.0, true}}) {
    test::YardBuilder builder;
    builder.bed("Strip", fmt::format("POLYGON ((0 0, 6 0, 6 {0}, 0 {0}, 0 0))", width));
    OneKind yard(1);
    yard.request.bed = builder.lastBed();
    const Yard bare = builder.build();
    builder.drift("Viola pedata", test::row(21, 0.16, {0.2, 0.08})).spaced(0.15);
    yard.planted = builder.build();
    yard.result.plants = {{"Viola pedata", 0.0}};
    yard.result.edit = difference(bare, yard.planted, "Fill Strip");
    const auto told =
        whatIsLeft({yard.planted, shippedSpecies(), nullptr}, yard.request, yard.result);
    EXPECT_THAT(told, Contains(AllOf(StartsWith("Nothing flowers from"), HasSubstr(" 18 October"),
                                     HasSubstr(fits ? "Add some" : "no plant known here"))))
        << width;
  }
}

// 20,001 plants and more: time helps where it was up, smaller beds always do.
TEST(LeftFindings, OfAVastBedMoreTimeAndSeveralBedsAreBothAdvised) {
  constexpr int kEach = 10'001;
  test::YardBuilder builder;
  builder.bed("Field", "POLYGON ((0 0, 200 0, 200 100, 0 100, 0 0))");
  const Yard bare = builder.build();
  std::vector<Point> left, right;
  for (int i = 0; i < kEach; ++i) {
    const double x = 1.0 + 0.9 * (i % 100), y = 1.0 + 0.9 * (i / 100);
    left.push_back({x, y}), right.push_back({x + 95.0, y});
  }
  left.back() = left.front() + Point{0.1, 0.0};  // too near
  const std::vector<std::string> species = mixedSpecies();
  builder.drift(species[0], left).drift(species[1], right);
  FillRequest request;
  request.bed = builder.lastBed();
  const Yard field = builder.build();
  FillResult result;
  result.edit = difference(bare, field, "Fill Field");
  for (const std::size_t i : {0u, 1u}) result.plants.push_back({species[i], 0.0});
  result.cutShort = true;
  EXPECT_THAT(whatIsLeft({field, shippedSpecies(), nullptr}, request, result),
              Contains(AllOf(StartsWith("Too close together"), HasSubstr("Allow more (tussock"),
                             HasSubstr("several beds"))));
  result.cutShort = false, result.untried = true;
  EXPECT_THAT(whatIsLeft({field, shippedSpecies(), nullptr}, request, result),
              Contains(AllOf(StartsWith("Too close together"), Not(HasSubstr("Allow more")),
                             HasSubstr("several beds"))));
}

}  // namespace
}  // namespace tussock
