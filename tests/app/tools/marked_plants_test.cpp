// SPDX-License-Identifier: MIT
// Plants marked, a corner in hand and what is selected do not outlast what an undo takes away.
#include <algorithm>

#include "tests/app/tools/planted_drifts.h"

namespace tussock::test {
namespace {

class MarkedPlants : public PlantedDrifts {
 protected:
  // Those of the row from 0.6 to 1.0 m: two of its three.
  void markTwo() {
    startPlanted();
    click({1.0, 0.8});
    drag({0.45, 0.6}, {1.15, 1.0}, Qt::AltModifier | Qt::ShiftModifier);
  }
  [[nodiscard]] std::vector<Plant> plants() const { return inFile().drifts.find(small)->plants; }
  // How many move when this one is dragged.
  [[nodiscard]] int movedBy(Id<Plant> plant, Point by) {
    const std::vector<Plant> before = plants();
    const auto at = std::find_if(before.begin(), before.end(),
                                 [&](const Plant& each) { return each.id == plant; });
    if (at == before.end()) return 0;
    drag(at->at, at->at + by, Qt::AltModifier);
    int moved = 0;
    for (const Plant& after : plants())
      moved += std::find(before.begin(), before.end(), after) == before.end() ? 1 : 0;
    return moved;
  }
};

TEST_F(MarkedPlants, StayMarkedAfterTheyWereMoved) {
  markTwo();
  const Id<Plant> first = plants().front().id;
  EXPECT_EQ(movedBy(first, {0.1, 0.5}), 2);
  EXPECT_EQ(movedBy(first, {0.1, 0.3}), 2);
}

TEST_F(MarkedPlants, AreNoLongerMarkedOnceTheirMoveIsUndone) {
  markTwo();
  const Id<Plant> first = plants().front().id;
  EXPECT_EQ(movedBy(first, {0.1, 0.5}), 2);
  const QImage marked = canvas().grab().toImage();
  trigger("actionUndo");
  trigger("actionRedo");
  EXPECT_NE(canvas().grab().toImage(), marked) << "their rings are gone";
  EXPECT_EQ(movedBy(first, {0.1, 0.3}), 1);
}

TEST_F(MarkedPlants, ThatAnUndoTookAwayComeBackUnmarked) {
  startPlanted();
  click({1.0, 0.8});
  key(Qt::Key_Plus);
  const std::vector<Plant> five = plants();
  ASSERT_EQ(five.size(), 5u);
  drag({0.05, 0.05}, {3.0, 2.2}, Qt::AltModifier | Qt::ShiftModifier);
  trigger("actionUndo");
  ASSERT_EQ(plants().size(), 3u);
  trigger("actionRedo");
  ASSERT_EQ(plants().size(), 5u);
  EXPECT_EQ(movedBy(five.back().id, {0.1, 0.1}), 1);
}

// Fewer plants: those taken out are marked no more, the others are.
TEST_F(MarkedPlants, OfThoseMarkedTheOnesLeftStayMarked) {
  startPlanted();
  click({1.0, 0.8});
  key(Qt::Key_Plus);
  drag({0.05, 0.05}, {3.0, 2.2}, Qt::AltModifier | Qt::ShiftModifier);
  key(Qt::Key_Minus);
  const std::vector<Plant> three = plants();
  ASSERT_EQ(three.size(), 3u);
  EXPECT_EQ(movedBy(three.front().id, {0.1, 0.5}), 3);
  EXPECT_EQ(undoLabel(), QStringLiteral("Move 3 plants"));
}

// Corners are numbered: with one fewer the number in hand is no corner, or another.
TEST_F(MarkedPlants, ACornerInHandLastsWhileNoneComeOrGo) {
  startPlanted();
  click({7.5, 4.5});
  const Id<Bed> bed = inFile().beds.begin()->id;
  const auto corners = [&] { return inFile().beds.find(bed)->outline.outer; };
  ASSERT_EQ(document.selection(), std::vector{refTo(bed)});
  drag({8.0, 2.5}, {7.6, 2.5});  // a side, which takes a new corner
  drag({0.0, 5.0}, {0.3, 4.8});
  ASSERT_EQ(corners().size(), 5u);
  trigger("actionUndo");
  trigger("actionDelete");
  EXPECT_EQ(corners().size(), 4u) << "the corner dragged, which is back where it was";
  const Ring fewer = corners();
  EXPECT_EQ(std::count(fewer.begin(), fewer.end(), Point{0.0, 5.0}), 0);
  trigger("actionUndo");
  drag({0.0, 5.0}, {0.3, 4.8});
  trigger("actionUndo");
  trigger("actionUndo");
  ASSERT_EQ(corners().size(), 4u);
  trigger("actionDelete");
  EXPECT_TRUE(inFile().beds.empty()) << "what is selected, not a corner of it";
}

// All that was selected by then, and of that what is still there.
TEST_F(MarkedPlants, TheSelectionHoldsOnlyWhatIsThere) {
  startPlanted();
  click({1.0, 0.8});
  trigger("actionDelete");
  ASSERT_EQ(inFile().drifts.size(), 1u);
  trigger("actionSelectAll");
  ASSERT_EQ(document.selection(), std::vector{refTo(drift)});
  trigger("actionUndo");
  EXPECT_EQ(document.selection(), std::vector{refTo(drift)});
  trigger("actionSelectAll");
  EXPECT_EQ(document.selection().size(), 2u);
  trigger("actionRedo");
  EXPECT_EQ(document.selection(), std::vector{refTo(drift)});
  trigger("actionUndo");
  EXPECT_EQ(document.selection(), std::vector{refTo(drift)}) << "not what is back again";
}

}  // namespace
}  // namespace tussock::test
