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

Settings frosts(double latitude, MonthDay last, MonthDay first) {
  Settings settings;
  settings.latitude = Angle::degrees(latitude);
  settings.lastFrost = last;
  settings.firstFrost = first;
  return settings;
}

// Dates of the right kind for each place, from memory: southern Indiana, Churchill on Hudson Bay,
// a warm coast whose first frost comes after New Year, Canberra, Ushuaia.
TEST(FrostDates, MayBeInAnyOrderThatLeavesASummer) {
  using namespace std::chrono;
  EXPECT_EQ(frostTrouble(frosts(38.4, April / 20, October / 18)), "");
  EXPECT_EQ(frostTrouble(frosts(58.8, June / 25, September / 8)), "");
  EXPECT_EQ(frostTrouble(frosts(29.0, February / 10, January / 5)), "");
  EXPECT_EQ(frostTrouble(frosts(-35.3, November / 5, April / 5)), "");
  EXPECT_EQ(frostTrouble(frosts(-54.8, December / 20, February / 10)), "");
}

TEST(FrostDates, AreRefusedWhereTheyLeaveNoSummer) {
  using namespace std::chrono;
  const std::string north = frostTrouble(frosts(38.4, October / 18, April / 20));
  EXPECT_NE(north.find("18 October"), std::string::npos) << north;
  EXPECT_NE(north.find("north of the equator"), std::string::npos) << north;
  const std::string south = frostTrouble(frosts(-35.3, April / 20, October / 18));
  EXPECT_NE(south.find("south of the equator"), std::string::npos) << south;
}

// Frosts come in the coldest weeks or not at all.
TEST(FrostDates, AreRefusedWhereWinterWouldBeFreeOfFrost) {
  using namespace std::chrono;
  const std::string north = frostTrouble(frosts(38.4, April / 20, March / 1));
  EXPECT_NE(north.find("depth of winter"), std::string::npos) << north;
  const std::string south = frostTrouble(frosts(-35.3, October / 20, September / 1));
  EXPECT_NE(south.find("depth of winter"), std::string::npos) << south;
  EXPECT_NE(frostTrouble(frosts(38.4, September / 20, August / 10)), "");
  // The last day that touches it, and the first that does not.
  EXPECT_EQ(frostTrouble(frosts(29.0, April / 1, February / 15)), "");
  EXPECT_NE(frostTrouble(frosts(29.0, April / 1, February / 16)), "");
  EXPECT_EQ(frostTrouble(frosts(29.0, December / 15, November / 20)), "");
  EXPECT_NE(frostTrouble(frosts(29.0, December / 14, November / 20)), "");
  EXPECT_EQ(frostTrouble(frosts(-29.0, September / 1, August / 15)), "");
  EXPECT_NE(frostTrouble(frosts(-29.0, September / 1, August / 16)), "");
}

TEST(FrostDates, AreRefusedWhereTheyLeaveLessThanThirtyDays) {
  using namespace std::chrono;
  EXPECT_EQ(frostTrouble(frosts(64.0, July / 10, August / 9)), "");
  const std::string few = frostTrouble(frosts(64.0, July / 10, August / 8));
  EXPECT_NE(few.find("only 29 days"), std::string::npos) << few;
  EXPECT_NE(frostTrouble(frosts(-54.8, January / 10, February / 8)), "");
  EXPECT_NE(frostTrouble(frosts(64.0, July / 21, July / 21)), "");
}

// Offsets of standard time from the time-zone database, longitudes of the places from memory.
TEST(TimeZoneSuits, WhereTheClockIsNearTheSun) {
  using std::chrono::hours;
  EXPECT_TRUE(zoneSuits(hours(-5), Angle::degrees(-86.9)));   // Indiana, on Eastern time
  EXPECT_TRUE(zoneSuits(hours(-6), Angle::degrees(-86.9)));   // and on Central
  EXPECT_FALSE(zoneSuits(hours(0), Angle::degrees(-86.9)));   // UTC there
  EXPECT_FALSE(zoneSuits(hours(-8), Angle::degrees(-86.9)));  // Pacific time there
  EXPECT_TRUE(zoneSuits(hours(1), Angle::degrees(-8.5)));     // Galicia
  EXPECT_TRUE(zoneSuits(hours(12), Angle::degrees(-179.0)));  // over the date line
  EXPECT_TRUE(zoneSuits(hours(0), Angle()));
}

TEST(TimeZoneSuits, CountsAnHourForEachFifteenDegrees) {
  EXPECT_NEAR(hoursAheadOfSun(std::chrono::hours(-5), Angle::degrees(-90.0)), 1.0, 1e-9);
  EXPECT_NEAR(hoursAheadOfSun(std::chrono::hours(0), Angle::degrees(37.5)), -2.5, 1e-9);
  EXPECT_NEAR(hoursAheadOfSun(std::chrono::hours(12), Angle::degrees(-172.5)), -0.5, 1e-9);
}

TEST(FrostDates, OneAloneTellsNothing) {
  Settings settings = frosts(38.4, std::chrono::October / 18, std::chrono::April / 20);
  settings.firstFrost.reset();
  EXPECT_EQ(frostTrouble(settings), "");
}

}  // namespace
}  // namespace tussock
