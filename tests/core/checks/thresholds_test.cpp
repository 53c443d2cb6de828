// SPDX-License-Identifier: MIT
#include "core/checks/thresholds.h"

#include <set>
#include <stdexcept>

#include <gtest/gtest.h>

#include "core/planting/grow.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

TEST(Thresholds, HaveTheirOwnIdsLabelsAndSources) {
  std::set<std::string_view> ids;
  for (const Threshold& threshold : thresholds()) {
    EXPECT_TRUE(ids.insert(threshold.id).second) << threshold.id;
    EXPECT_FALSE(threshold.label.empty()) << threshold.id;
    EXPECT_FALSE(threshold.source.empty()) << threshold.id;
    EXPECT_EQ(findThreshold(threshold.id), &threshold);
  }
}

// What is planted by rule must never be found fault with.
TEST(Thresholds, AreThoseOfPlanting) {
  EXPECT_EQ(findThreshold("spacing_factor")->value, kLooseSpacing);
  EXPECT_EQ(findThreshold("between_layers")->value, kBetweenLayers.metres());
}

// Santamour 1990.
TEST(Thresholds, SharesAreTenTwentyThirty) {
  EXPECT_EQ(findThreshold("species_share")->value, 0.10);
  EXPECT_EQ(findThreshold("genus_share")->value, 0.20);
  EXPECT_EQ(findThreshold("family_share")->value, 0.30);
}

TEST(Thresholds, AYardsOwnValueGoesFirst) {
  const Settings settings = test::YardBuilder().threshold("odd_up_to", 5.0).build().settings;
  EXPECT_EQ(thresholdFor(settings, "odd_up_to"), 5.0);
  EXPECT_EQ(thresholdFor(Settings{}, "odd_up_to"), 9.0);
}

TEST(Thresholds, UnknownIdIsRefused) {
  EXPECT_EQ(findThreshold("no_such"), nullptr);
  EXPECT_THROW((void)thresholdFor(Settings{}, "no_such"), std::invalid_argument);
}

}  // namespace
}  // namespace tussock
