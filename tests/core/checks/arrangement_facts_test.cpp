// SPDX-License-Identifier: MIT
// What is said of one bed's planting does not hang on the other beds.
#include "core/checks/arrangement_facts.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/planting/arrangements.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

// Two beds; in each a drift of which two plants stand 0.1 m apart and nothing else is amiss but
// that nobody knows the species.
class ArrangementFactsTest : public testing::Test {
 protected:
  ArrangementFactsTest() {
    builder_.bed("One", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))");
    one_ = builder_.lastBed();
    builder_.drift("Aster", {{2.0, 2.0}, {2.1, 2.0}, {3.0, 2.0}}).spaced(0.4);
    builder_.bed("Other", "POLYGON ((0 9, 8 9, 8 13, 0 13, 0 9))");
    other_ = builder_.lastBed();
    builder_.drift("Carex", {{2.0, 11.0}, {2.1, 11.0}, {3.0, 11.0}}).spaced(0.4);
    builder_.drift("Carex", {{5.0, 11.0}, {5.1, 11.0}, {6.0, 11.0}}).spaced(0.4);
  }
  [[nodiscard]] int findingsIn(const Yard& yard, Id<Bed> bed) const {
    return arrangementFacts({yard, facts_}, bed).findings;
  }
  [[nodiscard]] int findingsInAll(const Yard& yard) const {
    return static_cast<int>(runChecks({yard, facts_})->size());
  }

  test::YardBuilder builder_;
  Catalogue facts_;
  Id<Bed> one_, other_;
};

TEST_F(ArrangementFactsTest, CountsWhatIsFoundOfTheBedAndNothingElse) {
  const Yard both = builder_.build();
  const auto without = [&](Id<Bed> bed) {
    Yard yard = both;
    for (const Drift& drift : both.drifts)
      if (drift.bed == bed) yard.drifts = yard.drifts.without(drift.id);
    return yard;
  };
  const int one = findingsIn(both, one_), other = findingsIn(both, other_);
  EXPECT_GT(one, 0);
  EXPECT_GT(other, one) << "there are two such drifts";
  EXPECT_EQ(findingsIn(without(other_), one_), one) << "whatever stands in the other";
  EXPECT_EQ(findingsIn(without(one_), one_), 0);
  EXPECT_LT(one, findingsInAll(both));
}

// Three plants 0.4 m apart take 3 × 0.4² √3/2 m² (the triangular tables) of the bed.
TEST_F(ArrangementFactsTest, TellsWhatOfTheGroundIsTaken) {
  const Yard yard = builder_.build();
  const double bed = areaOf(yard.beds.find(one_)->outline).squareMetres();
  EXPECT_NEAR(arrangementFacts({yard, facts_}, one_).taken, 3 * 0.16 * std::sqrt(3.0) / 2.0 / bed,
              1e-9);
}

TEST_F(ArrangementFactsTest, KnowsWhatIsPlanted) {
  Yard yard = builder_.build();
  IdSource ids(largestId(yard) + 1);
  yard = apply(yard, keepArrangement(yard, one_, "Now", 1, 0.5, ids));
  const Id<Arrangement> kept = arrangementsOf(yard, one_).front()->id;
  EXPECT_TRUE(isPlantedAs(yard, kept));
  for (const Drift* drift : driftsIn(yard, one_)) yard.drifts = yard.drifts.without(drift->id);
  EXPECT_FALSE(isPlantedAs(yard, kept));
  EXPECT_FALSE(isPlantedAs(yard, Id<Arrangement>(12345)));
}

// The wildness kept with it, wherever the bed's own stands by then.
TEST_F(ArrangementFactsTest, AKeptArrangementIsScoredWhereItWasKept) {
  const Yard yard = builder_.build();
  IdSource ids(largestId(yard) + 1);
  const ChangeSet keeping = keepArrangement(yard, other_, "Kept", 1, 0.2, ids);
  const auto at = [&](double wildness) {
    Yard moved = apply(yard, keeping);
    Bed bed = *moved.beds.find(other_);
    bed.wildness = wildness;
    moved.beds = moved.beds.with(bed);
    return moved;
  };
  const auto kept = [&](double wildness) {
    const Yard moved = at(wildness);
    const Yard planted = withArrangement(moved, moved.arrangements.begin()->id);
    return arrangementFacts({planted, facts_}, other_);
  };
  const auto ground = [&](double wildness) {
    return arrangementFacts({at(wildness), facts_}, other_);
  };
  EXPECT_EQ(kept(0.0).wildness, 0.2);
  EXPECT_EQ(kept(1.0).wildness, 0.2);
  EXPECT_EQ(kept(0.0).score.total, kept(1.0).score.total);
  EXPECT_EQ(kept(1.0).score.total, ground(0.2).score.total);
  EXPECT_EQ(ground(1.0).wildness, 1.0);
}

}  // namespace
}  // namespace tussock
