// SPDX-License-Identifier: MIT
#include <QLineEdit>

#include "core/edit/draft.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class DrawingTools : public WindowTest {
 protected:
  // Shift frees the pointer from snapping, so that corners lie where the test says.
  void draw(const std::vector<Point>& corners) {
    for (const Point p : corners) click(p, Qt::ShiftModifier);
  }
  static void expectNear(Point a, Point b) {
    EXPECT_NEAR(a.x, b.x, 0.011);  // a pixel at 100 pixels a metre
    EXPECT_NEAR(a.y, b.y, 0.011);
  }
};

const std::vector<Point> kSquare{{0, 0}, {3, 0}, {3, 2}, {0, 2}};

TEST_F(DrawingTools, ABedClosedByEnterIsInTheFile) {
  start();
  trigger("toolBed");
  draw(kSquare);
  key(Qt::Key_Return);
  const Yard file = inFile();
  ASSERT_EQ(file.beds.size(), 1u);
  const Bed& bed = *file.beds.begin();
  EXPECT_EQ(bed.name, "Bed 1");
  EXPECT_NEAR(areaOf(bed.outline).squareMetres(), 6.0, 0.1);
  EXPECT_EQ(document.selection(), std::vector{refTo(bed.id)});
}

TEST_F(DrawingTools, ABedIsClosedByClickingItsFirstCorner) {
  start();
  trigger("toolBed");
  draw(kSquare);
  click(kSquare.front());
  ASSERT_EQ(inFile().beds.size(), 1u);
  EXPECT_EQ(inFile().beds.begin()->outline.outer.size(), 4u);
}

