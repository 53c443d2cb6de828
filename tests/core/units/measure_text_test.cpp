// SPDX-License-Identifier: MIT
#include "core/units/measure_text.h"

#include <ostream>

#include <gtest/gtest.h>

namespace tussock {
namespace {

struct Reading {
  const char* text;
  double metres;  // exact: 1 ft = 0.3048 m, 1 in = 0.0254 m (international foot, 1959)
};
void PrintTo(const Reading& reading, std::ostream* out) {
  *out << reading.text;
}

class ReadsLength : public testing::TestWithParam<Reading> {};

TEST_P(ReadsLength, AsFeetWhenBare) {
  const auto length = parseLength(GetParam().text, UnitSystem::FeetInches);
  ASSERT_TRUE(length.has_value());
  EXPECT_NEAR(length->metres(), GetParam().metres, 1e-12);
}

INSTANTIATE_TEST_SUITE_P(Written, ReadsLength,
                         testing::Values(Reading{"12' 6 1/2\"", 3.8227}, Reading{"12' 6\"", 3.81},
                                         Reading{"12'6\"", 3.81}, Reading{"12 ft 6 in", 3.81},
                                         Reading{"12.5 ft", 3.81}, Reading{"12.5", 3.81},
                                         Reading{"150\"", 3.81}, Reading{"150 in", 3.81},
                                         Reading{"3.81 m", 3.81}, Reading{"381 cm", 3.81},
                                         Reading{"3810 mm", 3.81}, Reading{"1/2 in", 0.0127},
                                         Reading{"  7 ft ", 2.1336}, Reading{"12’ 6”", 3.81},
                                         Reading{"0", 0.0}));

class RefusesLength : public testing::TestWithParam<const char*> {};

TEST_P(RefusesLength, Entirely) {
  EXPECT_FALSE(parseLength(GetParam(), UnitSystem::FeetInches).has_value());
}

INSTANTIATE_TEST_SUITE_P(Written, RefusesLength,
                         testing::Values("", "ft", "-3 m", "12' 13\"", "3 m 4", "4 yards", "1/0 in",
                                         "1e400 m", "nan", "12' 6' 3\"", "5 in 3 ft"));

TEST(FormatLength, GivesFeetAndInchesOrMetres) {
  EXPECT_EQ(formatLength(Length::feet(31) + Length::inches(4), UnitSystem::FeetInches), "31' 4\"");
  EXPECT_EQ(formatLength(Length::inches(11.97), UnitSystem::FeetInches), "1' 0\"");
  EXPECT_EQ(formatLength(Length::inches(6.5), UnitSystem::FeetInches), "6½\"");
  EXPECT_EQ(formatLength(Length::inches(0.5), UnitSystem::FeetInches), "½\"");
  EXPECT_EQ(formatLength(Length::inches(12.5), UnitSystem::FeetInches), "1' 0½\"");
  EXPECT_EQ(formatLength(Length::metres(9.551), UnitSystem::Metres), "9.55 m");
}

TEST(FormatLength, NeverPrintsTwelveInches) {
  for (int tenths = 0; tenths < 5000; ++tenths) {
    const auto text = formatLength(Length::inches(tenths / 10.0), UnitSystem::FeetInches);
    EXPECT_EQ(text.find(" 12"), std::string::npos) << text;
  }
}

TEST(FormatArea, KeepsThreeFigures) {
  EXPECT_EQ(formatArea(Area::squareFeet(10.31), UnitSystem::FeetInches), "10.3 sq ft");
  EXPECT_EQ(formatArea(Area::squareMetres(0.957), UnitSystem::Metres), "0.96 m²");
}

TEST(FormatPlantSize, GivesInchesBelowFourFeetThenFeetAndInches) {
  constexpr UnitSystem feet = UnitSystem::FeetInches, metres = UnitSystem::Metres;
  EXPECT_EQ(formatPlantSize(Length::inches(18), feet), "18 in");
  EXPECT_EQ(formatPlantSize(Length::inches(47.4), feet), "47 in");
  EXPECT_EQ(formatPlantSize(Length::inches(47.6), feet), "4' 0\"");
  EXPECT_EQ(formatPlantSize(Length::inches(62), feet), "5' 2\"");
  EXPECT_EQ(formatPlantSize(Length::inches(71.9), feet), "6' 0\"");
  EXPECT_EQ(formatPlantSize(Length::centimetres(45), metres), "45 cm");
  EXPECT_EQ(formatPlantSize(Length::centimetres(99.6), metres), "1.00 m");
  EXPECT_EQ(formatPlantSize(Length::metres(1.6), metres), "1.60 m");
}

}  // namespace
}  // namespace tussock
