// SPDX-License-Identifier: MIT
// What is planted anew keeps the ground that its drift has: merged drifts, those of a full bed,
// large ones, and ovals, which are grown as ovals are.
#include "core/planting/own_form.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/planting/divide_drift.h"
#include "core/planting/one_piece.h"
#include "core/planting/reshape_drift.h"
#include "core/planting/set_out.h"
#include "tests/core/planting/filled_bed.h"
#include "tests/core/planting/kept_ground.h"
#include "tests/core/planting/random_ground.h"

namespace tussock {
namespace {

using test::shareOnGround, test::shareTaken;

class Formed : public testing::Test {
 protected:
  [[nodiscard]] const Drift& drift() const { return *yard_.drifts.find(id_); }
  void expectGroundKept(const DriftEdit& edit) {
    const Drift before = drift();
    yard_ = apply(yard_, edit.edit);
    EXPECT_GE(shareOnGround(before, drift()), 0.95);
    EXPECT_GE(shareTaken(Slope(yard_.settings), before, drift()), 0.95);
  }
  Yard yard_;
  Id<Drift> id_;
  IdSource ids_{1000};
};

// Two drifts at a right angle, made one: an L.
TEST_F(Formed, AMergedDriftKeepsItsCorner) {
  test::YardBuilder builder;
  builder.bed("Front", "POLYGON ((0 0, 9 0, 9 7, 0 7, 0 0))");
  std::vector<Point> foot, leg;
  for (int i = 0; i < 9; ++i)
    for (int j = 0; j < 3; ++j) foot.push_back({1.0 + 0.4 * i + 0.2 * (j % 2), 1.0 + 0.35 * j});
  for (int i = 0; i < 9; ++i)
    for (int j = 0; j < 3; ++j) leg.push_back({1.0 + 0.35 * j, 2.2 + 0.4 * i + 0.2 * (j % 2)});
  builder.drift("Carex", foot);
  id_ = builder.lastDrift();
  builder.drift("Carex", leg);
  yard_ = builder.build();
  const Division merged = mergeDrifts(yard_, id_, builder.lastDrift(), ids_);
  ASSERT_EQ(merged.refusal, Refusal::None);
  yard_ = apply(yard_, merged.edit);
  id_ = merged.first;
  expectGroundKept(regrowDrift(yard_, id_, ids_));
  expectGroundKept(
      reshapeDrift(yard_, id_, withSpacing(shapeOf(drift()), Length::metres(0.3)), ids_));
}

// Of thousands a few come to stand apart when they are spread: they are taken back to the rest.
TEST_F(Formed, ALargeDriftInACornerStaysWholeThere) {
  test::YardBuilder builder;
  builder.bed("Front", "POLYGON ((0 0, 40 0, 40 6, 6 6, 6 40, 0 40, 0 0))");
  GrowRequest request;
  request.bed = builder.lastBed();
  request.spacing = Length::metres(0.3);
  request.count = 4001;
  request.at = {3.0, 3.0};
  const Growth corner = growDrift(builder.build(), request);
  yard_ = test::withDrift(builder.build(), request, corner.places, ids_);
  id_ = (--yard_.drifts.end())->id;
  const DriftShape shape = withSpacing(shapeOf(drift()), Length::metres(0.4));
  expectGroundKept(reshapeDrift(yard_, id_, shape, ids_));
  EXPECT_EQ(drift().plants.size(), static_cast<std::size_t>(shape.count));
  EXPECT_TRUE(inOnePiece(positionsOf(drift()), drift().spacing));
}

// A drift in two pieces has no ground of its own to keep: it becomes one again.
TEST_F(Formed, ADriftInPiecesBecomesOne) {
  test::YardBuilder builder;
  builder.bed("Front", "POLYGON ((0 0, 9 0, 9 7, 0 7, 0 0))");
  std::vector<Point> places = test::row(4, 0.4, {1.0, 3.0});
  for (const Point p : test::row(3, 0.4, {6.0, 3.0})) places.push_back(p);
  builder.drift("Carex", places);
  id_ = builder.lastDrift();
  yard_ = apply(builder.build(), regrowDrift(builder.build(), builder.lastDrift(), ids_).edit);
  EXPECT_TRUE(inOnePiece(positionsOf(drift()), drift().spacing));
  EXPECT_LT(distance(middleOf(drift()), {4.0, 3.0}), 1.0);
}

// In a full bed each drift has the ground that the others left it.
TEST(FilledBed, ItsDriftsKeepTheirGroundAmongTheOthers) {
  const test::Filled bed = test::filledBed("POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))");
  double plants = 0.0, fitted = 0.0, kept = 0.0, taken = 0.0, drifts = 0.0;
  for (const Drift& drift : bed.after.drifts) {
    if (drift.layer != Layer::Main || drift.plants.size() < 5) continue;
    for (const double share : {0.9, 1.0, 1.1}) {
      DriftShape shape = withSpacing(shapeOf(drift), drift.spacing * share);
      IdSource ids(largestId(bed.after) + 1);
      const DriftEdit edit = share == 1.0 ? regrowDrift(bed.after, drift.id, ids)
                                          : reshapeDrift(bed.after, drift.id, shape, ids);
      test::Filled with = bed;
      with.after = apply(bed.after, edit.edit);
      EXPECT_EQ(with.broken(), 0) << drift.species << " " << share;
      const Drift& now = *with.after.drifts.find(drift.id);
      EXPECT_TRUE(share != 1.0 || edit.fitted == edit.asked) << drift.species;
      plants += edit.asked, fitted += edit.fitted, drifts += 1.0;
      kept += shareOnGround(drift, now);
      taken += shareTaken(Slope(bed.after.settings), drift, now);
    }
  }
  ASSERT_GT(drifts, 0.0);
  EXPECT_GE(fitted, 0.9 * plants);
  EXPECT_GE(kept, 0.95 * drifts);
  EXPECT_GE(taken, 0.95 * drifts);
}

// Grown as a figure and not touched: set out anew it comes to what growing it there gives.
TEST(SetOutAnew, AnOvalIsGrownAsOvalsAre) {
  test::YardBuilder builder;
  builder.bed("Front", "POLYGON ((0 0, 12 0, 12 7, 0 7, 0 0))").viewing("S");
  for (const int count : {5, 9, 13, 25, 51}) {
    GrowRequest request;
    request.bed = builder.lastBed();
    request.spacing = Length::metres(0.4);
    request.count = count;
    request.at = {6.0, 3.5};
    const Growth grown = growDrift(builder.build(), request);
    IdSource ids(1000);
    const Yard yard = test::withDrift(builder.build(), request, grown.places, ids);
    Drift drift = *(--yard.drifts.end());
    request.at = middleOf(drift);
    request.inPlaceOf = drift.id;
    EXPECT_EQ(setOut(yard, drift, request).places, growDrift(yard, request).places) << count;
  }
}

}  // namespace
}  // namespace tussock
