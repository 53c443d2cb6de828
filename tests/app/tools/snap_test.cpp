// SPDX-License-Identifier: MIT
#include "app/tools/snap.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

const SnapTargets kSnapSquare{{{0, 0}, {4, 0}, {4, 4}, {0, 4}},
                          {{{0, 0}, {4, 0}}, {{4, 0}, {4, 4}}, {{4, 4}, {0, 4}}, {{0, 4}, {0, 0}}}};

TEST(Snapped, ACornerIsStrongerThanAnEdge) {
  const Snap snap = snapped({3.95, 0.04}, kSnapSquare, {}, 0.1);
  EXPECT_EQ(snap.kind, SnapKind::Corner);
  EXPECT_EQ(snap.at, (Point{4, 0}));
}

TEST(Snapped, AnEdgeDrawsThePointerOntoIt) {
  const Snap snap = snapped({2.0, 0.06}, kSnapSquare, {}, 0.1);
  EXPECT_EQ(snap.kind, SnapKind::Edge);
  EXPECT_EQ(snap.at, (Point{2, 0}));
}

TEST(Snapped, NothingNearLeavesThePointerAlone) {
  const Snap snap = snapped({2.0, 2.0}, kSnapSquare, {}, 0.1);
  EXPECT_EQ(snap.kind, SnapKind::None);
  EXPECT_EQ(snap.at, (Point{2, 2}));
}

TEST(Snapped, SquareToTheLastSide) {
  // The last side climbs 3 over 4; square to it is (-3, 4) / 5.
  const Snap snap = snapped({4 - 3.03, 3 + 4.02}, {}, {{0, 0}, {4, 3}}, 0.1);
  EXPECT_EQ(snap.kind, SnapKind::RightAngle);
  EXPECT_NEAR((snap.at.x - 4) * 4 + (snap.at.y - 3) * 3, 0.0, 1e-9);
}

TEST(Snapped, AlongTheAxesOfTheSite) {
  const Snap snap = snapped({5.0, 1.05}, {}, {{1, 1}}, 0.1);
  EXPECT_EQ(snap.kind, SnapKind::Axis);
  EXPECT_EQ(snap.at, (Point{5, 1}));
}

TEST(Snapped, TheFirstCornerClosesFromThreeOn) {
  EXPECT_NE(snapped({0.05, 0}, {}, {{0, 0}, {3, 0}}, 0.1).kind, SnapKind::First);
  EXPECT_EQ(snapped({0.05, 0}, {}, {{0, 0}, {3, 0}, {3, 3}}, 0.1).kind, SnapKind::First);
}

TEST(SnapTargets, LeaveOutWhatIsBeingMoved) {
  test::YardBuilder builder;
  builder.bed("A", "POLYGON((0 0,4 0,4 4,0 4,0 0))");
  const Id<Bed> bed = builder.lastBed();
  EXPECT_EQ(snapTargets(builder.build(), {}).corners.size(), 4u);
  EXPECT_TRUE(snapTargets(builder.build(), {refTo(bed)}).corners.empty());
}

}  // namespace
}  // namespace tussock
