// SPDX-License-Identifier: MIT
#include "app/panels/field_text.h"

#include <gtest/gtest.h>

#include "app/panels/place_words.h"

namespace tussock {
namespace {

const LengthBounds kBounds{Length::centimetres(10), Length::metres(30)};

TEST(FieldText, ABareNumberIsInTheYardsUnits) {
  Length value;
  EXPECT_TRUE(readLength(QStringLiteral("12.5"), UnitSystem::FeetInches, kBounds, value).isEmpty());
  EXPECT_DOUBLE_EQ(value.metres(), 3.81);
  EXPECT_TRUE(readLength(QStringLiteral("12.5"), UnitSystem::Metres, kBounds, value).isEmpty());
  EXPECT_DOUBLE_EQ(value.metres(), 12.5);
}

TEST(FieldText, WhatIsOutOfBoundsIsRefusedWithTheBounds) {
  Length value = Length::metres(1);
  const QString wrong = readLength(QStringLiteral("40 m"), UnitSystem::Metres, kBounds, value);
  EXPECT_TRUE(wrong.contains(QStringLiteral("30")));
  EXPECT_EQ(value, Length::metres(1));
}

TEST(FieldText, SharesAreReadWithAndWithoutTheSign) {
  double value = 0;
  EXPECT_TRUE(readShare(QStringLiteral("15 %"), value).isEmpty());
  EXPECT_DOUBLE_EQ(value, 0.15);
  EXPECT_TRUE(readShare(QStringLiteral("100"), value).isEmpty());
  EXPECT_DOUBLE_EQ(value, 1.0);
  for (const char* bad : {"101", "-1", "many", "nan", ""})
    EXPECT_FALSE(readShare(QLatin1String(bad), value).isEmpty()) << bad;
  EXPECT_EQ(shareText(0.15), QStringLiteral("15 %"));
}

TEST(FieldText, DaysAreReadAsPeopleWriteThem) {
  const MonthDay wanted{std::chrono::April, std::chrono::day{20}};
  for (const char* typed : {"20 April", "20 Apr", "April 20", "Apr 20", "04-20"})
    EXPECT_EQ(parseDay(QLatin1String(typed)), wanted) << typed;
  for (const char* typed : {"31 April", "soon", "13-01", ""})
    EXPECT_FALSE(parseDay(QLatin1String(typed))) << typed;
  EXPECT_TRUE(parseDay(QStringLiteral("29 February")));
}

TEST(FieldText, AnEmptyDayMeansNotKnown) {
  std::optional<MonthDay> day = MonthDay{std::chrono::April, std::chrono::day{20}};
  EXPECT_TRUE(readOptionalDay(QString(), day).isEmpty());
  EXPECT_FALSE(day);
}

// A minute is a sixtieth and a second a 3600th of a degree (ISO 6709).
TEST(PlaceWords, CoordinatesAreReadInDegreesOrInMinutesAndSeconds) {
  const auto degrees = [](const char* typed, Axis axis) {
    const auto read = parseCoordinate(QString::fromUtf8(typed), axis);
    return read ? read->degrees() : 999.0;
  };
  EXPECT_NEAR(degrees("38.41", Axis::Latitude), 38.41, 1e-12);
  EXPECT_NEAR(degrees("38.41° N", Axis::Latitude), 38.41, 1e-12);
  EXPECT_NEAR(degrees("38° 24' 36\" N", Axis::Latitude), 38.41, 1e-12);
  EXPECT_NEAR(degrees("-86.9", Axis::Longitude), -86.9, 1e-12);
  EXPECT_NEAR(degrees("86.9 W", Axis::Longitude), -86.9, 1e-12);
  EXPECT_NEAR(degrees("33.9 s", Axis::Latitude), -33.9, 1e-12);
  for (const char* bad : {"91", "40 E", "north", ""})
    EXPECT_EQ(degrees(bad, Axis::Latitude), 999.0) << bad;
}

TEST(PlaceWords, WrittenCoordinatesReadBack) {
  const Angle west = Angle::degrees(-86.9412);
  const auto read = parseCoordinate(coordinateWords(west, Axis::Longitude), Axis::Longitude);
  ASSERT_TRUE(read);
  EXPECT_NEAR(read->degrees(), west.degrees(), 1e-9);
}

}  // namespace
}  // namespace tussock
