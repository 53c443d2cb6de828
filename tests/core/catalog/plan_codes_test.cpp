// SPDX-License-Identifier: MIT
// Codes are given once and kept for good: a printed plan must never come to mean another plant.
#include "core/catalog/plan_codes.h"

#include <gtest/gtest.h>

#include "tests/support/run_check.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

// All four share genus and first three letters of the epithet.
constexpr auto kFirst = "Carex pensylvanica", kSecond = "Carex pendula",
               kThird = "Carex penduliformis", kFourth = "Carex penicillata";

class PlanCodes : public testing::Test {
 protected:
  PlanCodes() {
    test::YardBuilder builder;
    yard_ = builder.bed("Bed", test::kSquareBed).build();
    bed_ = builder.lastBed();
  }
  Id<Drift> plant(const char* species) {
    Draft draft(yard_);
    Drift drift;
    drift.id = ids_.take<Drift>();
    drift.bed = bed_;
    drift.species = species;
    drift.plants = {{ids_.take<Plant>(), {1.0, 1.0}}};
    draft.put(drift);
    takeCode(draft, species, ids_);
    yard_ = draft.yard();
    return drift.id;
  }
  void remove(Id<Drift> drift) {
    Draft draft(yard_);
    draft.remove(drift);
    yard_ = draft.yard();
  }

  Yard yard_;
  Id<Bed> bed_;
  IdSource ids_{1000};
};

TEST_F(PlanCodes, ThreeOfTheSameLettersAreTold) {
  plant(kFirst), plant(kSecond), plant(kThird);
  EXPECT_EQ(codeOf(yard_, kFirst), "CARPEN");
  EXPECT_EQ(codeOf(yard_, kSecond), "CARPE2");
  EXPECT_EQ(codeOf(yard_, kThird), "CARPE3");
}

TEST_F(PlanCodes, ThatOfAPlantThatHasLeftIsNotGivenToAnother) {
  plant(kFirst);
  const Id<Drift> second = plant(kSecond);
  plant(kThird);
  remove(second);
  plant(kFourth);
  EXPECT_EQ(codeOf(yard_, kFourth), "CARPE4");
  EXPECT_EQ(codeOf(yard_, kSecond), "CARPE2") << "kept for when it comes back";
  plant(kSecond);
  EXPECT_EQ(codeOf(yard_, kSecond), "CARPE2");
}

TEST_F(PlanCodes, ThatOfTheLastPlantIsKeptToo) {
  remove(plant(kFirst));
  EXPECT_TRUE(yard_.drifts.empty());
  plant(kSecond);
  EXPECT_EQ(codeOf(yard_, kSecond), "CARPE2");
}

TEST_F(PlanCodes, AnImportThatWantsATakenCodeGetsAnother) {
  remove(plant(kFirst));
  Draft draft(yard_);
  takeCode(draft, kSecond, ids_, "CARPEN");
  EXPECT_NE(codeOf(draft.yard(), kSecond), "CARPEN");
}

TEST_F(PlanCodes, WhatIsPrintedBeforeCodesWereGivenKeepsToTheSameRule) {
  remove(plant(kFirst));
  Draft draft(yard_);
  Drift drift;
  drift.id = ids_.take<Drift>();
  drift.bed = bed_;
  drift.species = kSecond;
  drift.plants = {{ids_.take<Plant>(), {1.0, 1.0}}};
  draft.put(drift);
  EXPECT_EQ(codeOf(withCodes(draft.yard()), kSecond), "CARPE2");
}

}  // namespace
}  // namespace tussock
