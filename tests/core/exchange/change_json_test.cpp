// SPDX-License-Identifier: MIT
#include "core/exchange/change_json.h"

#include <cmath>
#include <functional>
#include <limits>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/support/random_yard.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::HasSubstr;

ChangeSet adding(Object object) {
  return {"Add", {{std::nullopt, std::move(object)}}};
}

Tree someTree() {
  Tree tree;
  tree.id = Id<Tree>(7);
  tree.name = "Bur oak";
  tree.at = {0.1, -2.5};
  return tree;
}

std::string whyRefused(const std::string& json) {
  try {
    (void)changeSetFromJson(json);
  } catch (const FormatError& error) {
    return error.what();
  }
  return "taken";
}

// The tree's change set with one thing about it changed.
std::string withTree(const std::function<void(nlohmann::json& after)>& spoil) {
  auto json = nlohmann::json::parse(changeSetToJson(adding(someTree())));
  spoil(json["changes"][0]["after"]);
  return json.dump();
}

TEST(ChangeJson, ReadsBackEqualForRandomYards) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    test::Random random(seed);
    const Yard first = test::randomYard(random);
    const Yard second = test::randomNext(first, random);
    for (const ChangeSet& edit : {difference(Yard{}, first, "Ä \"first\""),
                                  difference(first, second, ""), difference(second, {}, "Clear")})
      EXPECT_EQ(changeSetFromJson(changeSetToJson(edit)), edit);
  }
}

TEST(ChangeJson, KeepsEveryBitOfANumber) {
  for (const double x : {0.1, 1.0 / 3.0, 5e-324, 1.7976931348623157e308, -0.0, 123456789.123456789,
                         std::nextafter(1.0, 2.0)}) {
    Tree tree = someTree();
    tree.at = {x, -x};
    EXPECT_EQ(changeSetFromJson(changeSetToJson(adding(tree))), adding(tree)) << x;
  }
}

TEST(ChangeJson, WritesFieldsInReadableForms) {
  Tree tree = someTree();
  tree.crown = CrownShape::Cone;
  const std::string json = changeSetToJson(adding(tree));
  EXPECT_THAT(json, AllOf(HasSubstr(R"("kind":"tree","id":7,"after":{"name":"Bur oak")"),
                          HasSubstr(R"("at":[0.1,-2.5])"), HasSubstr(R"("crown":"cone")"),
                          HasSubstr(R"("leaf_on":"04-20")"), HasSubstr(R"("evergreen":false)")));
}

TEST(ChangeJson, WritesPlantsAsTriples) {
  Drift drift;
  drift.id = Id<Drift>(9);
  drift.plants = {{Id<Plant>(10), {1.5, 2.0}}, {Id<Plant>(11), {3.0, 4.25}}};
  EXPECT_THAT(changeSetToJson(adding(drift)),
              HasSubstr(R"("plants":[[10,1.5,2.0],[11,3.0,4.25]])"));
}

TEST(ChangeJson, RefusesNumbersThatAreNotFinite) {
  Tree tree = someTree();
  tree.height = Length::metres(std::numeric_limits<double>::quiet_NaN());
  EXPECT_THROW((void)changeSetToJson(adding(tree)), FormatError);
}

TEST(ChangeJson, RefusesTextThatIsNotUtf8) {
  Tree tree = someTree();
  tree.name = "caf\xe9";
  EXPECT_THROW((void)changeSetToJson(adding(tree)), FormatError);
}

TEST(ChangeJson, SaysWhichFieldIsMissing) {
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after.erase("crown_base_m"); })),
              AllOf(HasSubstr("tree 7"), HasSubstr("crown_base_m is missing")));
}

TEST(ChangeJson, SaysWhichFieldHasTheWrongType) {
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["height_m"] = "tall"; })),
              AllOf(HasSubstr("tree 7, field height_m"), HasSubstr("expected a number")));
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["evergreen"] = 1; })),
              AllOf(HasSubstr("field evergreen"), HasSubstr("true or false")));
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["at"] = {1}; })),
              AllOf(HasSubstr("field at"), HasSubstr("array of 2")));
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["name"] = nullptr; })),
              AllOf(HasSubstr("field name"), HasSubstr("expected text")));
}

TEST(ChangeJson, SaysWhichWordCannotBeRead) {
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["crown"] = "cube"; })),
              AllOf(HasSubstr("field crown"), HasSubstr("cube")));
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["leaf_on"] = "02-30"; })),
              AllOf(HasSubstr("field leaf_on"), HasSubstr("02-30")));
}

TEST(ChangeJson, RefusesFieldsItDoesNotKnow) {
  EXPECT_THAT(whyRefused(withTree([](auto& after) { after["height_ft"] = 3.0; })),
              AllOf(HasSubstr("tree 7"), HasSubstr("not known")));
}

class RefusesChangeSet : public testing::TestWithParam<const char*> {};

TEST_P(RefusesChangeSet, Entirely) {
  EXPECT_THROW((void)changeSetFromJson(GetParam()), FormatError);
}

INSTANTIATE_TEST_SUITE_P(
    Written, RefusesChangeSet,
    testing::Values("", "{", "[]", "null", "7", R"({"label":"a"})", R"({"label":1,"changes":[]})",
                    R"({"label":"a","changes":{}})", R"({"label":"a","changes":[],"more":1})",
                    R"({"label":"a","changes":[1]})", R"({"label":"a","changes":[{}]})",
                    R"({"label":"a","changes":[{"kind":"pond","id":1,"after":{}}]})",
                    R"({"label":"a","changes":[{"kind":"plan_code","id":1}]})",
                    R"({"label":"a","changes":[{"kind":"plan_code","id":1.5,"after":{}}]})",
                    R"({"label":"a","changes":[{"kind":"plan_code","id":1,"after":[]}]})",
                    R"({"label":"a","changes":[{"kind":"plan_code","id":1,"after":{
                       "species":"x","code":"y"},"later":{}}]})",
                    R"({"label":"a","changes":[{"kind":"plan_code","id":99999999999999999999,
                       "after":{"species":"x","code":"y"}}]})"));

TEST(ChangeJson, SpoiltTextIsRefusedOrReadButNeverMore) {
  test::Random random(3);
  const Yard yard = test::randomYard(random);
  const std::string whole = changeSetToJson(difference(Yard{}, yard, "Draw"));
  int refused = 0;
  for (int round = 0; round < 2000; ++round) {
    std::string text = whole;
    text[random() % text.size()] = static_cast<char>(random() % 256);
    text[random() % text.size()] = "{}[]\",:0-e"[random() % 10];
    try {
      (void)changeSetFromJson(text);
    } catch (const FormatError&) {
      ++refused;
    }
  }
  EXPECT_GT(refused, 1000);
}

}  // namespace
}  // namespace tussock
