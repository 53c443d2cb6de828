// SPDX-License-Identifier: MIT
// That what cannot be checked is told is common practice.
#include <gtest/gtest.h>

#include "core/checks/describe.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

TEST(UnknownSpecies, AMisspeltNameIsFoundOnceWithAllItsPlants) {
  const auto yard = YardBuilder()
                        .bed("Walk", kSquareBed)
                        .drift("Echinacea purpura", {{2.0, 2.0}, {3.0, 2.0}, {4.0, 2.0}})
                        .drift("Echinacea purpura", {{7.0, 7.0}})
                        .drift(kBergamot, {{5.0, 5.0}});
  const auto findings = found(CheckId::UnknownSpecies, yard);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].measured, 4.0);
  EXPECT_EQ(findings[0].place.size(), 2U);
  const FindingText words = describe(findings[0], yard.build(), tinyCatalogue());
  EXPECT_NE(words.text.find("“Echinacea purpura”"), std::string::npos) << words.text;
  EXPECT_NE(words.text.find("4 plants"), std::string::npos) << words.text;
}

TEST(UnknownSpecies, KnownOnesPass) {
  EXPECT_TRUE(found(CheckId::UnknownSpecies,
                    YardBuilder().bed("Walk", kSquareBed).drift(kBergamot, {{5.0, 5.0}}))
                  .empty());
}

}  // namespace
}  // namespace tussock
