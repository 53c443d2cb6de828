// SPDX-License-Identifier: MIT
// What goes into the gaps of a bed without a plant list.
#include "core/planting/fill_gaps.h"

#include <gtest/gtest.h>

#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

// A filled bed out of which a piece has been cleared.
TEST(FillGaps, TakesTheSpeciesThatStandThereFirst) {
  const test::Filled whole = test::filledBed("POLYGON ((0 0, 10 0, 10 5, 0 5, 0 0))");
  Yard yard = whole.after;
  const Id<Bed> bed = yard.beds.begin()->id;
  for (const Drift& drift : whole.after.drifts) {
    const bool cleared =
        std::any_of(drift.plants.begin(), drift.plants.end(), [](const Plant& one) {
          return distance(one.at, {5.0, 2.5}) < 1.0;
        });
    if (cleared) yard.drifts = yard.drifts.without(drift.id);
  }
  const std::set<std::string> standing = speciesIn(yard, bed);
  ASSERT_GE(standing.size(), 6u);
  FillRequest request;
  request.what = FillWhat::EmptyPart;
  const test::Filled gaps = test::filled(yard, request);
  ASSERT_GT(gaps.result.planted, 9);
  EXPECT_EQ(gaps.broken(), 0);
  std::set<std::string> newcomers = speciesIn(gaps.after, bed);
  const std::size_t all = newcomers.size();
  for (const std::string& species : standing) newcomers.erase(species);
  EXPECT_LE(newcomers.size(), 4u) << "of " << all;
}

}  // namespace
}  // namespace tussock
