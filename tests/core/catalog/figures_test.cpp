// SPDX-License-Identifier: MIT
#include "core/catalog/figures.h"

#include <bit>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using test::kAlexanders;
using test::kAster;
using test::kBergamot;
using test::kBluestem;
using test::kConeflower;

std::vector<ListedSpecies> listOf(const std::vector<std::pair<const char*, double>>& entries) {
  std::vector<ListedSpecies> list;
  for (const auto& [name, share] : entries) {
    ListedSpecies one;
    one.species = name;
    one.share = share;
    list.push_back(one);
  }
  return list;
}

PlantFigures figures(const std::vector<std::pair<const char*, double>>& entries) {
  static const Catalogue facts = test::tinyCatalogue();
  return figuresOf(portionsOf(listOf(entries), facts));
}

double shareOf(const std::vector<NamedShare>& shares, std::string_view name) {
  for (const NamedShare& share : shares)
    if (share.name == name) return share.share;
  return 0.0;
}

TEST(Figures, ShareByEveryKind) {
  const PlantFigures f =
      figures({{kBluestem, 0.5}, {kConeflower, 0.3}, {kAster, 0.1}, {test::kSedge, 0.1}});
  EXPECT_EQ(f.bySpecies.front().name, kBluestem);
  EXPECT_NEAR(shareOf(f.byFamily, "Asteraceae"), 0.4, 1e-12);
  EXPECT_NEAR(shareOf(f.byGenus, "Rudbeckia"), 0.3, 1e-12);
  EXPECT_NEAR(shareOf(f.byLayer, "ground"), 0.1, 1e-12);
  EXPECT_NEAR(f.grassShare, 0.6, 1e-12);
  EXPECT_EQ(f.diversity.richness, 4);
}

TEST(Figures, OpenSharesDivideWhatIsLeft) {
  const PlantFigures f = figures({{kBluestem, 0.4}, {kConeflower, 0.0}, {kAster, 0.0}});
  EXPECT_NEAR(shareOf(f.bySpecies, kConeflower), 0.3, 1e-12);
  EXPECT_NEAR(shareOf(f.bySpecies, kAster), 0.3, 1e-12);
}

TEST(Figures, OpenSharesCountAsTheMeanWhereNothingIsLeft) {
  const PlantFigures f = figures({{kBluestem, 0.7}, {kConeflower, 0.5}, {kAster, 0.0}});
  EXPECT_NEAR(shareOf(f.bySpecies, kAster), 0.6 / 1.8, 1e-12);
}

// April to June and August to October: July is empty.
TEST(Figures, TellTheWeeksInFlower) {
  const PlantFigures f = figures({{kAlexanders, 0.5}, {kAster, 0.5}});
  const int july = weekOf(std::chrono::July / std::chrono::day{15});
  const int may = weekOf(std::chrono::May / std::chrono::day{15});
  EXPECT_EQ(f.bloomWeeks >> july & 1U, 0u);
  EXPECT_EQ(f.bloomWeeks >> may & 1U, 1u);
  ASSERT_EQ(f.inFlower[static_cast<std::size_t>(may)].size(), 1u);
  EXPECT_EQ(f.inFlower[static_cast<std::size_t>(may)].front()->botanicalName, kAlexanders);
  EXPECT_EQ(f.nectarWeeks, 0u);  // the tiny catalogue records no visitors
}

TEST(Figures, OrderTheHeightsAndPutThemInBands) {
  const PlantFigures f = figures({{test::kJoePye, 0.2}, {kBergamot, 0.3}, {test::kSedge, 0.5}});
  ASSERT_EQ(f.heights.size(), 3u);
  EXPECT_EQ(f.heights.front().species->botanicalName, test::kJoePye);
  EXPECT_THAT(f.heightBands, testing::ElementsAre(0.0, 0.5, 0.3, 0.2));
}

TEST(Figures, OfNothingAreEmpty) {
  EXPECT_TRUE(figures({}).empty());
  EXPECT_TRUE(figures({{"Unknown plant", 1.0}}).empty());
}

}  // namespace
}  // namespace tussock
