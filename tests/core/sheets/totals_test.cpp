// SPDX-License-Identifier: MIT
#include <string>

#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"
#include "tests/support/random_yard.h"

namespace tussock {
namespace {

using namespace test;

TEST(Plan, LabelsScheduleAndDrawingAgree) {
  const Yard yard = plantedYard();
  for (const Paper paper : {Paper::Letter, Paper::A4}) expectAllAgree(yard, planOf(yard, paper));
}

TEST(Plan, LabelsScheduleAndDrawingAgreeInRandomYards) {
  for (unsigned seed = 1; seed <= 30; ++seed) {
    Random random(seed);
    const Yard yard = randomYard(random);
    const Plan plan = planOf(yard);
    expectAllAgree(yard, plan);
    for (const Sheet& sheet : plan.sheets) EXPECT_EQ(crossings(sheet), 0) << seed << sheet.title;
  }
}

TEST(Plan, ASinglePlantIsDrawnLabelledAndListed) {
  Draft draft(griddedYard(3, 2, 1, 1));
  Drift drift = *draft.yard().drifts.begin();
  drift.plants.resize(1);
  draft.put(drift);
  const Plan plan = planOf(draft.yard());
  expectAllAgree(draft.yard(), plan);
  expectSoundPages(plan);
}

TEST(Plan, ALongScheduleGoesOnInFurtherPages) {
  Draft draft(griddedYard(10, 4, 10, 7));
  int number = 0;
  for (Drift drift : Yard(draft.yard()).drifts) {
    drift.species = "Testia number" + std::string(1, static_cast<char>('a' + number / 26)) +
                    std::string(1, static_cast<char>('a' + number % 26));
    ++number;
    draft.put(drift);
  }
  const Plan plan = planOf(draft.yard());
  expectAllAgree(draft.yard(), plan);
  expectSoundPages(plan);
  int pages = 0;
  for (const Sheet& sheet : plan.sheets) pages += sheet.title == "Whole plant schedule";
  EXPECT_GE(pages, 2);
}

}  // namespace
}  // namespace tussock
