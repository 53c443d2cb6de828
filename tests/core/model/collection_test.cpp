// SPDX-License-Identifier: MIT
#include "core/model/collection.h"

#include <gtest/gtest.h>

#include "core/model/site.h"

namespace tussock {
namespace {

WaterPoint water(std::int64_t id, const char* name) {
  return {Id<WaterPoint>(id), name, {}, {}};
}

std::vector<std::int64_t> idsOf(const Collection<WaterPoint>& collection) {
  std::vector<std::int64_t> result;
  for (const WaterPoint& w : collection) result.push_back(w.id.value());
  return result;
}

TEST(Collection, KeepsOrderOfIdsHoweverFilled) {
  const Collection<WaterPoint> c({water(5, "a"), water(2, "b"), water(9, "c")});
  EXPECT_EQ(idsOf(c), (std::vector<std::int64_t>{2, 5, 9}));
  EXPECT_EQ(idsOf(c.with(water(7, "d"))), (std::vector<std::int64_t>{2, 5, 7, 9}));
}

TEST(Collection, OfTwoWithOneIdTheLaterStays) {
  const Collection<WaterPoint> c({water(1, "old"), water(3, "x"), water(1, "new")});
  ASSERT_EQ(c.size(), 2u);
  EXPECT_EQ(c.find(Id<WaterPoint>(1))->name, "new");
}

TEST(Collection, IsNotChangedByItsSuccessors) {
  const Collection<WaterPoint> before({water(1, "tap")});
  const auto after = before.with(water(1, "hydrant")).with(water(2, "butt"));
  EXPECT_EQ(before.find(Id<WaterPoint>(1))->name, "tap");
  EXPECT_EQ(after.find(Id<WaterPoint>(1))->name, "hydrant");
  EXPECT_EQ(before.find(Id<WaterPoint>(2)), nullptr);
  EXPECT_EQ(idsOf(after.without(Id<WaterPoint>(1))), std::vector<std::int64_t>{2});
}

TEST(Collection, ComparesByContent) {
  const Collection<WaterPoint> a({water(1, "tap")});
  const Collection<WaterPoint> b({water(1, "tap")});
  EXPECT_EQ(a, b);
  EXPECT_FALSE(a.shares(b));
  EXPECT_NE(a, b.with(water(2, "butt")));
  EXPECT_NE(a, b.with(water(1, "hose")));
}

}  // namespace
}  // namespace tussock
