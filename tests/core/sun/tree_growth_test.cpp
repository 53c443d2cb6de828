// SPDX-License-Identifier: MIT
#include "core/sun/tree_growth.h"

#include <cmath>

#include <gtest/gtest.h>

namespace tussock {
namespace {

Tree young() {
  Tree tree;
  tree.id = Id<Tree>(2);
  tree.height = Length::metres(4);
  tree.crownRadius = Length::metres(1.5);
  tree.crownBase = Length::metres(1.8);
  tree.trunkDiameter = Length::centimetres(8);
  tree.growth = Length::metres(0.4);
  return tree;
}

TEST(TreeGrowthTest, HeightGrowsYearByYearAndTheCrownWidensWithIt) {
  const Tree later = grownBy(young(), 5);
  EXPECT_NEAR(later.height.metres(), 6.0, 1e-12);
  EXPECT_NEAR(later.crownRadius.metres(), 2.25, 1e-12);
  EXPECT_NEAR(later.trunkDiameter.metres(), 0.12, 1e-12);
  EXPECT_EQ(later.crownBase, young().crownBase);
}

TEST(TreeGrowthTest, StopsAtTheMatureHeight) {
  Tree tree = young();
  tree.matureHeight = Length::metres(7);
  EXPECT_NEAR(grownBy(tree, 15).height.metres(), 7.0, 1e-12);
  tree.matureHeight = Length::metres(3);  // it stands higher already
  EXPECT_EQ(grownBy(tree, 15), tree);
}

TEST(TreeGrowthTest, NothingGrowsWithoutARateOrYears) {
  Tree still = young();
  still.growth = Length();
  EXPECT_EQ(grownBy(still, 10), still);
  for (const double years : {0.0, -3.0, static_cast<double>(NAN)})
    EXPECT_EQ(grownBy(young(), years), young()) << years;
}

TEST(TreeGrowthTest, OnlyTreesOfAYardChange) {
  Yard yard;
  yard.trees = yard.trees.with(young());
  const Yard later = grownBy(yard, 5);
  EXPECT_EQ(later.trees.find(Id<Tree>(2))->height, Length::metres(6));
  Yard back = later;
  back.trees = yard.trees;
  EXPECT_EQ(back, yard);
}

}  // namespace
}  // namespace tussock
