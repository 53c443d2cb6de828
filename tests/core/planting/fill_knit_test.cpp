// SPDX-License-Identifier: MIT
// Cells of drifts in narrow and pointed beds: that each lies beside two others is common practice.
#include "core/planting/fill_knit.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/planting/fill_spots.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

constexpr double kSpacing = 0.35;
constexpr int kRounds = 30;

Yard bedOf(std::string_view outline) {
  return test::YardBuilder().bed("Bed", outline).viewing("S").build();
}

struct SharedBed {
  explicit SharedBed(std::string_view outline)
      : yard(bedOf(outline)),
        bed(*yard.beds.begin()),
        grain(bed),
        ground(yard, bed, Layer::Main, kSpacing, cellSizeFor(bed, kSpacing)) {}

  // Even cells; then knitted if so wanted. Gives the drifts beside fewer than two others.
  int alone(std::size_t count, unsigned seed, bool knitted) const {
    Chance chance(seed);
    std::vector<DriftCell> cells;
    for (const Point middle :
         spreadMiddles(ground, count, grain.at(ground.box().centre()), 4.0, chance)) {
      DriftCell cell;
      cell.middle = middle;
      cell.lean = Angle::degrees(22);
      cell.area = ground.area() / static_cast<double>(count);
      cells.push_back(cell);
    }
    const DriftCells sharing(ground, grain, 0.5, 1.0, chance);
    const WorkWatch watch({}, std::chrono::hours(1));
    Owners owners = sharing.share(cells, kRounds, watch);
    if (knitted) knit(ground, sharing, cells, owners, chance, watch);
    std::vector<int> beside(count, 0);
    for (const auto& [a, b] : touchingCells(ground, owners)) ++beside[a], ++beside[b];
    return static_cast<int>(
        std::count_if(beside.begin(), beside.end(), [](int n) { return n < 2; }));
  }

  Yard yard;
  Bed bed;
  BedGrain grain;
  FillGround ground;
};

TEST(FillKnit, FewerDriftsLieBesideOneOtherOnly) {
  for (const std::string_view outline :
       {"POLYGON ((0 0, 8 0, 8 1, 0 1, 0 0))", "POLYGON ((0 0, 7 0, 3.5 4, 0 0))"}) {
    const SharedBed shared(outline);
    int plain = 0, knitted = 0;
    for (unsigned seed = 1; seed <= 12; ++seed) {
      const int before = shared.alone(12, seed, false), after = shared.alone(12, seed, true);
      EXPECT_LE(after, before) << outline << ", seed " << seed;
      plain += before, knitted += after;
    }
    EXPECT_GT(plain, 0) << outline;
    EXPECT_LT(2 * knitted, plain) << outline;
  }
}

TEST(FillKnit, LeavesTwoDriftsAsTheyAre) {
  const SharedBed shared("POLYGON ((0 0, 3 0, 3 1, 0 1, 0 0))");
  EXPECT_EQ(shared.alone(2, 1, true), 2);
}

}  // namespace
}  // namespace tussock
