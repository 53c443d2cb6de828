// SPDX-License-Identifier: MIT
#include "core/exchange/geojson.h"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/plan_codes.h"
#include "core/exchange/change_json.h"
#include "tests/support/geojson_rules.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

Yard emptyYard() {
  return test::YardBuilder().build();
}

GeoJsonImport import(const Yard& yard, const std::string& json) {
  IdSource ids(largestId(yard) + 1);
  return importGeoJson(yard, Catalogue(), json, "site.geojson", ids);
}

Yard imported(const Yard& yard, const std::string& json) {
  return apply(yard, import(yard, json).edit);
}

std::string collection(const std::string& features, const std::string& members = "") {
  return R"({"type":"FeatureCollection",)" + members + R"("features":[)" + features + "]}";
}

// At the builder's place; 0.0001 degrees is some 11 m north, 9 m east.
std::string square(const std::string& properties) {
  return R"({"type":"Feature","properties":)" + properties +
         R"(,"geometry":{"type":"Polygon","coordinates":[[[-86.9,38.4],[-86.8999,38.4],)"
         R"([-86.8999,38.4001],[-86.9,38.4001],[-86.9,38.4]]]}})";
}

std::string point(const std::string& properties, const std::string& at = "[-86.89995,38.40005]") {
  return R"({"type":"Feature","properties":)" + properties +
         R"(,"geometry":{"type":"Point","coordinates":)" + at + "}}";
}

template <class T>
const T& only(const Collection<T>& collection) {
  if (collection.size() != 1) throw std::runtime_error("not one object");
  return *collection.begin();
}

struct DegreeLength {
  double latitude, north, east;  // degrees, metres
};
class LocalFrameAt : public testing::TestWithParam<DegreeLength> {};

// Lengths of a degree on WGS 84 as tabulated to the metre (from memory, after the tables of the
// National Geospatial-Intelligence Agency); they follow from the ellipsoid's two numbers.
TEST_P(LocalFrameAt, HasThePublishedLengthOfADegree) {
  const auto [latitude, north, east] = GetParam();
  const LocalFrame frame(Angle::degrees(latitude), Angle::degrees(10.0));
  EXPECT_NEAR(frame.toSite(10.0, latitude + 0.001).y * 1000.0, north, 1.0);
  EXPECT_NEAR(frame.toSite(10.001, latitude).x * 1000.0, east, 1.0);
}
INSTANTIATE_TEST_SUITE_P(
    Wgs84, LocalFrameAt,
    testing::Values(DegreeLength{0, 110574, 111320}, DegreeLength{15, 110649, 107550},
                    DegreeLength{30, 110852, 96486}, DegreeLength{45, 111132, 78847},
                    DegreeLength{60, 111412, 55800}, DegreeLength{75, 111618, 28902}));

TEST(LocalFrame, TurnsBackToTheSamePlaceAlsoAcrossTheDateLine) {
  const LocalFrame frame(Angle::degrees(-17.5), Angle::degrees(179.9999));
  const Point there{123.456, -78.9};
  const auto at = frame.toGeographic(there);
  EXPECT_LT(at.longitude, -179.0);
  EXPECT_NEAR(distance(frame.toSite(at.longitude, at.latitude), there), 0.0, 1e-7);
}

TEST(GeoJsonImport, ReadsABed) {
  const Yard yard =
      imported(emptyYard(), collection(square(R"({"kind":"bed","name":"Front","moisture":"moist",)"
                                              R"("setback_m":0.2,"viewing":"S"})")));
  const Bed& bed = only(yard.beds);
  EXPECT_EQ(bed.name, "Front");
  EXPECT_EQ(bed.moisture, Moisture::Moist);
  EXPECT_EQ(bed.setback, Length::metres(0.2));
  EXPECT_NEAR(bed.viewing.from.at(0).degrees(), 180.0, 1e-9);
  EXPECT_NEAR(distance(bed.outline.outer[0], {0, 0}), 0.0, 1e-6);
  EXPECT_NEAR(bed.outline.outer[2].y, 11.1, 0.05);
}

