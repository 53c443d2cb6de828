// SPDX-License-Identifier: MIT
#include "core/model/sun_hours_text.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(SunHoursText, ReadsHoursAsPeopleWriteThem) {
  for (const char* text : {"4.5", "4,5", " 4.5 h", "4:30", "4 h 30", "4 h 30 min", "4h30m"})
    EXPECT_EQ(parseSunHours(text), 4.5) << text;
  EXPECT_EQ(parseSunHours("0"), 0.0);
  EXPECT_EQ(parseSunHours("24"), 24.0);
}

TEST(SunHoursText, TakesNothingElse) {
  for (const char* text :
       {"", "h", "four", "-1", "24.1", "25", "4:60", "4.5:30", "nan", "inf", "4:", "4 5:x", "1e3"})
    EXPECT_FALSE(parseSunHours(text)) << text;
}

}  // namespace
}  // namespace tussock
