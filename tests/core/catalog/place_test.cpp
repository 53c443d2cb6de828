// SPDX-License-Identifier: MIT
#include "core/catalog/place.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "core/geometry/wkt.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr auto kBed = "POLYGON((0 0, 10 0, 10 10, 0 10, 0 0))";

Yard yardWith(const std::vector<HeightLimit>& limits) {
  test::YardBuilder builder;
  builder.bed("Bed", kBed).moisture(Moisture::Dry);
  Draft draft(builder.build());
  IdSource ids(100);
  for (HeightLimit limit : limits) {
    limit.id = ids.take<HeightLimit>();
    draft.put(limit);
  }
  Patch patch;
  patch.id = ids.take<Patch>();
  patch.outline = polygonFromWkt("POLYGON((6 6, 9 6, 9 9, 6 9, 6 6))").value();
  patch.moisture = Moisture::Wet;
  draft.put(patch);
  return draft.yard();
}

HeightLimit limitOver(const char* outline, double metres, double datum = 0.0) {
  HeightLimit limit;
  limit.outline = polygonFromWkt(outline).value();
  limit.height = Length::metres(metres);
  limit.datumOffset = Length::metres(datum);
  return limit;
}

TEST(PlaceOfABed, TakesTheLowestLimitOverAnyOfIt) {
  const Yard yard = yardWith({limitOver("POLYGON((8 0, 20 0, 20 10, 8 10, 8 0))", 0.9),
                              limitOver("POLYGON((9 0, 20 0, 20 10, 9 10, 9 0))", 0.6, 0.15),
                              limitOver("POLYGON((30 0, 40 0, 40 9, 30 9, 30 0))", 0.1)});
  const Place place = placeOf(yard, *yard.beds.begin(), 5.0);
  ASSERT_TRUE(place.heightLimit);
  EXPECT_NEAR(place.heightLimit->metres(), 0.75, 1e-12);  // over the ground, with the datum
  EXPECT_EQ(place.moisture, Moisture::Dry);
  EXPECT_EQ(place.sunHours, 5.0);
}

TEST(PlaceAtAPoint, APatchGoesBeforeTheBed) {
  const Yard yard = yardWith({limitOver("POLYGON((8 0, 20 0, 20 10, 8 10, 8 0))", 0.9)});
  EXPECT_EQ(placeAt(yard, {2.0, 2.0}, std::nullopt).moisture, Moisture::Dry);
  EXPECT_FALSE(placeAt(yard, {2.0, 2.0}, std::nullopt).heightLimit);
  EXPECT_EQ(placeAt(yard, {8.5, 7.0}, std::nullopt).moisture, Moisture::Wet);
  EXPECT_TRUE(placeAt(yard, {8.5, 7.0}, std::nullopt).heightLimit);
  EXPECT_FALSE(placeAt(yard, {50.0, 50.0}, std::nullopt).moisture);
}

TEST(WhyNot, NamesSoilDeerAndHeight) {
  Species species;
  species.botanicalName = "Liatris aspera";
  species.soil = {SoilTexture::Sand, SoilTexture::Loam};
  species.deerResistant = Answer::No;
  species.heightHigh = Length::metres(1.1);
  Place place;
  place.soil = SoilTexture::Clay;
  place.deer = DeerAbout::Yes;
  place.heightLimit = Length::metres(0.75);
  place.units = UnitSystem::Metres;
  EXPECT_THAT(whyNot(species, place, sunProfile("usual")),
              ElementsAre("the soil is clay; grows in sand or loam", "deer eat it",
                          HasSubstr("is allowed here")));
  place.soil = SoilTexture::Loam;
  place.deer = DeerAbout::No;
  place.heightLimit = Length::metres(1.1);
  EXPECT_TRUE(whyNot(species, place, sunProfile("usual")).empty());
}

TEST(WhyNot, ASpeciesOwnHoursGoBeforeItsClasses) {
  Species species;
  species.sun = {SunNeed::Full};
  species.sunHoursLeast = 4.0;
  species.sunHoursMost = 8.0;
  Place place;
  place.sunHours = 5.0;
  EXPECT_TRUE(whyNot(species, place, sunProfile("usual")).empty());
  place.sunHours = 3.9;
  EXPECT_THAT(whyNot(species, place, sunProfile("usual")),
              ElementsAre("has 3.9 hours of sun here; asks for 4 to 8"));
}

TEST(PlaceOf, KnowsWhetherDeerAreAbout) {
  Yard yard;
  EXPECT_EQ(placeOf(yard).deer, DeerAbout::No);
  yard.settings.deerAbout = DeerAbout::Yes;
  EXPECT_EQ(placeOf(yard).deer, DeerAbout::Yes);
}

}  // namespace
}  // namespace tussock
