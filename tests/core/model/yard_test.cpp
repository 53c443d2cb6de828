// SPDX-License-Identifier: MIT
#include "core/model/yard.h"

#include <set>

#include <gtest/gtest.h>

#include "core/model/fields.h"

namespace tussock {
namespace {

template <std::size_t... I>
std::vector<std::string> kinds(std::index_sequence<I...>) {
  return {std::string(kKind<std::variant_alternative_t<I, Object>>)...};
}

TEST(Kinds, AreAllNamedAndDifferent) {
  const auto names = kinds(std::make_index_sequence<std::variant_size_v<Object>>{});
  const std::set<std::string> distinct(names.begin(), names.end());
  EXPECT_EQ(distinct.size(), std::variant_size_v<Object>);
  EXPECT_FALSE(distinct.contains(""));
}

template <std::size_t... I>
void expectCollectionsOfTheirOwn(std::index_sequence<I...>) {
  const Yard yard;
  std::set<const void*> places;
  (places.insert(&collectionOf<std::variant_alternative_t<I + 1, Object>>(yard)), ...);
  EXPECT_EQ(places.size(), sizeof...(I));
}

TEST(Yard, HoldsEveryKindInItsOwnCollection) {
  expectCollectionsOfTheirOwn(std::make_index_sequence<std::variant_size_v<Object> - 1>{});
}

TEST(Yard, FindsAnObjectByItsReference) {
  Yard yard;
  Tree tree;
  tree.id = Id<Tree>(7);
  tree.name = "street oak";
  yard.trees = yard.trees.with(tree);
  const auto found = objectAt(yard, refTo(tree.id));
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(std::get<Tree>(*found).name, "street oak");
  EXPECT_EQ(kindOf(refTo(tree.id)), "tree");
  EXPECT_FALSE(objectAt(yard, refTo(Id<Bed>(7))).has_value());
  EXPECT_FALSE(idIf<Bed>(refTo(tree.id)).has_value());
}

TEST(Yard, IsBoundedByCrownsToo) {
  Yard yard;
  Tree tree;
  tree.id = Id<Tree>(1);
  tree.at = {10, 20};
  tree.crownRadius = Length::metres(4);
  yard.trees = yard.trees.with(tree);
  EXPECT_EQ(boundsOf(yard), (Box{{6, 16}, {14, 24}}));
}

TEST(Yard, LargestIdCountsPlants) {
  Yard yard;
  Drift drift;
  drift.id = Id<Drift>(3);
  drift.plants = {{Id<Plant>(41), {}}, {Id<Plant>(12), {}}};
  yard.drifts = yard.drifts.with(drift);
  EXPECT_EQ(largestId(yard), 41);
}

TEST(Season, RunsBetweenTheFrostsOrIsAssumed) {
  using namespace std::chrono;
  Settings s;
  EXPECT_EQ(growingSeason(s), (GrowingSeason{April / 1, October / 31, true}));
  s.latitude = Angle::degrees(-35);
  EXPECT_EQ(growingSeason(s), (GrowingSeason{October / 1, April / 30, true}));
  s.lastFrost = April / 20;
  s.firstFrost = October / 18;
  EXPECT_EQ(growingSeason(s), (GrowingSeason{April / 20, October / 18, false}));
}

struct NameCollector {
  std::vector<std::string> names;
  void operator()(const char* name, const auto&) { names.emplace_back(name); }
};

template <std::size_t... I>
void expectDistinctFieldNames(std::index_sequence<I...>) {
  auto check = [](auto object) {
    NameCollector collector;
    visitFields(object, collector);
    const std::set<std::string> distinct(collector.names.begin(), collector.names.end());
    EXPECT_EQ(distinct.size(), collector.names.size()) << kKind<decltype(object)>;
    EXPECT_FALSE(distinct.contains("id"));
  };
  (check(std::variant_alternative_t<I, Object>{}), ...);
}

TEST(Fields, HaveDistinctNamesInEveryKind) {
  expectDistinctFieldNames(std::make_index_sequence<std::variant_size_v<Object>>{});
}

}  // namespace
}  // namespace tussock
