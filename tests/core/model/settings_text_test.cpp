// SPDX-License-Identifier: MIT
#include "core/model/settings_text.h"

#include <set>

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(StateText, TakesEitherCaseAndGivesCapitals) {
  EXPECT_EQ(parseState("IN"), "IN");
  EXPECT_EQ(parseState("mn"), "MN");
  EXPECT_EQ(parseState(""), "");
}

// United States Postal Service, Publication 28, appendix B: 50 states, the District of Columbia,
// American Samoa, Guam, Northern Mariana Islands, Puerto Rico, Virgin Islands.
TEST(StateText, KnowsFiftyStatesTheDistrictAndFiveTerritories) {
  std::set<std::string> known;
  for (char first = 'A'; first <= 'Z'; ++first)
    for (char second = 'A'; second <= 'Z'; ++second)
      if (const auto state = parseState(std::string{first, second})) known.insert(*state);
  EXPECT_EQ(known.size(), 56u);
  for (const char* name : {"AL", "WY", "DC", "AS", "GU", "MP", "PR", "VI"})
    EXPECT_TRUE(known.contains(name)) << name;
}

TEST(StateText, RefusesWhatIsNoState) {
  for (const char* text : {"ZZ", "I", "IND", "Indiana", " I", "N ", "L ", "12", "Ö"})
    EXPECT_EQ(parseState(text), std::nullopt) << text;
}

// USDA Plant Hardiness Zone Map, 2023: zones 1a to 13b.
TEST(HardinessZoneText, TakesOneToThirteenInHalves) {
  for (int zone = 1; zone <= 13; ++zone)
    for (const char* half : {"", "a", "b"}) {
      const std::string text = std::to_string(zone) + half;
      EXPECT_EQ(parseHardinessZone(text), text);
    }
  EXPECT_EQ(parseHardinessZone("6B"), "6b");
  EXPECT_EQ(parseHardinessZone(""), "");
}

TEST(HardinessZoneText, RefusesWhatIsNoZone) {
  for (const char* text : {"0", "0a", "06b", "14", "99", "6c", "b", "6ab", "6 b", "-6", "six"})
    EXPECT_EQ(parseHardinessZone(text), std::nullopt) << text;
}

// Names from IANA's time-zone database.
TEST(TimeZoneText, KnowsTheFormOfIanaNames) {
  for (const char* text : {"UTC", "America/Chicago", "America/Indiana/Tell_City", "Etc/GMT+5",
                           "America/Port-au-Prince", "EST5EDT", "Pacific/Honolulu"})
    EXPECT_TRUE(looksLikeTimeZone(text)) << text;
}

TEST(TimeZoneText, RefusesOtherForms) {
  for (const char* text : {"", "/", "America/", "/Chicago", "America//Chicago", "-06:00", "UTC-6 h",
                           "America/Tell City", "a/b/c/d", "America/São_Paulo", "../etc/passwd"})
    EXPECT_FALSE(looksLikeTimeZone(text)) << text;
}

}  // namespace
}  // namespace tussock
