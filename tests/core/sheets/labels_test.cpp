// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/sheets/paper_geometry.h"
#include "core/sheets/text_width.h"
#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"
#include "tests/support/random_yard.h"

namespace tussock {
namespace {

using namespace test;

TEST(Plan, TextsStandApartInRandomYards) {
  for (unsigned seed = 1; seed <= 30; ++seed) {
    Random random(seed);
    for (const Sheet& sheet : planOf(randomYard(random)).sheets) expectTextsApart(sheet);
  }
}

// The drawn leaders from text to end; other labels' texts and the rulers' figures stay clear.
TEST(Plan, LeadersRunThroughNoText) {
  for (const Yard& yard : {plantedYard(), griddedYard(15, 6, 10, 6), griddedYard(9, 4, 3, 1)})
    for (const Sheet& sheet : planOf(yard).sheets)
      for (const PaperLabel& label : itemsOf<PaperLabel>(sheet))
        for (const PaperText& text : textsOf(sheet))
          for (std::size_t i = 1; i < label.leader.size(); ++i)
            EXPECT_FALSE(text.text != label.text.text &&
                         crosses(label.leader[i - 1], label.leader[i], boxOf(text)))
                << sheet.title << ": " << label.text.text << " through " << text.text;
}

TEST(Plan, SixtyDriftsAreLabelledWithoutCrossings) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  const Plan plan = planOf(yard);
  expectAllAgree(yard, plan);
  expectSoundPages(plan);
  EXPECT_EQ(itemsOf<PaperLabel>(plan.sheets[2].scale > 0 ? plan.sheets[2] : plan.sheets[1]).size(),
            60u);
}

TEST(Plan, LeadersEndInsideTheirOwnDrift) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  int leaders = 0;
  for (const Sheet& sheet : planOf(yard).sheets)
    for (const PaperLabel& label : itemsOf<PaperLabel>(sheet)) {
      if (label.leader.empty()) continue;
      ++leaders;
      double nearest = 1e9;
      for (const Plant& plant : yard.drifts.find(label.drift)->plants) {
        const PaperPoint p = toPaper(sheet, plant.at);
        nearest =
            std::min(nearest, std::hypot(p.x - label.leader.back().x, p.y - label.leader.back().y));
      }
      EXPECT_LE(nearest, 300.0 / sheet.scale * 0.5 + 1e-6);
    }
  EXPECT_EQ(leaders, 60);
}

}  // namespace
}  // namespace tussock
