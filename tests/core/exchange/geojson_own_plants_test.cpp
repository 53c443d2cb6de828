// SPDX-License-Identifier: MIT
// What a yard knows of a species of its own goes out with it and comes back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/catalog/own_plants.h"
#include "core/edit/draft.h"
#include "core/exchange/geojson.h"
#include "tests/support/geojson_rules.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const std::vector<OwnFact> kRose{{"family", "Rosaceae"},  {"height_max_cm", "120"},
                                 {"height_min_cm", "90"}, {"layer_form", "shrub"},
                                 {"moisture", "medium"},  {"spacing_cm", "80"},
                                 {"spread_cm", "80"},     {"sun", "full"}};

Yard withOwn(const std::string& name, std::vector<OwnFact> facts) {
  Draft draft(test::YardBuilder().build());
  draft.put(OwnSpecies{draft.yard().ownSpecies.empty() ? Id<OwnSpecies>(900) : Id<OwnSpecies>(901),
                       name, std::move(facts)});
  return draft.yard();
}

GeoJsonImport importInto(const Yard& yard, const std::string& json) {
  IdSource ids(2000);
  return importGeoJson(yard, test::tinyCatalogue(), json, "site.geojson", ids);
}

TEST(GeoJsonOwnPlants, ComeBackAsTheyWere) {
  const std::string json = yardToGeoJson(withOwn("Rosa gardeniana", kRose));
  EXPECT_THAT(test::brokenGeoJsonRules(json), IsEmpty());
  const Yard empty = test::YardBuilder().build();
  const GeoJsonImport read = importInto(empty, json);
  EXPECT_THAT(read.warnings, IsEmpty());
  const Yard back = apply(empty, read.edit);
  const OwnSpecies* own = findOwn(back, "Rosa gardeniana");
  ASSERT_NE(own, nullptr);
  EXPECT_EQ(own->facts, kRose);
  const auto merged = mergePlants({test::tinyCatalogue(), {}, back});
  EXPECT_NEAR(merged.catalogue.find("Rosa gardeniana")->spacing.metres(), 0.8, 1e-12);
}

TEST(GeoJsonOwnPlants, AValueOverAPublishedOneComesBackAlone) {
  const Yard empty = test::YardBuilder().build();
  const Yard back = apply(
      empty,
      importInto(empty, yardToGeoJson(withOwn(test::kBergamot, {{"spacing_cm", "66"}}))).edit);
  ASSERT_NE(findOwn(back, test::kBergamot), nullptr);
  EXPECT_THAT(findOwn(back, test::kBergamot)->facts, ElementsAre(OwnFact{"spacing_cm", "66"}));
}

// Importing adds and changes nothing that is there.
TEST(GeoJsonOwnPlants, ValuesThatTheYardHasStayAndItIsTold) {
  const std::string json = yardToGeoJson(withOwn(test::kBergamot, {{"spacing_cm", "66"}}));
  const Yard mine = withOwn(test::kBergamot, {{"spacing_cm", "77"}});
  const GeoJsonImport read = importInto(mine, json);
  EXPECT_TRUE(read.edit.empty());
  EXPECT_EQ(read.leftOut, 1u);
  EXPECT_THAT(read.warnings,
              ElementsAre(HasSubstr("left out: this yard has its own values of Monarda")));
  EXPECT_THAT(importInto(withOwn(test::kBergamot, {{"spacing_cm", "66"}}), json).warnings,
              IsEmpty())
      << "the same again";
}

TEST(GeoJsonOwnPlants, WhatCannotBeUsedIsKeptAsideAndWrittenBack) {
  const std::string json = yardToGeoJson(withOwn("Rosa gardeniana", {{"spacing_cm", "wide"}}));
  const Yard empty = test::YardBuilder().build();
  const GeoJsonImport read = importInto(empty, json);
  EXPECT_THAT(read.warnings, ElementsAre(HasSubstr("kept aside, for it cannot be used")));
  const Yard back = apply(empty, read.edit);
  EXPECT_EQ(findOwn(back, "Rosa gardeniana"), nullptr);
  EXPECT_EQ(nlohmann::json::parse(yardToGeoJson(back)), nlohmann::json::parse(json));
}

std::string withSpecies(const std::string& species, const std::string& facts) {
  return R"({"type":"FeatureCollection","features":[{"type":"Feature","geometry":null,)"
         R"("properties":{"kind":"species","species":")" +
         species + R"(","facts":)" + facts + "}}]}";
}

struct Faulty {
  const char* species;
  const char* facts;
  const char* reason;
};

