// SPDX-License-Identifier: MIT
// That hours of sun are as good as what is drawn is common practice.
#include <gtest/gtest.h>

#include "core/checks/describe.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

TEST(DoubtfulShade, AWallOfNoHeightIsTold) {
  Yard yard = YardBuilder().wall("Old wall", {{1.0, 1.0}, {5.0, 1.0}}, 0.3).build();
  Barrier wall = *yard.barriers.begin();
  wall.height = Length();
  yard.barriers = yard.barriers.with(wall);
  const auto findings = runCheck(CheckId::DoubtfulShade, {yard, tinyCatalogue()});
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Caution);
  EXPECT_EQ(describe(findings[0], yard, tinyCatalogue()).text,
            "The wall “Old wall” has no height and casts no shade. Give it a height.");
  EXPECT_EQ(describe(findings[0], yard, tinyCatalogue()).limit, "") << "no such limit as none";
}

TEST(DoubtfulShade, ASpreadingTreeIsOnlyHintedAtInTheYardsUnits) {
  Yard yard = YardBuilder().tree("Oak", {4.0, 4.0}, 0.6).build();
  Tree oak = *yard.trees.begin();
  oak.height = Length::metres(6.0), oak.crownRadius = Length::metres(4.5);
  yard.trees = yard.trees.with(oak);
  yard.settings.units = UnitSystem::FeetInches;
  const auto findings = runCheck(CheckId::DoubtfulShade, {yard, tinyCatalogue()});
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Hint);
  const FindingText words = describe(findings[0], yard, tinyCatalogue());
  EXPECT_EQ(words.title, "Unusual shade");
  EXPECT_NE(words.text.find("29' 6\" wide on a height of 19' 8\""), std::string::npos)
      << words.text;
}

TEST(DoubtfulShade, WhatIsSoundPasses) {
  const Yard yard = YardBuilder()
                        .wall("Old wall", {{1.0, 1.0}, {5.0, 1.0}}, 0.3)
                        .building("House", "POLYGON((6 6, 9 6, 9 9, 6 9, 6 6))")
                        .build();
  EXPECT_TRUE(runCheck(CheckId::DoubtfulShade, {yard, tinyCatalogue()}).empty());
}

}  // namespace
}  // namespace tussock
