// SPDX-License-Identifier: MIT
#include "core/planting/fill_regrow.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/checks/registry.h"
#include "core/edit/draft.h"
#include "core/geometry/lattice.h"
#include "core/planting/one_piece.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

FillKind kindNamed(const char* name) {
  return kindsOf({test::shippedFacts().find(name)}, Settings()).front();
}

double takenBy(const Drift& drift) {
  return static_cast<double>(drift.plants.size()) * triangularGround(drift.spacing).squareMetres();
}

// Each drift of a filled bed in turn, as plants of other spacings: by the checks no placing rule is
// broken by it.
TEST(Regrow, TakesTheSameGroundByTheRules) {
  const test::Filled bed = test::filledBed("POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))");
  int made = 0;
  for (const Drift& drift : bed.after.drifts) {
    if (drift.layer != Layer::Main || drift.plants.size() < 5) continue;
    for (const char* name : {"Allium cernuum", "Monarda fistulosa", "Baptisia alba"}) {
      const auto next = regrownAs(bed.after, drift, kindNamed(name));
      if (!next) continue;
      ++made;
      EXPECT_EQ(next->species, name);
      EXPECT_EQ(next->plants.size() % 2, 1u);
      EXPECT_TRUE(inOnePiece(positionsOf(*next), next->spacing));
      EXPECT_LE(std::abs(takenBy(*next) - takenBy(drift)),
                2.0 * triangularGround(next->spacing).squareMetres());
      test::Filled with = bed;
      Draft draft(bed.after);
      draft.put(*next);
      with.after = draft.yard();
      EXPECT_EQ(with.broken(), 0) << drift.species << " as " << name;
    }
  }
  EXPECT_GT(made, 0);
}

TEST(Regrow, LeavesAloneWhatWouldStandMuchWider) {
  const test::Filled bed = test::filledBed("POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))");
  const FillKind shrub = kindNamed("Lindera benzoin");
  for (const Drift& drift : bed.after.drifts)
    if (shrub.spacing > 2.0 * drift.spacing.metres()) {
      EXPECT_FALSE(regrownAs(bed.after, drift, shrub).has_value());
    }
}

}  // namespace
}  // namespace tussock
