// SPDX-License-Identifier: MIT
// What the hours of a map are, in words: those of a day are no mean.
#include <gtest/gtest.h>

#include "core/exchange/sun_notes.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

TEST(SunHeadingTest, TellsADayFromAMean) {
  const Yard yard = test::YardBuilder().build();
  SunMapRequest request;
  EXPECT_TRUE(sunHeading(yard, request, {}).starts_with("Mean hours of direct sun a day, "));
  const SunMean worst{.span = SunSpan::WorstMonth};
  EXPECT_NE(sunHeading(yard, request, worst).find("the month with the least sun"),
            std::string::npos);
  request.day = 2027y / 6 / 20;
  EXPECT_EQ(sunHeading(yard, request, {}), "Hours of direct sun on 20 June 2027");
}

}  // namespace
}  // namespace tussock