TEST(GeoJsonImport, TakesOneHeightForAFlatRoof) {
  const Building flat = only(
      imported(emptyYard(), collection(square(R"({"kind":"building","height_m":4})"))).buildings);
  EXPECT_EQ(flat.eave, Length::metres(4.0));
  EXPECT_EQ(flat.ridge, Length::metres(4.0));
  const Building gable = only(
      imported(emptyYard(), collection(square(R"({"kind":"building","roof":"gable","eave_m":3,)"
                                              R"("ridge_m":5.5,"ridge_azimuth_deg":90})")))
          .buildings);
  EXPECT_EQ(gable.ridge, Length::metres(5.5));
  EXPECT_NEAR(gable.ridgeAzimuth.value().degrees(), 90.0, 1e-12);
}

TEST(GeoJsonImport, TreesAreInLeafInTheirOwnSummer) {
  Yard southern = emptyYard();
  southern.settings.latitude = Angle::degrees(-35.0);
  const Tree tree = only(imported(southern, collection(R"({"type":"Feature","properties":)"
                                                       R"({"kind":"tree","leaf_off":"05-20"},)"
                                                       R"("geometry":{"type":"Point",)"
                                                       R"("coordinates":[-86.9,-35.0]}})"))
                             .trees);
  EXPECT_EQ(formatMonthDay(tree.leafOn), "10-20");
  EXPECT_EQ(formatMonthDay(tree.leafOff), "05-20");
}

TEST(GeoJsonImport, TakesAWallAsLineOrFootprint) {
  const Yard yard = imported(
      emptyYard(),
      collection(square(R"({"kind":"wall","height_m":2})") +
                 R"(,{"type":"Feature","properties":{"kind":"wall","openness":0.4},"geometry":)"
                 R"({"type":"LineString","coordinates":[[-86.9,38.4],[-86.8999,38.4]]}})"));
  ASSERT_EQ(yard.barriers.size(), 2u);
  EXPECT_TRUE(yard.barriers.begin()->line.empty());
  EXPECT_EQ((++yard.barriers.begin())->line.size(), 2u);
}

TEST(GeoJsonImport, PlantsOfADriftComeInTogether) {
  const std::string plant = R"({"kind":"plant","drift":"a","species":"Monarda fistulosa",)"
                            R"("code":"WB","spacing_m":0.6,"layer":"main","size":"quart"})";
  const Yard yard =
      imported(emptyYard(), collection(point(plant) + "," + point(plant, "[-86.89994,38.40005]") +
                                       "," + square(R"({"kind":"bed","name":"Front"})")));
  const Drift& drift = only(yard.drifts);
  EXPECT_EQ(drift.plants.size(), 2u);
  EXPECT_EQ(drift.bed, only(yard.beds).id);
  EXPECT_EQ(drift.spacing, Length::metres(0.6));
  EXPECT_EQ(drift.size, StockSize::Quart);
  EXPECT_EQ(codeOf(yard, "Monarda fistulosa"), "WB");
}

TEST(GeoJsonImport, PlantsOutsideAnyBedAreKeptAside) {
  const Yard before = emptyYard();
  const GeoJsonImport result =
      import(before, collection(point(R"({"kind":"plant","species":"Monarda fistulosa"})")));
  EXPECT_THAT(result.warnings, ElementsAre(HasSubstr("no bed holds it")));
  EXPECT_EQ(apply(before, result.edit).foreignFeatures.size(), 1u);
}

TEST(GeoJsonImport, KeepsWhatItDoesNotKnowAndWritesItBack) {
  const std::string json =
      collection(square(R"({"kind":"bed","soil_ph":6.5})").replace(1, 0, R"("id":"bed-7",)") + "," +
                     point(R"({"kind":"compost heap","name":"Old"})") + "," +
                     point("null", "[-86.9,38.4,200]"),
                 R"("survey":"spring",)");
  const std::string out = yardToGeoJson(imported(emptyYard(), json));
  EXPECT_THAT(out, AllOf(HasSubstr(R"("soil_ph":6.5)"), HasSubstr(R"("id":"bed-7")"),
                         HasSubstr("compost heap"), HasSubstr("[-86.9,38.4,200]"),
                         HasSubstr(R"("survey":"spring")")));
  const Yard again = imported(imported(emptyYard(), json), json);
  EXPECT_EQ(again.foreignFeatures.size(), 2u);  // not doubled
}

