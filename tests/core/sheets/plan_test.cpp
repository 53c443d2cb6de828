// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>

#include <gtest/gtest.h>

#include "core/catalog/oklab.h"
#include "core/edit/draft.h"
#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"

namespace tussock {
namespace {

using namespace test;

TEST(Plan, PagesOfThePlantedYardAreSound) {
  for (const Paper paper : {Paper::Letter, Paper::A4})
    expectSoundPages(planOf(plantedYard(), paper));
}

TEST(Plan, TheOverviewDrawsNoSymbolsTooSmallToTell) {
  for (const PaperPlant& plant : itemsOf<PaperPlant>(planOf(plantedYard()).sheets[0]))
    EXPECT_GE(plant.radius, 1.5);
}

// ANSI/ASME Y14.1 size A is 8.5 x 11 in; ISO 216 A4 is 210 x 297 mm.
TEST(Plan, PagesHaveThePaperSizesOfTheStandards) {
  for (const Sheet& sheet : planOf(plantedYard(), Paper::Letter).sheets) {
    EXPECT_DOUBLE_EQ(std::min(sheet.widthMm, sheet.heightMm), 215.9);
    EXPECT_DOUBLE_EQ(std::max(sheet.widthMm, sheet.heightMm), 279.4);
  }
  for (const Sheet& sheet : planOf(plantedYard(), Paper::A4).sheets) {
    EXPECT_DOUBLE_EQ(std::min(sheet.widthMm, sheet.heightMm), 210.0);
    EXPECT_DOUBLE_EQ(std::max(sheet.widthMm, sheet.heightMm), 297.0);
  }
}

TEST(Plan, AnEmptyYardGivesOneSheetThatSaysSo) {
  const Plan plan = planOf(Yard{});
  ASSERT_EQ(plan.sheets.size(), 1u);
  EXPECT_TRUE(hasText(plan.sheets[0], "Nothing is drawn yet"));
  EXPECT_EQ(plan.sheets[0].scale, 0.0);
  expectSoundPages(plan);
}

TEST(Plan, OddNamesPrintWithoutControlCharacters) {
  Draft draft(plantedYard());
  Settings settings = draft.yard().settings;
  settings.name = "Garten „Süd“\n漢字 🌿 \xff and a name so long that it has to be cut somewhere";
  draft.put(settings);
  Bed bed = *draft.yard().beds.begin();
  bed.name = "Bed\twith \"quotes\" & <tags>";
  draft.put(bed);
  const Plan plan = planOf(draft.yard());
  expectSoundPages(plan);
  for (const Sheet& sheet : plan.sheets)
    for (const PaperText& text : textsOf(sheet))
      for (const char c : text.text) EXPECT_GE(static_cast<unsigned char>(c), 0x20) << text.text;
}

TEST(Plan, EverySheetCarriesWhatACrewNeeds) {
  const Plan plan = planOf(plantedYard());
  const Sheet& walk = plan.sheets[1];
  EXPECT_EQ(walk.title, "Walk bed");
  for (const char* part :
       {"Seen from the south", "Measure this bar", "811", "Dig by hand within 24 in", "Wear gloves",
        "ASCTUB", "Local codes", "Revision A", "14 April 2027", "Tannery Lane", "Sheet 2 of"})
    EXPECT_TRUE(hasText(walk, part)) << part;
  for (const Sheet& sheet : plan.sheets)
    if (!sheet.schedule.empty()) {
      EXPECT_TRUE(hasText(sheet, "labels, drawing and schedule agree"));
    }
}

TEST(Plan, TallerPlantsHaveHeavierOutlines) {
  const Plan plan = planOf(plantedYard());
  Weight low = Weight::Bold, tall = Weight::Hair;
  for (const PaperPath& path : itemsOf<PaperPath>(plan.sheets[1])) {
    if (path.wash != Wash::Drift) continue;
    if (path.colour == Rgb{0xA0, 0xB0, 0x60}) low = path.weight;   // 25 cm
    if (path.colour == Rgb{0xB4, 0x8C, 0xCC}) tall = path.weight;  // 110 cm
  }
  EXPECT_GT(millimetres(tall), millimetres(low));
}

TEST(Plan, DriftsOfWhiteFlowersDoNotReadAsBarePaper) {
  constexpr Rgb kWhite{0xF4, 0xF0, 0xF4};
  const Plan plan = planOf(plantedYard());
  int drifts = 0, white = 0;
  for (const Sheet& sheet : plan.sheets) {
    for (const PaperPath& path : itemsOf<PaperPath>(sheet))
      if (path.wash == Wash::Drift) {
        ++drifts;
        EXPECT_FALSE(lostOnPaper(path.colour));
      }
    for (const PaperPlant& plant : itemsOf<PaperPlant>(sheet)) white += plant.colour == kWhite;
  }
  EXPECT_GT(drifts, 0);
  EXPECT_GT(white, 0);  // the symbols keep the colour of the flowers
}

}  // namespace
}  // namespace tussock
