// SPDX-License-Identifier: MIT
#include "app/tools/select_tool.h"

#include "core/planting/edit_drift.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class Selecting : public WindowTest {
 protected:
  // Two beds side by side, a drift of five in the western one.
  void startPlanted() {
    YardBuilder builder;
    builder.bed("East", "POLYGON((2.2 0,4 0,4 3,2.2 3,2.2 0))");
    east = builder.lastBed();
    builder.bed("West", "POLYGON((0 0,1.8 0,1.8 3,0 3,0 0))");
    west = builder.lastBed();
    builder.drift("Echinacea purpurea",
                  {{0.5, 1.5}, {0.9, 1.5}, {1.3, 1.5}, {0.7, 1.15}, {1.1, 1.15}});
    drift = builder.lastDrift();
    start(builder.build());
  }
  [[nodiscard]] Drift drifted() const { return *inFile().drifts.find(drift); }

  Id<Bed> east, west;
  Id<Drift> drift;
};

TEST_F(Selecting, AClickPicksTheDriftAboveItsBed) {
  startPlanted();
  click({0.9, 1.5});
  EXPECT_EQ(document.selection(), std::vector{refTo(drift)});
  click({0.2, 2.8});
  EXPECT_EQ(document.selection(), std::vector{refTo(west)});
  click({-1.0, -1.0});
  EXPECT_TRUE(document.selection().empty());
}

TEST_F(Selecting, AClickChoosesOneOfSeveralAndADragMovesThemAll) {
  startPlanted();
  const std::vector<ObjectRef> both{refTo(drift), refTo(east)};
  document.select(both);
  const Drift before = drifted();
  drag({0.9, 1.5}, {0.9, 1.8});
  EXPECT_EQ(document.selection(), both);
  EXPECT_NEAR(drifted().plants.front().at.y, before.plants.front().at.y + 0.3, 0.02);
  click(drifted().plants.front().at);
  EXPECT_EQ(document.selection(), std::vector{refTo(drift)});
}

// Where only the lawn lies under it, a press anywhere in a crown is meant for the tree.
TEST_F(Selecting, ACrownOverTheLawnIsPickedAndDragged) {
  YardBuilder builder;
  builder.bed("Front", "POLYGON((0 0,4 0,4 2,0 2,0 0))");
  builder.tree("Oak", {2.0, 2.0}, 0.2);
  Yard yard = builder.build();
  Tree oak = *yard.trees.begin();
  oak.crownRadius = Length::metres(1.5);
  yard.trees = yard.trees.with(oak);
  start(yard);
  click({2.9, 2.6});
  EXPECT_EQ(document.selection(), std::vector{refTo(oak.id)});
  click({2.9, 1.2});
  EXPECT_EQ(document.selection(), std::vector{refTo(builder.lastBed())}) << "under the crown";
  click({3.9, 3.4});
  EXPECT_TRUE(document.selection().empty()) << "beside it";
  drag({1.3, 2.8}, {1.6, 3.2});
  EXPECT_EQ(document.selection(), std::vector{refTo(oak.id)});
  EXPECT_NEAR(inFile().trees.find(oak.id)->at.x, 2.3, 0.02);
  EXPECT_NEAR(inFile().trees.find(oak.id)->at.y, 2.4, 0.02);
  trigger("actionUndo");
  EXPECT_EQ(*inFile().trees.find(oak.id), oak);
}

// The building stands where the name of the bed in front of it is written.
TEST_F(Selecting, AClickOnTheNameOfABedPicksTheBed) {
  YardBuilder builder;
  builder.building("House", "POLYGON((0 1.02,4 1.02,4 3,0 3,0 1.02))");
  builder.bed("Front", "POLYGON((0 0,4 0,4 1,0 1,0 0))");
  start(builder.build());
  const QPoint name = pixels({2.0, 1.0}) - QPoint(0, 14);
  // Names are placed as they are painted, once zooming has come to rest.
  ASSERT_TRUE(QTest::qWaitFor([&] {
    canvas().grab();
    return canvas().namedAt(name) != nullptr;
  })) << "written above the bed";
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, name);
  EXPECT_EQ(document.selection(), std::vector{refTo(builder.lastBed())});
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, name - QPoint(0, 40));
  EXPECT_EQ(idIf<Building>(document.selection().front()).has_value(), true);
}

TEST_F(Selecting, ClickingAgainPicksTheBedUnderADriftAndTheDriftAgain) {
  startPlanted();
  for (const ObjectRef expected : {ObjectRef(refTo(drift)), refTo(west), refTo(drift)}) {
    click({0.9, 1.5});
    QTest::qWait(QApplication::doubleClickInterval() + 20);  // or it is a double click
    EXPECT_EQ(document.selection(), std::vector{expected});
  }
}

// With sedges under the drift there are two drifts over the bed.
TEST_F(Selecting, ClickingAgainGoesRoundThroughAllThatLiesThere) {
  YardBuilder builder;
  builder.bed("West", "POLYGON((0 0,4 0,4 3,0 3,0 0))");
  west = builder.lastBed();
  builder.drift("Carex pensylvanica", {{0.6, 1.4}, {1.0, 1.4}, {0.8, 1.7}});
  const Id<Drift> under = builder.lastDrift();
  builder.drift("Echinacea purpurea", {{0.5, 1.5}, {0.9, 1.5}, {1.3, 1.5}});
  drift = builder.lastDrift();
  start(builder.build());
  std::vector<ObjectRef> seen;
  for (int i = 0; i < 4; ++i) {
    click({0.9, 1.5});
    QTest::qWait(QApplication::doubleClickInterval() + 20);  // or it is a double click
    ASSERT_EQ(document.selection().size(), 1u);
    seen.push_back(document.selection().front());
  }
  EXPECT_NE(seen[0], seen[1]);
  for (const ObjectRef one : {seen[0], seen[1]})
    EXPECT_TRUE(one == ObjectRef(refTo(drift)) || one == ObjectRef(refTo(under)));
  EXPECT_EQ(seen[2], ObjectRef(refTo(west))) << "the bed, under both";
  EXPECT_EQ(seen[3], seen[0]) << "and round again";
}