TEST(GeoJsonImport, SaysWhichPropertyCannotBeRead) {
  const GeoJsonImport result = import(
      emptyYard(),
      collection(square(R"({"kind":"building","name":"Shed","eave_m":"high","roof":"dome"})")));
  EXPECT_THAT(result.warnings,
              testing::UnorderedElementsAre(
                  AllOf(HasSubstr("Feature 1 (building Shed): eave_m"), HasSubstr("a number")),
                  AllOf(HasSubstr("roof"), HasSubstr("dome"))));
  EXPECT_EQ(result.edit.changes.size(), 1u);
}

struct BadFeature {
  const char* geometry;
  const char* reason;
};
class LeftOut : public testing::TestWithParam<BadFeature> {};

TEST_P(LeftOut, WithTheReasonAndTheRestIsKept) {
  const std::string bad = R"({"type":"Feature","properties":{"kind":"bed"},"geometry":)" +
                          std::string(GetParam().geometry) + "}";
  const GeoJsonImport result =
      import(emptyYard(), collection(bad + "," + square(R"({"kind":"bed"})")));
  EXPECT_THAT(result.warnings, ElementsAre(AllOf(HasSubstr("Feature 1 (bed): left out"),
                                                 HasSubstr(GetParam().reason))));
  EXPECT_EQ(result.leftOut, 1u);
  EXPECT_EQ(result.edit.changes.size(), 1u);
}
INSTANTIATE_TEST_SUITE_P(
    Geometry, LeftOut,
    testing::Values(
        BadFeature{"null", "no place"}, BadFeature{"7", "no place"},
        BadFeature{R"({"type":"Point","coordinates":[-86.9,38.4]})", "a Polygon is expected"},
        BadFeature{R"({"type":"Polygon"})", "coordinates are missing"},
        BadFeature{R"({"type":"Polygon","coordinates":[]})", "three corners"},
        BadFeature{R"({"type":"Polygon","coordinates":[[["a",38.4]]]})", "not a number"},
        BadFeature{R"({"type":"Polygon","coordinates":[[[-86.9]]]})", "not [longitude"},
        BadFeature{R"({"type":"Polygon","coordinates":[[[-86.9,98.4]]]})", "latitude 98.4"},
        BadFeature{R"({"type":"Polygon","coordinates":[[[1e300,38.4]]]})", "longitude 1e+300"},
        BadFeature{R"({"type":"Polygon","coordinates":[[[10,50],[10.1,50],[10,50.1],[10,50]]]})",
                   "km from the yard"},
        BadFeature{R"({"type":"Polygon","coordinates":[[[-86.9,38.4],[-86.8999,38.4001],)"
                   R"([-86.8999,38.4],[-86.9,38.4001],[-86.9,38.4]]]})",
                   "crosses or touches itself"}));

TEST(GeoJsonImport, ClosesAnOpenRingAndSaysSo) {
  std::string open = square(R"({"kind":"bed"})");
  open.erase(open.rfind(",[-86.9,38.4]"), std::string(",[-86.9,38.4]").size());
  const GeoJsonImport result = import(emptyYard(), collection(open));
  EXPECT_THAT(result.warnings, ElementsAre(HasSubstr("was not closed")));
  EXPECT_EQ(result.edit.changes.size(), 1u);
}

