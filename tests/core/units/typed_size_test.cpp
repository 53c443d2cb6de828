// SPDX-License-Identifier: MIT
// One foot is 0.3048 m exactly (international yard and pound agreement, 1959).
#include "core/units/typed_size.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(TypedArea, IsReadInEitherUnit) {
  for (const char* text : {"2.5 m²", "2.5m2", " 2.5 sq m ", "2.5"})
    EXPECT_EQ(parseArea(text, UnitSystem::Metres), Area::squareMetres(2.5)) << text;
  for (const char* text : {"27 sq ft", "27 ft²", "27ft2", "27"}) {
    const auto area = parseArea(text, UnitSystem::FeetInches);
    ASSERT_TRUE(area.has_value()) << text;
    EXPECT_NEAR(area->squareMetres(), 27.0 * 0.3048 * 0.3048, 1e-12) << text;
  }
}

TEST(TypedArea, IsReadBackAsItIsShown) {
  for (const UnitSystem units : {UnitSystem::Metres, UnitSystem::FeetInches})
    for (const double metres : {0.14, 1.8, 37.0, 640.0}) {
      const std::string shown = formatArea(Area::squareMetres(metres), units);
      const auto read = parseArea(shown, units);
      ASSERT_TRUE(read.has_value()) << shown;
      EXPECT_EQ(formatArea(*read, units), shown);
    }
}

TEST(TypedArea, IsNothingWhenItIsNone) {
  for (const char* text : {"", "m²", "-2", "2 m", "2 ft", "2.5 m² or so", "nan", "inf"})
    EXPECT_FALSE(parseArea(text, UnitSystem::Metres).has_value()) << text;
}

// An inch is 25.4 mm exactly.
TEST(TypedPlantSize, ABareNumberIsInTheUnitShown) {
  const Length least = Length::centimetres(5), most = Length::metres(6.0);
  const auto read = [&](const char* text, UnitSystem units) {
    return parsePlantSize(text, units, least, most).value_or(Length()).metres();
  };
  EXPECT_NEAR(read("18", UnitSystem::FeetInches), 18 * 0.0254, 1e-12);
  EXPECT_NEAR(read("1.5", UnitSystem::FeetInches), 18 * 0.0254, 1e-12);
  EXPECT_NEAR(read("18 in", UnitSystem::FeetInches), 18 * 0.0254, 1e-12);
  EXPECT_NEAR(read("2'", UnitSystem::FeetInches), 24 * 0.0254, 1e-12);
  EXPECT_NEAR(read("40 cm", UnitSystem::FeetInches), 0.4, 1e-12);
  EXPECT_NEAR(read("40", UnitSystem::Metres), 0.4, 1e-12);
  EXPECT_NEAR(read("0.4", UnitSystem::Metres), 0.4, 1e-12);
  EXPECT_NEAR(read("1.20 m", UnitSystem::Metres), 1.2, 1e-12);
  EXPECT_NEAR(read("18 in", UnitSystem::Metres), 18 * 0.0254, 1e-12);
  EXPECT_FALSE(parsePlantSize("wide", UnitSystem::Metres, least, most).has_value());
}

}  // namespace
}  // namespace tussock
