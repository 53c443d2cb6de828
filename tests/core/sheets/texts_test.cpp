// SPDX-License-Identifier: MIT
// Every text of every sheet, on both papers: none leaves its page, stands on another or is cut.
#include <algorithm>
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"
#include "core/exchange/example.h"
#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"
#include "tests/support/special_yards.h"

namespace tussock {
namespace {

using namespace test;

// All texts of a sheet, read on as one.
std::string wordsOf(const Sheet& sheet) {
  std::string words;
  for (const PaperText& text : textsOf(sheet)) words += text.text + " ";
  return words;
}

void expectNothingCut(const Plan& plan) {
  for (const Sheet& sheet : plan.sheets)
    for (const PaperText& text : textsOf(sheet))
      EXPECT_EQ(text.text.find("…"), std::string::npos) << sheet.title << ": " << text.text;
}

void expectDateOnEverySheet(const Plan& plan, const std::string& date) {
  for (const Sheet& sheet : plan.sheets) EXPECT_TRUE(hasText(sheet, date)) << sheet.title;
}

class SpecialTexts : public testing::TestWithParam<Paper> {};

TEST_P(SpecialTexts, StayOnTheirPageAndApartAndLeaveNoPlantOut) {
  for (const SpecialYard& special : specialYards()) {
    SCOPED_TRACE(special.name);
    const Plan plan = planOf(special.yard, GetParam());
    expectSoundPages(plan);
    expectAllAgree(special.yard, plan);
    expectDateOnEverySheet(plan, "14 April 2027");
    if (special.name != "long names") expectNothingCut(plan);
  }
}

INSTANTIATE_TEST_SUITE_P(Papers, SpecialTexts, testing::Values(Paper::Letter, Paper::A4));

TEST(Texts, OfTheExampleAreWholeAndApart) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  const Yard example = buildExample(facts).yard;
  for (const Paper paper : {Paper::Letter, Paper::A4})
    for (const Yard& yard : {example, inMetres(example)}) {
      const Plan plan = makePlan(yard, facts, optionsFor(paper));
      expectSoundPages(plan);
      expectNothingCut(plan);
      std::set<bool> upright;
      for (const Sheet& sheet : plan.sheets) upright.insert(sheet.heightMm > sheet.widthMm);
      EXPECT_EQ(upright.size(), 2u) << "only one way round is tested";
    }
}

// A name too long for the strip is cut there only; it stands in full in a head.
TEST(Texts, ALongNameStandsInFullInTheHead) {
  const Yard yard = longNames();
  const Plan plan = planOf(yard, Paper::A4);
  EXPECT_NE(wordsOf(plan.sheets[0]).find(yard.settings.name), std::string::npos);
  for (const Bed& bed : yard.beds)
    EXPECT_TRUE(std::any_of(plan.sheets.begin(), plan.sheets.end(), [&](const Sheet& sheet) {
      return wordsOf(sheet).find(bed.name + " Seen from") != std::string::npos;
    })) << bed.name;
}

TEST(Texts, TheHeadTellsEveryViewingSide) {
  const Plan plan = planOf(longNames(), Paper::A4);
  const auto bed = std::find_if(plan.sheets.begin(), plan.sheets.end(), [](const Sheet& sheet) {
    return wordsOf(sheet).find("Seen from") != std::string::npos;
  });
  ASSERT_NE(bed, plan.sheets.end());
  const std::string words = wordsOf(*bed);
  for (const char* side : {"north-east", "south-east", "south-west", "west", "sq ft"})
    EXPECT_NE(words.find(side), std::string::npos) << side;
}

TEST(Texts, ALongRevisionKeepsItsDate) {
  PlanOptions options = optionsFor(Paper::A4);
  options.revision = "C for tender";
  const Plan plan = makePlan(plantedYard(), smallCatalogue(), options);
  expectSoundPages(plan);
  for (const Sheet& sheet : plan.sheets) {
    EXPECT_TRUE(hasText(sheet, "Revision C for tender"));
    EXPECT_TRUE(hasText(sheet, "14 April 2027"));
  }
}

}  // namespace
}  // namespace tussock
