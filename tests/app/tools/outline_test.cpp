// SPDX-License-Identifier: MIT
#include "app/tools/outline.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

const Outline kSquare{{{{0, 0}, {4, 0}, {4, 4}, {0, 4}}}, true};

TEST(Outline, ReadsBackThroughABed) {
  Bed bed;
  bed.id = Id<Bed>(3);
  const Object after = withOutline(Object(bed), kSquare);
  EXPECT_EQ(outlineOf(after), kSquare);
}

TEST(Outline, TreesAndDriftsHaveNone) {
  EXPECT_FALSE(outlineOf(Object(Tree())));
  EXPECT_FALSE(outlineOf(Object(Drift())));
}

TEST(Outline, AWallIsAnOpenLine) {
  Barrier wall;
  wall.line = {{0, 0}, {5, 0}};
  const auto outline = outlineOf(Object(wall));
  ASSERT_TRUE(outline);
  EXPECT_FALSE(outline->closed);
  EXPECT_FALSE(withoutCorner(*outline, {0, 0}));
}

TEST(Outline, ATriangleKeepsItsCorners) {
  const auto triangle = withoutCorner(kSquare, {0, 1});
  ASSERT_TRUE(triangle);
  EXPECT_EQ(triangle->rings[0].size(), 3u);
  EXPECT_FALSE(withoutCorner(*triangle, {0, 0}));
}

TEST(Outline, AHoleGoesWithItsLastThreeCorners) {
  Outline holed = kSquare;
  holed.rings.push_back({{1, 1}, {1, 2}, {2, 1}});
  const auto without = withoutCorner(holed, {1, 0});
  ASSERT_TRUE(without);
  EXPECT_EQ(*without, kSquare);
}

TEST(Outline, ACrossedShapeIsTold) {
  EXPECT_TRUE(troubleWith(kSquare).empty());
  EXPECT_FALSE(troubleWith(withCornerAt(kSquare, {0, 0}, {2, 6})).empty());
}

}  // namespace
}  // namespace tussock
