// SPDX-License-Identifier: MIT
#include "app/canvas/scene.h"

#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

test::YardBuilder planted() {
  test::YardBuilder builder;
  builder.bed("A", "POLYGON((0 0,4 0,4 3,0 3,0 0))");
  builder.drift("Echinacea purpurea",
                {{0.5, 1.5}, {0.9, 1.5}, {1.3, 1.5}, {0.7, 1.15}, {1.1, 1.15}});
  return builder;
}

TEST(Scene, PicksTheDriftAtEachOfItsPlantsBeforeItsBed) {
  test::YardBuilder builder = planted();
  Scene scene;
  scene.show(builder.build());
  for (const Point p : positionsOf(*builder.build().drifts.find(builder.lastDrift()))) {
    const auto found = scene.at(p, 0.01);
    ASSERT_EQ(found.size(), 2u) << p.x << ' ' << p.y;
    EXPECT_EQ(found[0]->ref(), refTo(builder.lastDrift()));
    EXPECT_EQ(found[1]->ref(), refTo(builder.lastBed()));
  }
}

TEST(Scene, FollowsAnEdit) {
  test::YardBuilder builder = planted();
  const Yard before = builder.build();
  Scene scene;
  scene.show(before);
  const ChangeSet edit = moveObjects(before, {refTo(builder.lastBed())}, {10.0, 0.0});
  const Yard after = apply(before, edit);
  scene.follow(after, edit);
  EXPECT_TRUE(scene.at({0.9, 1.5}, 0.01).empty());
  EXPECT_EQ(scene.at({10.9, 1.5}, 0.01).size(), 2u);
  scene.follow(before, inverse(edit));
  EXPECT_EQ(scene.at({0.9, 1.5}, 0.01).size(), 2u);
}

TEST(Scene, ForgetsWhatIsRemoved) {
  test::YardBuilder builder = planted();
  const Yard before = builder.build();
  Scene scene;
  scene.show(before);
  const ChangeSet edit = removeObjects(before, {refTo(builder.lastBed())});
  scene.follow(apply(before, edit), edit);
  EXPECT_TRUE(scene.at({0.9, 1.5}, 0.01).empty());
  EXPECT_EQ(scene.find(refTo(builder.lastDrift())), nullptr);
}

// The crown of a tree is 3 m wide; a bed lies under half of it.
TEST(Scene, ACrownIsMeantOverTheLawnAlone) {
  test::YardBuilder builder;
  builder.bed("A", "POLYGON((0 0,4 0,4 6,0 6,0 0))");
  builder.tree("Oak", {4.0, 3.0}, 0.3);
  Yard yard = builder.build();
  Tree oak = *yard.trees.begin();
  oak.crownRadius = Length::metres(3.0);
  Tree young = oak;
  young.id = Id<Tree>(largestId(yard) + 1);
  young.at = {6.5, 3.0};
  young.crownRadius = Length::metres(1.0);
  yard.trees = yard.trees.with(oak).with(young);
  Scene scene;
  scene.show(yard);
  const auto top = [&](Point p) {
    const auto found = scene.at(p, 0.05);
    return found.empty() ? ObjectRef{} : found.front()->ref();
  };
  EXPECT_EQ(top({3.0, 3.0}), refTo(builder.lastBed())) << "the bed lies under the crown";
  EXPECT_EQ(top({5.0, 3.0}), refTo(oak.id)) << "lawn";
  EXPECT_EQ(top({6.0, 3.3}), refTo(young.id)) << "the smaller of two";
  EXPECT_EQ(top({4.0, 3.0}), refTo(oak.id)) << "the trunk, over everything";
  EXPECT_TRUE(scene.at({8.0, 0.5}, 0.05).empty());
}

}  // namespace
}  // namespace tussock
