// SPDX-License-Identifier: MIT
// Arrangements and what is locked: neither planted twice, nor lost, nor planted over.
#include "core/planting/arrangements.h"

#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "core/planting/edit_drift.h"
#include "core/planting/one_piece.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

class KeptAndLocked : public testing::Test {
 protected:
  KeptAndLocked() {
    builder_.bed("Front", "POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))");
    builder_.drift("Liatris spicata", test::row(5, 0.4, {1, 1}));
    first_ = builder_.lastDrift();
    builder_.drift("Carex vulpinoidea", test::row(3, 0.4, {1, 3}));
    second_ = builder_.lastDrift();
    yard_ = builder_.build();
  }
  void keep(double wildness = 0.5) {
    yard_ = apply(yard_, keepArrangement(yard_, builder_.lastBed(), "One", 1, wildness, ids_));
    kept_ = yard_.arrangements.begin()->id;
  }
  void lock(Id<Drift> drift, DriftLock how) {
    yard_ = apply(yard_, lockDrift(yard_, drift, how).edit);
  }
  int choose() {
    const ChosenArrangement chosen = chooseArrangement(yard_, kept_, ids_);
    yard_ = apply(yard_, chosen.edit);
    return chosen.leftOut;
  }
  [[nodiscard]] std::size_t plants() const {
    std::size_t plants = 0;
    for (const Drift& drift : yard_.drifts) plants += drift.plants.size();
    return plants;
  }

  test::YardBuilder builder_;
  IdSource ids_{1000};
  Id<Drift> first_, second_;
  Yard yard_;
  Id<Arrangement> kept_;
};

TEST_F(KeptAndLocked, WhatIsLockedLaterIsNotPlantedTwice) {
  keep();
  lock(first_, DriftLock::Locked);
  yard_ = apply(yard_, moveDrift(yard_, second_, {3, 0}).edit);
  EXPECT_EQ(choose(), 0);
  EXPECT_EQ(plants(), 8u);
  EXPECT_NE(yard_.drifts.find(first_), nullptr);
}

TEST_F(KeptAndLocked, WhatWasLockedIsThereWhenItIsUnlocked) {
  lock(first_, DriftLock::Locked);
  keep();
  lock(first_, DriftLock::Free);
  EXPECT_EQ(choose(), 0);
  EXPECT_EQ(plants(), 8u);
  EXPECT_NE(yard_.drifts.find(first_), nullptr) << "it stands just so: its ids stay";
}

// The locked drift has been taken to where the other stood: one plant of that still finds room.
TEST_F(KeptAndLocked, NothingIsPlantedOverWhatIsLocked) {
  keep();
  yard_ = apply(yard_, moveDrift(yard_, first_, {0.4, 2.0}).edit);  // from 1.4 to 3.0, at 3
  lock(first_, DriftLock::Locked);
  EXPECT_EQ(choose(), 2);
  for (const Drift& drift : yard_.drifts)
    for (const Drift& other : yard_.drifts)
      for (const Plant& p : drift.plants)
        for (const Plant& q : other.plants)
          if (p.id != q.id) {
            EXPECT_GE(distance(p.at, q.at), 0.85 * 0.4 - 1e-6);
          }
  std::size_t sedges = 0;
  for (const Drift& drift : yard_.drifts)
    if (drift.species == "Carex vulpinoidea") sedges += drift.plants.size();
  EXPECT_EQ(sedges, 1u);
}

TEST_F(KeptAndLocked, TheBedTakesTheMannerItWasPlantedIn) {
  keep(0.9);
  EXPECT_EQ(choose(), 0);
  EXPECT_EQ(yard_.beds.begin()->wildness, 0.9);
}

}  // namespace
}  // namespace tussock