TEST_F(Selecting, ADragMovesADriftIntoTheOtherBed) {
  startPlanted();
  const auto before = positionsOf(drifted());
  drag({0.9, 1.5}, {3.1, 1.5});
  EXPECT_EQ(drifted().bed, east);
  EXPECT_NEAR(positionsOf(drifted())[0].x - before[0].x, 2.2, 0.02);
  EXPECT_EQ(undoLabel(), QStringLiteral("Move drift"));
  trigger("actionUndo");
  EXPECT_EQ(drifted().bed, west);
  EXPECT_EQ(positionsOf(drifted()), before);
}

TEST_F(Selecting, EscapeDuringADragLeavesNothing) {
  startPlanted();
  press({0.9, 1.5});
  moveTo({2.0, 1.5});
  key(Qt::Key_Escape);
  release({2.0, 1.5});
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(Selecting, ABedTakesItsDriftsAlong) {
  startPlanted();
  const auto before = positionsOf(drifted());
  drag({0.2, 2.8}, {0.2, 2.3});
  EXPECT_NEAR(positionsOf(drifted())[0].y - before[0].y, -0.5, 0.02);
  EXPECT_NEAR(boundsOf(inFile().beds.find(west)->outline).high.y, 2.5, 0.02);
}

TEST_F(Selecting, DeletingABedWithDriftsIsOneUndo) {
  startPlanted();
  click({0.2, 2.8});
  key(Qt::Key_Delete);
  EXPECT_EQ(inFile().beds.size(), 1u);
  EXPECT_TRUE(inFile().drifts.empty());
  EXPECT_TRUE(undoLabel().contains(QStringLiteral("with 1 drift"))) << undoLabel().toStdString();
  trigger("actionUndo");
  EXPECT_EQ(inFile().beds.size(), 2u);
  EXPECT_EQ(inFile().drifts.size(), 1u);
}

TEST_F(Selecting, PlusAndMinusStepTheCount) {
  startPlanted();
  click({0.9, 1.5});
  const auto ids = [this] {
    std::set<Id<Plant>> all;
    for (const Plant& plant : drifted().plants) all.insert(plant.id);
    return all;
  };
  const auto before = ids();
  key(Qt::Key_Plus);
  EXPECT_EQ(drifted().plants.size(), 7u);
  const auto grown = ids();
  EXPECT_TRUE(std::includes(grown.begin(), grown.end(), before.begin(), before.end()));
  key(Qt::Key_Minus);
  key(Qt::Key_Minus);
  EXPECT_EQ(drifted().plants.size(), 3u);
}

TEST_F(Selecting, RTurnsTheDriftAboutItsMiddle) {
  startPlanted();
  click({0.9, 1.5});
  const Point middle = middleOf(drifted());
  const double axis = drifted().axis.degrees();
  key(Qt::Key_R);
  EXPECT_NEAR(drifted().axis.degrees() - axis, -15.0, 1e-9);
  EXPECT_NEAR(distance(middleOf(drifted()), middle), 0.0, 1e-9);
}

TEST_F(Selecting, AltAndDragNudgesOnePlant) {
  startPlanted();
  drag({0.5, 1.5}, {0.4, 1.7}, Qt::AltModifier);
  const auto places = positionsOf(drifted());
  EXPECT_NEAR(places[0].x, 0.4, 0.02);
  EXPECT_NEAR(places[0].y, 1.7, 0.02);
  EXPECT_EQ(places[1], (Point{0.9, 1.5}));
}

TEST_F(Selecting, ArrowKeysWithinASecondAreOneEdit) {
  startPlanted();
  click({0.9, 1.5});
  const auto before = positionsOf(drifted());
  for (int i = 0; i < 5; ++i) key(Qt::Key_Right);
  EXPECT_TRUE(undoLabel().isEmpty());
  QTRY_VERIFY_WITH_TIMEOUT(!undoLabel().isEmpty(), 5000);
  EXPECT_NEAR(positionsOf(drifted())[0].x - before[0].x, 0.10, 1e-9);
  trigger("actionUndo");
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(Selecting, ACornerIsDraggedAndASideGetsANewOne) {
  startPlanted();
  click({0.2, 2.8});
  drag({0, 3}, {-0.5, 3.2}, Qt::ShiftModifier);
  EXPECT_NEAR(boundsOf(inFile().beds.find(west)->outline).high.y, 3.2, 0.02);
  drag({0.9, 0}, {0.9, -0.4}, Qt::ShiftModifier);
  EXPECT_EQ(inFile().beds.find(west)->outline.outer.size(), 5u);
  EXPECT_NEAR(boundsOf(inFile().beds.find(west)->outline).low.y, -0.4, 0.02);
}

TEST_F(Selecting, DeleteTakesTheActiveCornerOnly) {
  startPlanted();
  click({0.2, 2.8});
  click({0, 3});
  key(Qt::Key_Delete);
  ASSERT_TRUE(inFile().beds.find(west));
  EXPECT_EQ(inFile().beds.find(west)->outline.outer.size(), 3u);
}

TEST_F(Selecting, ARubberBandTakesWhatLiesWithin) {
  startPlanted();
  drag({-0.4, -0.4}, {2.0, 3.4});
  EXPECT_EQ(document.selection().size(), 2u);
}

}  // namespace
}  // namespace tussock::test