// Each is refused in a table of plants, and in the window, for the same reason.
TEST(GeoJsonOwnPlants, WhatATableMayNotSayIsKeptAside) {
  for (const Faulty& one :
       {Faulty{test::kBergamot, R"({"family":"Poaceae"})", "Lamiaceae, the family of Monarda"},
        {test::kBergamot, R"({"usda_symbol":"symbol"})", "a symbol of USDA PLANTS"},
        {test::kBergamot, R"({"native_states":"IA XX"})", "XX is none"},
        {test::kBergamot, R"({"botanical_name":"Hack hack","spacing_cm":30})",
         "Hack hack among its \"facts\""},
        {test::kBergamot, "{}", "its \"facts\" say nothing"},
        {test::kBergamot, R"({"spacing_cm":"  "})", "its \"facts\" say nothing"},
        {"Monarda", R"({"spacing_cm":30})", "'Monarda' is not a genus with a species"}}) {
    const std::string json = withSpecies(one.species, one.facts);
    const Yard empty = test::YardBuilder().build();
    const GeoJsonImport read = importInto(empty, json);
    EXPECT_THAT(read.warnings,
                ElementsAre(testing::AllOf(HasSubstr("kept aside"), HasSubstr(one.reason))));
    const Yard back = apply(empty, read.edit);
    EXPECT_TRUE(back.ownSpecies.empty()) << one.facts;
    EXPECT_EQ(nlohmann::json::parse(yardToGeoJson(back)), nlohmann::json::parse(json));
  }
}

TEST(GeoJsonOwnPlants, BlanksAroundNameAndValueSayNothing) {
  const Yard empty = test::YardBuilder().build();
  const std::string json =
      withSpecies(std::string("  ") + test::kBergamot + " ", R"({"spacing_cm":" 66 "})");
  const Yard back = apply(empty, importInto(empty, json).edit);
  ASSERT_NE(findOwn(back, test::kBergamot), nullptr);
  EXPECT_THAT(findOwn(back, test::kBergamot)->facts, ElementsAre(OwnFact{"spacing_cm", "66"}));
}

// Its plants take the name too, so that they still have the values.
TEST(GeoJsonOwnPlants, ASynonymIsTakenForThePlantAndTold) {
  std::vector<Species> known = test::tinyCatalogue().species();
  for (Species& species : known)
    if (species.botanicalName == test::kBergamot) species.synonyms = {"Monarda mollis"};
  const Catalogue catalogue(std::move(known));
  const std::string json = R"({"type":"FeatureCollection","features":[
    {"type":"Feature","geometry":{"type":"Polygon","coordinates":[[[-86.9,38.4],[-86.8999,38.4],
      [-86.8999,38.4001],[-86.9,38.4001],[-86.9,38.4]]]},"properties":{"kind":"bed","name":"A"}},
    {"type":"Feature","geometry":{"type":"Point","coordinates":[-86.89995,38.40005]},
      "properties":{"kind":"plant","species":"Monarda mollis"}},
    {"type":"Feature","geometry":null,"properties":{"kind":"species","species":"Monarda mollis",
      "facts":{"genus":"Monarda","spacing_cm":66}}}]})";
  const Yard empty = test::YardBuilder().build();
  IdSource ids(2000);
  const GeoJsonImport read = importGeoJson(empty, catalogue, json, "site.geojson", ids);
  EXPECT_THAT(read.warnings,
              ElementsAre(HasSubstr("Monarda mollis is a synonym of Monarda fistulosa")));
  const Yard back = apply(empty, read.edit);
  ASSERT_NE(findOwn(back, test::kBergamot), nullptr);
  EXPECT_THAT(findOwn(back, test::kBergamot)->facts, ElementsAre(OwnFact{"spacing_cm", "66"}));
  ASSERT_EQ(back.drifts.size(), 1u);
  EXPECT_EQ(back.drifts.begin()->species, test::kBergamot);
  EXPECT_NEAR(back.drifts.begin()->spacing.metres(), 0.66, 1e-12);
}

// Spacing and layer of a plant without them are those of its species, of one's own too.
TEST(GeoJsonOwnPlants, GiveTheSpacingOfPlantsThatHaveNone) {
  const std::string json = R"({"type":"FeatureCollection","features":[
    {"type":"Feature","geometry":{"type":"Polygon","coordinates":[[[-86.9,38.4],[-86.8999,38.4],
      [-86.8999,38.4001],[-86.9,38.4001],[-86.9,38.4]]]},"properties":{"kind":"bed","name":"A"}},
    {"type":"Feature","geometry":{"type":"Point","coordinates":[-86.89995,38.40005]},
      "properties":{"kind":"plant","species":"Rosa gardeniana"}},
    {"type":"Feature","geometry":null,"properties":{"kind":"species","species":"Rosa gardeniana",
      "facts":{"family":"Rosaceae","height_max_cm":120,"height_min_cm":"90","layer_form":"shrub",
      "moisture":"medium","spacing_cm":80,"spread_cm":"80","sun":"full"}}}]})";
  const Yard empty = test::YardBuilder().build();
  const Yard back = apply(empty, importInto(empty, json).edit);
  ASSERT_EQ(back.drifts.size(), 1u);
  EXPECT_NEAR(back.drifts.begin()->spacing.metres(), 0.8, 1e-12);
}

}  // namespace
}  // namespace tussock
