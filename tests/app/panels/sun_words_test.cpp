// SPDX-License-Identifier: MIT
#include "app/panels/sun_words.h"

#include <gtest/gtest.h>

#include "core/sun/position.h"
#include "tests/support/yard_builder.h"

namespace tussock::test {
namespace {

// Whatever is rounded, what is told adds up and is off by less than a tenth.
TEST(SunWords, HoursBeforeAndAfterNoonAddUp) {
  for (double before = 0.0; before < 7.0; before += 0.013)
    for (double after = 0.0; after < 7.0; after += 0.37) {
      const HourFigures figures = hourFigures({before, after});
      ASSERT_NEAR(figures.before.toDouble() + figures.after.toDouble(), figures.total.toDouble(),
                  1e-9)
          << before << " and " << after;
      ASSERT_NEAR(figures.before.toDouble(), before, 0.1001);
      ASSERT_NEAR(figures.after.toDouble(), after, 0.1001);
      ASSERT_NEAR(figures.total.toDouble(), before + after, 0.0501);
    }
}

TEST(SunWords, MonthsTellWhichOfTheirDaysCount) {
  using namespace std::chrono;
  const auto words = [](month each, MonthDay first, MonthDay last) {
    return monthWords(each, GrowingSeason{first, last, false}).toStdString();
  };
  EXPECT_EQ(words(April, April / 1, October / 31), "April");
  EXPECT_EQ(words(October, April / 20, October / 18), "1–18 October");
  EXPECT_EQ(words(April, April / 20, April / 28), "20–28 April");
  EXPECT_EQ(words(May, May / 20, May / 3), "1–3 and 20–31 May") << "over the new year";
  EXPECT_EQ(words(February, October / 1, February / 29), "February");
}

// On 20 March at 42.3 degrees north, 83 west the sun's middle comes up some 5 minutes after its rim
// is seen: 0.833 degrees at 15 degrees an hour times the cosine of the latitude.
TEST(SunWords, TheSunOnTheHorizonIsToldApart) {
  Settings settings;
  settings.latitude = Angle::degrees(42.3);
  settings.longitude = Angle::degrees(-83.0);
  settings.timeZone = "America/Detroit";
  const CivilDay day(Date(std::chrono::year(2027), std::chrono::March, std::chrono::day(20)),
                     settings);
  const Daylight seen = daylight(day.date(), settings.latitude, settings.longitude);
  const int sunrise = day.minuteOf(*seen.sunrise), sunset = day.minuteOf(*seen.sunset);
  EXPECT_EQ(horizonWords(day, sunrise - 1, settings), "");
  EXPECT_TRUE(horizonWords(day, sunrise + 2, settings).contains("until its middle is up"));
  EXPECT_EQ(horizonWords(day, sunrise + 6, settings), "");
  EXPECT_EQ(horizonWords(day, sunset - 6, settings), "");
  EXPECT_TRUE(horizonWords(day, sunset - 1, settings).contains("its middle went down"));
  EXPECT_EQ(horizonWords(day, sunset + 2, settings), "");
}

TEST(SunWords, BedsThatAloneAreMappedAreToldOf) {
  YardBuilder builder;
  builder.bed("Walk", "POLYGON((0 0, 6 0, 6 3, 0 3, 0 0))");
  EXPECT_EQ(groundWords(builder.build()), "");
  builder.bed("Far", "POLYGON((4000 3000, 4006 3000, 4006 3003, 4000 3003, 4000 3000))");
  EXPECT_TRUE(groundWords(builder.build()).contains("on and around the beds"));
}

// At the pole the sun's altitude is its declination, which grows by 0.4 degrees a day in March and
// is none at 14:46 UTC on 20 March 2026: it is -0.833 degrees some 2.1 days earlier.
TEST(SunWords, TheDayOnWhichThePoleSeesTheSunComeUpHasNoSunset) {
  using std::chrono::March;
  Settings settings;
  settings.latitude = Angle::degrees(90);
  settings.longitude = Angle();
  settings.timeZone = "UTC";
  const auto on = [&](unsigned day) {
    const Date date(std::chrono::year(2026), March, std::chrono::day(day));
    return daylightWords(CivilDay(date, settings), settings).toStdString();
  };
  EXPECT_TRUE(on(17).starts_with("Polar night")) << on(17);
  EXPECT_TRUE(on(18).starts_with("Sunrise 1")) << on(18);
  EXPECT_NE(on(18).find("no sunset on this day"), std::string::npos) << on(18);
  EXPECT_TRUE(on(19).starts_with("Midnight sun")) << on(19);
}

}  // namespace
}  // namespace tussock::test
