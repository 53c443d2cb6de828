// SPDX-License-Identifier: MIT
// Why a species has more than its share after a fill, where the list is long enough for none to.
#include "core/checks/left_findings.h"

#include <map>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

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
  EXPECT_THAT(yard.told(), Contains(HasSubstr("%: more of it found room than of others")));
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("stood there"))));
}

TEST(LeftFindings, AShareThatCameByExchangeIsSaidToBeSo) {
  Overfull yard;
  yard.result.takers = {yard.result.plants.back().species};
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("was given drifts"))));
  yard.result.takers.insert(yard.most());
  EXPECT_THAT(yard.told(), Contains(HasSubstr("%: it was given drifts of others")));
}

TEST(LeftFindings, AShareThatStoodThereIsSaidToBeSo) {
  Overfull yard;
  std::erase_if(yard.result.edit.changes, [&](const Change& change) {
    const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
    return after != nullptr && after->species == yard.most();
  });
  EXPECT_THAT(yard.told(), Contains(HasSubstr("%: 21 plants of it stood there already.")));
}

TEST(LeftFindings, AShareLeftForLackOfTimeIsSaidToBeSo) {
  Overfull yard;
  yard.result.cutShort = true;
  EXPECT_THAT(yard.told(), Contains(HasSubstr("%: the time was up")));
}

// 21 of 138 plants are 15 %.
TEST(LeftFindings, AShareAskedForIsSaidToBeKeptOnlyWhereItWas) {
  Overfull yard;
  yard.result.plants.front().share = 0.16;
  EXPECT_THAT(yard.told(),
              Contains(HasSubstr("%: the plant list asks for 16\u00a0% in this bed.")));
  yard.result.plants.front().share = 0.41;
  EXPECT_THAT(yard.told(),
              Contains(HasSubstr("%: asked 41\u00a0%, planted 15\u00a0% in this bed.")));
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("asks for"))));
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
  EXPECT_THAT(yard.told(), Not(Contains(HasSubstr("asks for"))));
  EXPECT_THAT(yard.told(), Contains(HasSubstr("%: more of it found room than of others")));
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
  EXPECT_THAT(told, Contains(HasSubstr("the list has only wild bergamot.")));
  EXPECT_THAT(told, Contains(HasSubstr("with one species no arrangement differs in it")));
  EXPECT_THAT(told, Not(Contains(HasSubstr("Another arrangement"))));
}

}  // namespace
}  // namespace tussock
