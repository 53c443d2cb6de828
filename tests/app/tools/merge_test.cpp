// SPDX-License-Identifier: MIT
// Two drifts picked with the mouse become one with a key.
#include "core/planting/one_piece.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class Merging : public WindowTest {
 protected:
  void startTwo() {
    YardBuilder builder;
    builder.bed("Front", "POLYGON((0 0,8 0,8 5,0 5,0 0))").viewing("S");
    builder.drift("Echinacea purpurea", row(5, 0.4, {1.0, 2.5}));
    left = builder.lastDrift();
    builder.drift("Echinacea purpurea", row(3, 0.4, {3.0, 2.5}));
    right = builder.lastDrift();
    start(builder.build());
    lookAt({4, 2.5});
    click({1.4, 2.5});
    click({3.4, 2.5}, Qt::ShiftModifier);
    ASSERT_EQ(document.selection().size(), 2u);
  }

  Id<Drift> left, right;
};

TEST_F(Merging, MakesOneDriftOfTheFirstWithAnOddCountInOnePiece) {
  startTwo();
  const Yard before = inFile();
  key(Qt::Key_J, Qt::ControlModifier);
  ASSERT_EQ(inFile().drifts.size(), 1u);
  const Drift merged = *inFile().drifts.find(left);
  EXPECT_EQ(merged.plants.size() % 2, 1u);
  EXPECT_GE(merged.plants.size(), 7u);
  EXPECT_TRUE(inOnePiece(positionsOf(merged), merged.spacing));
  EXPECT_EQ(document.selection(), std::vector{refTo(left)});
  key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(inFile().drifts, before.drifts) << "one edit";
}

TEST_F(Merging, ALockedOneIsNotMergedAndSaysSo) {
  startTwo();
  key(Qt::Key_K);
  ASSERT_TRUE(inFile().drifts.find(right)->locked);
  key(Qt::Key_J, Qt::ControlModifier);
  EXPECT_EQ(inFile().drifts.size(), 2u);
  EXPECT_FALSE(window->messages().words().isEmpty());
}

}  // namespace
}  // namespace tussock::test