// A spike due north from the north-east corner.
TEST(GeoJsonImport, MendsABedAndSaysWhich) {
  std::string spiked = square(R"({"kind":"bed","name":"Front"})");
  spiked.insert(spiked.find(",[-86.9,38.4001]"), ",[-86.8999,38.4002],[-86.8999,38.4001]");
  const GeoJsonImport result = import(emptyYard(), collection(spiked));
  EXPECT_THAT(result.warnings,
              ElementsAre(AllOf(HasSubstr("Feature 1 (bed Front)"), HasSubstr("spike"))));
  EXPECT_EQ(result.leftOut, 0u);
  const Bed bed = only(apply(emptyYard(), result.edit).beds);
  EXPECT_EQ(bed.outline.outer.size(), 4u);
}

// Two squares that meet in a corner are two beds, and can be told apart.
TEST(GeoJsonImport, PartsABedThatTouchesItself) {
  const std::string two =
      R"({"type":"Feature","properties":{"kind":"bed","name":"Front"},"geometry":{"type":"Polygon",)"
      R"("coordinates":[[[-86.9,38.4],[-86.8999,38.4],[-86.8999,38.4001],[-86.8998,38.4001],)"
      R"([-86.8998,38.4002],[-86.8999,38.4002],[-86.8999,38.4001],[-86.9,38.4001],[-86.9,38.4]]]}})";
  const GeoJsonImport result = import(emptyYard(), collection(two));
  EXPECT_THAT(result.warnings, ElementsAre(HasSubstr("parted"), HasSubstr("2 pieces")));
  const Yard yard = apply(emptyYard(), result.edit);
  std::vector<std::string> names;
  for (const Bed& bed : yard.beds) names.push_back(bed.name);
  EXPECT_THAT(names, testing::UnorderedElementsAre("Front", "Front 2"));
}

TEST(GeoJsonImport, SplitsAMultiPolygon) {
  const std::string two =
      R"({"type":"Feature","properties":{"kind":"paving"},"geometry":{"type":"MultiPolygon",)"
      R"("coordinates":[[[[-86.9,38.4],[-86.8999,38.4],[-86.8999,38.4001],[-86.9,38.4]]],)"
      R"([[[-86.91,38.4],[-86.9099,38.4],[-86.9099,38.4001],[-86.91,38.4]]]]}})";
  EXPECT_EQ(imported(emptyYard(), collection(two)).pavings.size(), 2u);
  EXPECT_EQ(imported(emptyYard(), two).pavings.size(), 2u);  // a feature by itself will do
}

TEST(GeoJsonImport, RefusesWhatIsNotGeoJson) {
  const std::string deep = std::string(100000, '[') + std::string(100000, ']');
  for (const std::string& text :
       {std::string(""), std::string("lot"), std::string("[]"), std::string("{}"),
        std::string(R"({"type":"Topology"})"), std::string(R"({"type":"FeatureCollection"})"),
        std::string(R"({"type":"FeatureCollection","features":{}})"),
        std::string("{\"type\":\"Feature\xFF\"}"), std::string(R"({"a":1e999})"),
        std::string(R"({"a":NaN})"), deep}) {
    try {
      (void)import(emptyYard(), text);
      ADD_FAILURE() << text.substr(0, 60);
    } catch (const FormatError& error) {
      EXPECT_THAT(error.what(), HasSubstr("site.geojson"));
    }
  }
}

TEST(GeoJsonExport, KeepsTheRules) {
  Yard yard = test::YardBuilder()
                  .bed("Front", "POLYGON((0 0,6 0,6 3,0 3,0 0),(2 1,2 2,3 2,3 1,2 1))")
                  .drift("Monarda fistulosa", test::row(3, 0.4, {0.5, 0.5}))
                  .wall("Wall", {{0, -1}, {6, -1}}, 0.2)
                  .tree("Oak", {8, 2}, 0.3)
                  .build();
  Bed turned = *yard.beds.begin();  // clockwise, to see that writing sets it right
  std::reverse(turned.outline.outer.begin(), turned.outline.outer.end());
  std::reverse(turned.outline.holes[0].begin(), turned.outline.holes[0].end());
  yard.beds = yard.beds.with(turned);
  EXPECT_THAT(test::brokenGeoJsonRules(yardToGeoJson(yard)), IsEmpty());
}

}  // namespace
}  // namespace tussock
