// SPDX-License-Identifier: MIT
// The rhythm of a formal bed: groups of one size at even intervals (common practice).
#include "core/planting/fill_rhythm.h"

#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

constexpr auto kBorder = "POLYGON ((0 0, 12 0, 12 4, 0 4, 0 0))";

TEST(Rhythm, GroupsAreOddAndAlike) {
  for (const double plants : {9.0, 14.0, 26.0, 60.0}) {
    const auto groups = groupsInRhythm(3, plants, 1);
    ASSERT_GE(groups.size(), 3u);
    EXPECT_EQ(groups.size() % 2, 1u);
    for (const PlannedDrift& group : groups) {
      EXPECT_EQ(group.kind, 3u);
      EXPECT_EQ(group.count, groups.front().count);
      EXPECT_EQ(group.count % 2, 1);
    }
    const double all = static_cast<double>(groups.size()) * groups.front().count;
    EXPECT_NEAR(all, plants, static_cast<double>(groups.size()));
  }
}

// In each even part of a border one, although more places lie at its left end.
TEST(Rhythm, TakesAPlaceInEachPartOfTheBorder) {
  test::YardBuilder builder;
  builder.bed("Border", kBorder);  // looked at from nowhere, so any depth will do
  const Yard yard = builder.build();
  const FillGround ground(yard, *yard.beds.begin(), Layer::Main, 0.4, 0.2);
  std::vector<Point> middles;
  std::vector<PlannedDrift> planned;
  std::vector<std::size_t> drifts;
  for (const double x : {0.5, 1.0, 1.5, 2.0, 3.0, 6.1, 7.5, 9.8, 11.5}) {
    middles.push_back({x, 2.0});
    drifts.push_back(planned.size());
    planned.push_back({planned.size() < 3 ? 1u : 0u, 5});  // the first three are of kind 1
  }
  Chance chance(4);
  const auto taken = setRhythm({ground, middles, planned, 1}, drifts, chance);
  EXPECT_EQ(taken, (std::set<std::size_t>{3, 5, 7}));  // thirds have their middles at 2, 6 and 10
  for (const std::size_t place : taken) EXPECT_EQ(planned[drifts[place]].kind, 1u);
  std::sort(drifts.begin(), drifts.end());
  for (std::size_t i = 0; i < drifts.size(); ++i) EXPECT_EQ(drifts[i], i) << "each once";
}

// Middles from left to right of the drifts of each species of the main layer.
std::map<std::string, std::vector<double>> middlesOf(const Yard& yard) {
  std::map<std::string, std::vector<double>> middles;
  for (const Drift& drift : yard.drifts) {
    if (drift.layer != Layer::Main) continue;
    double sum = 0.0;
    for (const Plant& plant : drift.plants) sum += plant.at.x;
    middles[drift.species].push_back(sum / static_cast<double>(drift.plants.size()));
  }
  for (auto& [species, own] : middles) std::sort(own.begin(), own.end());
  return middles;
}

// Each gap between groups in turn is from half of to one and a half times a third of the border.
bool comesInEachThird(const std::vector<double>& middles) {
  if (middles.size() < 3) return false;
  for (std::size_t i = 1; i < middles.size(); ++i)
    if (middles[i] - middles[i - 1] < 2.0 || middles[i] - middles[i - 1] > 6.0) return false;
  return middles.front() < 4.0 && middles.back() > 8.0;
}

// With some seeds no low species has plants enough, or findings stand against it.
TEST(FormalBorder, MostlyHasASpeciesThatComesAgainInEachThird) {
  test::YardBuilder builder;
  builder.bed("Border", kBorder).viewing("S");
  int even = 0;
  for (int seed = 1; seed <= 8; ++seed) {
    FillRequest request;
    request.wildness = 0.1, request.seed = seed;
    const test::Filled bed = test::filled(builder.build(), request);
    EXPECT_EQ(bed.broken(), 0);
    const auto middles = middlesOf(bed.after);
    even += std::any_of(middles.begin(), middles.end(),
                        [](const auto& entry) { return comesInEachThird(entry.second); });
  }
  EXPECT_GE(even, 5);
}

}  // namespace
}  // namespace tussock
