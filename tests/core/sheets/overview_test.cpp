// SPDX-License-Identifier: MIT
// Names on the overview: on their thing, or by number in a list, but never lost.
#include <algorithm>
#include <string>

#include <gtest/gtest.h>

#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"
#include "tests/support/special_yards.h"

namespace tussock {
namespace {

using namespace test;

std::string overviewWords(const Plan& plan) {
  std::string words;
  for (const Sheet& sheet : plan.sheets)
    if (sheet.title.starts_with("Overview"))
      for (const PaperText& text : textsOf(sheet)) words += text.text + " ";
  return words;
}

// Numbers in rings: bold figures alone, inside the drawing.
std::vector<int> numbersOn(const Sheet& sheet) {
  std::vector<int> numbers;
  for (const PaperText& text : itemsOf<PaperText>(sheet)) {
    const bool figures = text.text.find_first_not_of("0123456789") == std::string::npos;
    if (figures && text.bold && text.at.y > sheet.drawing.top && text.at.y < sheet.drawing.bottom)
      numbers.push_back(std::stoi(text.text));
  }
  std::sort(numbers.begin(), numbers.end());
  return numbers;
}

TEST(Overview, NamesEveryTreeOfACrowdedSite) {
  for (const Paper paper : {Paper::Letter, Paper::A4}) {
    const Plan plan = planOf(crowdedSite(), paper);
    const std::string words = overviewWords(plan);
    for (int i = 1; i <= 60; ++i) {
      const std::string name = "Witness tree " + std::to_string(i) + " of the";
      EXPECT_NE(words.find(name), std::string::npos) << name;
    }
  }
}

TEST(Overview, NamesEveryBedOfForty) {
  for (const Paper paper : {Paper::Letter, Paper::A4}) {
    const std::string words = overviewWords(planOf(fortyBeds(), paper));
    for (int i = 1; i <= 40; ++i) {
      const std::string name = "Stock bed number " + std::to_string(i) + " (3)";
      EXPECT_NE(words.find(name), std::string::npos) << name;
    }
  }
}

TEST(Overview, NumbersOnTheDrawingAreThoseOfTheList) {
  const Plan plan = planOf(crowdedSite());
  const std::vector<int> numbers = numbersOn(plan.sheets[0]);
  ASSERT_FALSE(numbers.empty());
  for (std::size_t i = 0; i < numbers.size(); ++i) EXPECT_EQ(numbers[i], static_cast<int>(i) + 1);
  const std::string words = overviewWords(plan);
  const std::string last = std::to_string(numbers.back());
  EXPECT_NE(words.find(last + " Witness tree"), std::string::npos);
}

TEST(Overview, ANameTooLongForTheDrawingIsListedWhole) {
  const std::string words = overviewWords(planOf(longNames()));
  EXPECT_NE(words.find("1 "), std::string::npos);
  EXPECT_NE(words.find("graduating class of the consolidated school, 1931"), std::string::npos);
}

TEST(Overview, HasNoListWhereNamesFindTheirPlace) {
  const Plan plan = planOf(plantedYard());
  EXPECT_TRUE(numbersOn(plan.sheets[0]).empty());
  EXPECT_EQ(overviewWords(plan).find("Numbers:"), std::string::npos);
}

// The ends of the baseline are what everything is measured from.
TEST(StakeOut, TheLettersAAndBStandOnEverySheetOfABed) {
  std::vector<SpecialYard> yards = specialYards();
  yards.push_back({"planted", plantedYard()});
  for (const SpecialYard& special : yards) {
    SCOPED_TRACE(special.name);
    for (const Sheet& sheet : planOf(special.yard).sheets) {
      const bool wholeBed = sheet.scale > 0.0 && sheet.title != "Overview" &&
                            sheet.title.find(", part ") == std::string::npos;
      if (!wholeBed) continue;
      int letters = 0;
      for (const PaperText& text : itemsOf<PaperText>(sheet))
        letters += text.bold && (text.text == "A" || text.text == "B");
      EXPECT_EQ(letters, 2) << sheet.title;
    }
  }
}

}  // namespace
}  // namespace tussock
