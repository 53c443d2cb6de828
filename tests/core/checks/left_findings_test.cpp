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

}  // namespace
}  // namespace tussock
