// SPDX-License-Identifier: MIT
#include "core/checks/describe.h"

#include <cctype>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/faulty_yard.h"

namespace tussock {
namespace {

using namespace test;
using testing::AllOf;
using testing::AnyOf;
using testing::HasSubstr;
using testing::Not;

FindingText asWritten(CheckId check, const YardBuilder& builder, const SunMap* sun = nullptr) {
  return describe(found(check, builder, sun).at(0), builder.build(), tinyCatalogue(), sun);
}

std::string withPlainSpaces(std::string text) {
  const std::string noBreak = "\u00a0";
  for (std::size_t at; (at = text.find(noBreak)) != std::string::npos;)
    text.replace(at, noBreak.size(), " ");
  return text;
}

FindingText first(CheckId check, const YardBuilder& builder, const SunMap* sun = nullptr) {
  const FindingText text = asWritten(check, builder, sun);
  return {text.title, withPlainSpaces(text.text), withPlainSpaces(text.limit)};
}

YardBuilder hiddenConeflower() {
  return YardBuilder()
      .bed("Walk", kSquareBed)
      .viewing("S")
      .drift(kBergamot, {{5.0, 2.5}})
      .drift(kConeflower, {{5.0, 3.0}});
}

TEST(Describe, SaysTheFactThenTheRemedy) {
  const FindingText text = first(CheckId::HeightOrder, hiddenConeflower());
  EXPECT_EQ(text.title, "Hidden from the south");
  EXPECT_EQ(
      text.text,
      "Wild bergamot in “Walk” stands 0.50 m in front of orange coneflower and hides 100 % of "
      "its height from the south. Move it back or swap the two.");
  EXPECT_EQ(text.limit,
            "Largest share of a drift hidden by a taller one: 50 %. Source: common practice.");
}

TEST(Describe, NeverPartsANumberFromItsUnit) {
  const FindingText text = asWritten(CheckId::HeightOrder, hiddenConeflower());
  EXPECT_THAT(text.text, HasSubstr("0.50\u00a0m in front"));
  EXPECT_THAT(text.text, HasSubstr("hides 100\u00a0% of"));
}

// A common name that two species have tells neither from the other.
TEST(Describe, TellsSpeciesOfOneCommonNameApart) {
  std::vector<Species> species = tinyCatalogue().species();
  Species other = *tinyCatalogue().find(kConeflower);
  other.botanicalName = "Rudbeckia altera";
  species.push_back(other);
  const YardBuilder builder = hiddenConeflower();
  const FindingText text = describe(found(CheckId::HeightOrder, builder, nullptr).at(0),
                                    builder.build(), Catalogue(species), nullptr);
  EXPECT_THAT(text.text, HasSubstr("orange coneflower (" + std::string(kConeflower) + ")"));
  EXPECT_THAT(text.text, HasSubstr("Wild bergamot in"));
}

TEST(Describe, UsesTheYardsUnits) {
  const FindingText text =
      first(CheckId::HeightOrder, hiddenConeflower().units(UnitSystem::FeetInches));
  EXPECT_THAT(text.text, HasSubstr("stands 1' 7½\" in front"));
}

TEST(Describe, TellsAYardsOwnLimitFromTheUsual) {
  const FindingText text =
      first(CheckId::HeightOrder, hiddenConeflower().threshold("hidden_share", 0.4));
  EXPECT_THAT(text.limit, HasSubstr("40 % (this yard's own; usual is 50 %)"));
}

TEST(Describe, SaysWhatSantamourWroteAboutAndWhenTheLimitCannotBeMet) {
  const auto yard =
      YardBuilder().bed("Walk", kSquareBed).drift(kBergamot, row(101, 0.1, {1.0, 1.0}));
  const FindingText text = first(CheckId::SpeciesShare, yard);
  EXPECT_THAT(text.text, HasSubstr("Wild bergamot is 100 % of the plants"));
  EXPECT_THAT(text.text, HasSubstr("With 1 species one is bound to be over 10 %"));
  EXPECT_THAT(text.limit, AllOf(HasSubstr("Santamour"), HasSubstr("street trees")));
}

TEST(Describe, NamesTheOthersThatAreOver) {
  const auto yard = YardBuilder()
                        .bed("Walk", kSquareBed)
                        .drift(kBergamot, row(55, 0.1, {1.0, 1.0}))
                        .drift(kConeflower, row(51, 0.1, {1.0, 2.0}));
  EXPECT_THAT(first(CheckId::SpeciesShare, yard).text,
              HasSubstr("Over it too: orange coneflower (48 %)."));
}

TEST(Describe, NamesTheSourceOfTheSunClasses) {
  const SunMap sun = evenSun(4.0);
  const auto yard = YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, {{5.0, 5.0}});
  const FindingText text = first(CheckId::SunNeed, yard, &sun);
  EXPECT_EQ(text.title, "Too little sun");
  EXPECT_THAT(text.text, HasSubstr("gets 4.0 hours of sun a day and asks for at least 6 hours."));
  EXPECT_THAT(text.limit, HasSubstr("Full sun from 6 hours a day"));
}

TEST(Describe, ProposesSpeciesForAGap) {
  const auto yard = YardBuilder()
                        .bed("Walk", kSquareBed)
                        .drift(kAlexanders, {{5.0, 5.0}})
                        .drift(kAster, {{6.0, 5.0}});
  const FindingText text = first(CheckId::BloomGap, yard);
  EXPECT_THAT(text.title, HasSubstr("Nothing in flower"));
  EXPECT_THAT(text.text, HasSubstr(" would do."));
  EXPECT_THAT(text.text, Not(HasSubstr("olden alexanders")));
}

TEST(Describe, TellsAnAssumedSeason) {
  Yard yard = YardBuilder().bed("Walk", kSquareBed).drift(kAlexanders, {{5.0, 5.0}}).build();
  yard.settings.lastFrost.reset();
  const Catalogue facts = tinyCatalogue();
  const auto findings = runCheck(CheckId::BloomGap, {yard, facts, nullptr});
  EXPECT_THAT(describe(findings.at(0), yard, facts).limit,
              HasSubstr("the season is taken as 1 April to 31 October"));
}

TEST(Describe, NamesTheBedsOwnSetBack) {
  const auto yard = YardBuilder()
                        .bed("Walk", kSquareBed)
                        .setback(Length::metres(0.3))
                        .drift(kBluestem, {{0.25, 5.0}});
  EXPECT_EQ(first(CheckId::SetBack, yard).limit,
            "Set-back of “Walk”: 0.30 m. Source: set for this bed.");
}

TEST(Describe, GivesFullSentencesForEveryFinding) {
  const Yard yard = faultyYard().build();
  const Catalogue facts = tinyCatalogue();
  const SunMap sun = evenSun(5.0);
  const std::vector<Finding> findings = runChecks({yard, facts, &sun}).value();
  for (const Finding& finding : findings) {
    const FindingText text = describe(finding, yard, facts, &sun);
    EXPECT_FALSE(text.title.empty()) << keyOf(finding);
    EXPECT_TRUE(text.text.ends_with('.')) << text.text;
    EXPECT_FALSE(std::islower(static_cast<unsigned char>(text.text.front()))) << text.text;
    EXPECT_THAT(text.text, AllOf(Not(HasSubstr("!")), Not(HasSubstr("  ")), Not(HasSubstr(".."))));
    if (!text.limit.empty()) {
      EXPECT_THAT(text.limit, HasSubstr("Source: ")) << keyOf(finding);
    } else {
      EXPECT_THAT(finding.check, AnyOf(CheckId::DoubtfulShade, CheckId::Pieces))
          << "which have no limit to set";
    }
  }
}

TEST(Describe, SpeaksInGeneralOfWhatHasLeft) {
  const Yard yard = faultyYard().build();
  const Catalogue facts = tinyCatalogue();
  const SunMap sun = evenSun(5.0);
  const std::vector<Finding> findings = runChecks({yard, facts, &sun}).value();
  for (const Finding& finding : findings)
    EXPECT_FALSE(describe(finding, Yard{}, facts, &sun).text.empty()) << keyOf(finding);
}

}  // namespace
}  // namespace tussock
