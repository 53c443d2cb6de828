// SPDX-License-Identifier: MIT
#include "app/tools/size_gesture.h"

#include "app/tools/handles.h"
#include "core/edit/draft.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class Sizing : public WindowTest {
 protected:
  void startBuilt() {
    YardBuilder builder;
    builder.tree("Oak", {0.5, 0.5}, 0.3);
    builder.building("Shed", "POLYGON((2 0,4 0,4 2,2 2,2 0))");
    builder.wall("Fence", {{-1, -1}, {1, -1}}, 0.1);
    Yard yard = builder.build();
    Tree oak = *yard.trees.begin();
    oak.crownRadius = Length::metres(1.0);
    yard.trees = yard.trees.with(oak);
    Building shed = *yard.buildings.begin();
    shed.roof = Roof::Gable;
    shed.ridge = shed.eave + Length::metres(1.2);
    yard.buildings = yard.buildings.with(shed);
    start(yard);
  }
  [[nodiscard]] Tree oak() const { return *inFile().trees.begin(); }
  [[nodiscard]] Building shed() const { return *inFile().buildings.begin(); }
  // Where the handle is, in site metres.
  [[nodiscard]] Point handle(ObjectRef ref, Handles::Kind kind) {
    document.select({ref});
    for (const Handles::Handle& each : Handles(canvas()).all())
      if (each.kind == kind) return canvas().mapping().toSite(each.at);
    ADD_FAILURE() << "no such handle";
    return {};
  }
};

TEST_F(Sizing, TheArrowsOverATreeRaiseIt) {
  startBuilt();
  const Tree before = oak();
  const Point from = handle(refTo(before.id), Handles::Kind::Height);
  drag(from, from + Point{0.0, 1.5});
  EXPECT_NEAR((oak().height - before.height).metres(), 1.5, 0.051);
  EXPECT_EQ(oak().at, before.at);
  EXPECT_EQ(oak().crownBase, before.crownBase);
  EXPECT_EQ(undoLabel(), QStringLiteral("Raise tree"));
  trigger("actionUndo");
  EXPECT_EQ(oak(), before);
}

TEST_F(Sizing, TheArrowsKeepClearOfWords) {
  startBuilt();
  Tree named = oak();
  Tree above = named;
  above.id = document.ids().take<Tree>();
  above.name = "Hornbeam";
  const double over = canvas().mapping().metres(26.0 + 16.0);  // its name lies under its middle
  above.at = named.at + Point{0.0, named.crownRadius.metres() + over};
  Draft draft(yard());
  draft.put(above);
  ASSERT_TRUE(document.commit(draft.finish("Plant tree")));
  canvas().grab();
  document.select({refTo(named.id)});
  for (const Handles::Handle& each : Handles(canvas()).all())
    if (each.kind == Handles::Kind::Height) {
      EXPECT_FALSE(canvas().hasWordsIn(QRectF(each.at, each.at).adjusted(-9, -9, 9, 9)));
    }
  const QPointF usual =
      canvas().mapping().toPixels(named.at + Point{0.0, named.crownRadius.metres()}) -
      QPointF(0.0, 26.0);
  EXPECT_TRUE(canvas().hasWordsIn(QRectF(usual, usual).adjusted(-9, -9, 9, 9)))
      << "or there was nothing to keep clear of";
}

TEST_F(Sizing, HeightsComeInStepsUnlessShiftIsHeld) {
  startBuilt();
  const Point from = handle(refTo(oak().id), Handles::Kind::Height);
  drag(from, from + Point{0.0, 0.87});
  const double tenths = oak().height.metres() * 10.0;
  EXPECT_NEAR(tenths, std::round(tenths), 1e-6);
  const Tree stepped = oak();
  const Point again = handle(refTo(stepped.id), Handles::Kind::Height);
  drag(again, again + Point{0.0, 0.53}, Qt::ShiftModifier);
  EXPECT_NEAR((oak().height - stepped.height).metres(), 0.53, 0.02);
}

TEST_F(Sizing, ATreeStaysAsHighAsItsCrownBegins) {
  startBuilt();
  const Point from = handle(refTo(oak().id), Handles::Kind::Height);
  drag(from, from - Point{0.0, 20.0});
  EXPECT_EQ(oak().height, oak().crownBase);
}

TEST_F(Sizing, TheRimWidensTheCrown) {
  startBuilt();
  const Point from = handle(refTo(oak().id), Handles::Kind::Rim);
  EXPECT_NEAR(from.x, 1.5, 0.01);
  drag(from, {2.6, 0.5});
  EXPECT_NEAR(oak().crownRadius.metres(), 2.1, 0.051);
  EXPECT_EQ(undoLabel(), QStringLiteral("Change crown radius"));
}

TEST_F(Sizing, ARaisedBuildingKeepsItsRoof) {
  startBuilt();
  const Building before = shed();
  const Point from = handle(refTo(before.id), Handles::Kind::Height);
  drag(from, from + Point{0.0, 0.8});
  EXPECT_NEAR((shed().eave - before.eave).metres(), 0.8, 0.051);
  EXPECT_NEAR((shed().ridge - shed().eave).metres(), 1.2, 1e-9);
  EXPECT_EQ(shed().footprint, before.footprint);
}

TEST_F(Sizing, AFenceIsRaisedToo) {
  startBuilt();
  const Barrier before = *inFile().barriers.begin();
  const Point from = handle(refTo(before.id), Handles::Kind::Height);
  drag(from, from + Point{0.0, 0.5});
  EXPECT_NEAR((inFile().barriers.begin()->height - before.height).metres(), 0.5, 0.051);
}

TEST_F(Sizing, TheSunFollowsWhileATreeIsRaised) {
  startBuilt();
  key(Qt::Key_U);
  SunView& view = canvas().sunView();
  view.waitForMap();
  const Point from = handle(refTo(oak().id), Handles::Kind::Height);
  press(from);
  moveTo(from + Point{0.0, 1.0});
  moveTo(from + Point{0.0, 2.0});
  ASSERT_TRUE(view.previewing());
  view.waitForMap();
  EXPECT_NEAR((view.yard().trees.begin()->height - oak().height).metres(), 2.0, 0.051);
  EXPECT_EQ(hourGridOf(*computeSunMap(view.yard(), previewRequest(yard()))).hoursAt({0.5, 2.0}),
            view.grid().hoursAt({0.5, 2.0}));
  key(Qt::Key_Escape);
  release(from + Point{0.0, 2.0});
  EXPECT_FALSE(view.previewing());
  EXPECT_TRUE(undoLabel().isEmpty());
}

}  // namespace
}  // namespace tussock::test