TEST_F(DrawingTools, EscapeLeavesNothing) {
  start();
  trigger("toolBed");
  draw(kSquare);
  key(Qt::Key_Escape);
  key(Qt::Key_Return);
  EXPECT_TRUE(inFile().beds.empty());
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(DrawingTools, BackspaceTakesTheLastCornerBack) {
  start();
  trigger("toolBed");
  draw({{0, 0}, {3, 0}, {3, 2}, {-1, -1}});
  key(Qt::Key_Backspace);
  key(Qt::Key_Return);
  ASSERT_EQ(inFile().beds.size(), 1u);
  EXPECT_EQ(inFile().beds.begin()->outline.outer.size(), 3u);
}

TEST_F(DrawingTools, ATypedLengthFixesTheSide) {
  Yard feet = YardBuilder().units(UnitSystem::FeetInches).build();
  start(feet);
  trigger("toolBed");
  click({0, 0}, Qt::ShiftModifier);
  moveTo({1.0, 0.0});
  QTest::keyClicks(&canvas(), QStringLiteral("8"));
  type(QStringLiteral("' 6\""));
  click({2.0, 2.0}, Qt::ShiftModifier);
  key(Qt::Key_Return);
  ASSERT_EQ(inFile().beds.size(), 1u);
  const Ring ring = inFile().beds.begin()->outline.outer;
  ASSERT_EQ(ring.size(), 3u);
  EXPECT_NEAR(distance(ring[0], ring[1]), 8.5 * 0.3048, 1e-9);
}

TEST_F(DrawingTools, WhatIsNoLengthIsAskedAgain) {
  start();
  trigger("toolBed");
  click({0, 0}, Qt::ShiftModifier);
  moveTo({1.0, 0.0});
  QTest::keyClicks(&canvas(), QStringLiteral("2"));
  type(QStringLiteral(" turnips"));
  EXPECT_TRUE(canvas().asking());
  QTest::keyClick(canvas().findChild<QLineEdit*>(QStringLiteral("canvasFieldText")),
                  Qt::Key_Escape);
  EXPECT_FALSE(canvas().asking());
}

TEST_F(DrawingTools, ACrossedBedIsNotTakenAndTold) {
  start();
  trigger("toolBed");
  draw({{0, 0}, {3, 2}, {3, 0}, {0, 2}});
  key(Qt::Key_Return);
  EXPECT_TRUE(inFile().beds.empty());
  EXPECT_FALSE(window->messages().words().isEmpty());
}

TEST_F(DrawingTools, AHoleIsCutIntoItsBed) {
  start(YardBuilder().bed("A", "POLYGON((0 0,4 0,4 3,0 3,0 0))").build());
  trigger("toolHole");
  draw({{1, 1}, {2, 1}, {2, 2}, {1, 2}});
  key(Qt::Key_Return);
  const Bed bed = *inFile().beds.begin();
  ASSERT_EQ(bed.outline.holes.size(), 1u);
  EXPECT_NEAR(areaOf(bed.outline).squareMetres(), 11.0, 0.05);
}

TEST_F(DrawingTools, AHoleOutsideEveryBedIsNotTaken) {
  start(YardBuilder().bed("A", "POLYGON((0 0,1 0,1 1,0 1,0 0))").build());
  trigger("toolHole");
  draw({{2, 1}, {3, 1}, {3, 2}});
  key(Qt::Key_Return);
  EXPECT_TRUE(inFile().beds.begin()->outline.holes.empty());
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(DrawingTools, BuildingPavingAndLotLine) {
  start();
  for (const char* tool : {"toolBuilding", "toolPaving", "toolLotLine"}) {
    trigger(tool);
    draw(kSquare);
    key(Qt::Key_Return);
  }
  const Yard file = inFile();
  ASSERT_EQ(file.buildings.size(), 1u);
  ASSERT_EQ(file.pavings.size(), 1u);
  ASSERT_EQ(file.lotLines.size(), 1u);
  EXPECT_EQ(undoLabel(), QStringLiteral("Draw lot line"));
}

TEST_F(DrawingTools, DrawingTheLotLineAgainReplacesIt) {
  start();
  for (const double wide : {3.0, 4.0}) {
    trigger("toolLotLine");
    draw({{0, 0}, {wide, 0}, {wide, 2}});
    key(Qt::Key_Return);
  }
  ASSERT_EQ(inFile().lotLines.size(), 1u);
  EXPECT_NEAR(boundsOf(inFile().lotLines.begin()->outline).width(), 4.0, 0.02);
}

TEST_F(DrawingTools, AHedgeIsAWayOfTheWallTool) {
  start();
  trigger("toolBarrier");
  canvas().tool()->setWay(2);
  draw({{0, 0}, {3, 0}, {3, 2}});
  key(Qt::Key_Return);
  ASSERT_EQ(inFile().barriers.size(), 1u);
  EXPECT_EQ(inFile().barriers.begin()->kind, BarrierKind::Hedge);
  EXPECT_EQ(inFile().barriers.begin()->line.size(), 3u);
}

TEST_F(DrawingTools, ATreeIsPressedAtItsTrunkAndDraggedToItsRim) {
  start();
  trigger("toolTree");
  drag({1, 1}, {3.5, 1});
  ASSERT_EQ(inFile().trees.size(), 1u);
  expectNear(inFile().trees.begin()->at, {1, 1});
  EXPECT_NEAR(inFile().trees.begin()->crownRadius.metres(), 2.5, 0.02);
}

TEST_F(DrawingTools, ATreeIsInLeafInItsOwnSummer) {
  start();
  const auto leaves = [this](double latitude, Point trunk) {
    Draft draft(document.yard());
    Settings settings = document.yard().settings;
    settings.latitude = Angle::degrees(latitude);
    draft.put(std::move(settings));
    document.commit(draft.finish("Move the yard"));
    trigger("toolTree");
    drag(trunk, trunk + Point{1.5, 0.0});
    const Yard yard = inFile();
    const Tree& newest =
        *std::max_element(yard.trees.begin(), yard.trees.end(),
                          [](const Tree& a, const Tree& b) { return a.id.value() < b.id.value(); });
    return formatMonthDay(newest.leafOn) + " " + formatMonthDay(newest.leafOff);
  };
  EXPECT_EQ(leaves(42.0, {-3, 1}), "04-20 11-01");
  EXPECT_EQ(leaves(-35.0, {3, 1}), "10-20 05-01");
}

TEST_F(DrawingTools, SteppingPlacesAndWaterPointsAreClicked) {
  start();
  trigger("toolStep");
  click({1, 1});
  click({1.5, 1});
  trigger("toolWater");
  click({0, 0});
  ASSERT_EQ(inFile().steppingPlaces.size(), 2u);
  ASSERT_EQ(inFile().waterPoints.size(), 1u);
  expectNear(inFile().steppingPlaces.begin()->at, {1, 1});
}

TEST_F(DrawingTools, MeasuringLeavesNothing) {
  start();
  trigger("toolMeasure");
  QSignalSpy lengths(&canvas(), &Canvas::lengthDrawn);
  click({0, 0}, Qt::ShiftModifier);
  moveTo({3, 0}, Qt::ShiftModifier);
  ASSERT_FALSE(lengths.isEmpty());
  EXPECT_EQ(lengths.last().first().toString(), QStringLiteral("3.00 m"));
  click({3, 0}, Qt::ShiftModifier);
  key(Qt::Key_Return);
  EXPECT_TRUE(undoLabel().isEmpty());
}

}  // namespace
}  // namespace tussock::test
