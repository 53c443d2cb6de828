// SPDX-License-Identifier: MIT
// Areas by hand; that ground is planted and counted once is common practice.
#include <gtest/gtest.h>

#include "core/checks/describe.h"
#include "core/geometry/polygon.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

constexpr const char* kBorder = "POLYGON((0 0, 6 0, 6 3, 0 3, 0 0))";

std::vector<Finding> foundIn(const Yard& yard) {
  return runCheck(CheckId::SharedGround, {yard, tinyCatalogue()});
}

TEST(SharedGround, TheShareOfTheSmallerBedIsTold) {
  const Yard yard = YardBuilder()
                        .bed("Border", kBorder)
                        .bed("Corner", "POLYGON((5 1, 8 1, 8 3, 5 3, 5 1))")
                        .build();
  const auto findings = foundIn(yard);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 2.0 / 6.0, 1e-9) << "1 m by 2 m of 3 m by 2 m";
  ASSERT_EQ(findings[0].place.size(), 1U);
  EXPECT_NEAR(areaOf(findings[0].place[0]).squareMetres(), 2.0, 1e-9);
  const FindingText words = describe(findings[0], yard, tinyCatalogue());
  EXPECT_EQ(words.text,
            "“Border” and “Corner” share ground, 33\u00a0% of the smaller: it would be planted and "
            "counted twice. Draw their edges apart, or make them one bed.");
}

TEST(SharedGround, BedsSideBySideOrOneInTheHoleOfAnotherShareNone) {
  EXPECT_TRUE(foundIn(YardBuilder()
                          .bed("Border", kBorder)
                          .bed("Next", "POLYGON((6 0, 9 0, 9 3, 6 3, 6 0))")
                          .build())
                  .empty());
  EXPECT_TRUE(foundIn(YardBuilder()
                          .bed("Ring",
                               "POLYGON((0 0, 9 0, 9 9, 0 9, 0 0), "
                               "(3 3, 3 6, 6 6, 6 3, 3 3))")
                          .bed("Middle", "POLYGON((3 3, 6 3, 6 6, 3 6, 3 3))")
                          .build())
                  .empty());
}

TEST(SharedGround, AFingersBreadthOfALongEdgeIsLetBe) {
  EXPECT_TRUE(foundIn(YardBuilder()
                          .bed("Border", kBorder)
                          .bed("Next", "POLYGON((5.98 0, 9 0, 9 3, 5.98 3, 5.98 0))")
                          .build())
                  .empty());
}

}  // namespace
}  // namespace tussock
