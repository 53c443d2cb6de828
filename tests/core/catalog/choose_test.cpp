// SPDX-License-Identifier: MIT
#include "core/catalog/choose.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using test::kFoamflower;
using test::kJoePye;
using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;
using testing::Not;
using testing::SizeIs;

class Choosing : public testing::Test {
 protected:
  [[nodiscard]] std::vector<std::string> names() const {
    std::vector<std::string> all;
    for (const Ranked& one : choose(facts_, choice_)) all.push_back(one.species->botanicalName);
    return all;
  }
  void inOpenGround() {
    choice_.place.emplace();
    choice_.place->place.sunHours = 9.0;
  }

  Catalogue facts_ = test::tinyCatalogue();
  Choice choice_;
};

TEST_F(Choosing, AllByNameAtFirst) {
  const auto all = names();
  EXPECT_THAT(all, SizeIs(facts_.species().size()));
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end()));
}

TEST_F(Choosing, WhatSuitsAndWhatIsLeftOutMakeAll) {
  inOpenGround();
  choice_.of = ChoiceOf::Suiting;
  const auto suiting = names();
  EXPECT_THAT(suiting, Not(Contains(kFoamflower)));  // shade alone
  choice_.of = ChoiceOf::LeftOut;
  const auto left = names();
  EXPECT_THAT(left, Contains(kFoamflower));
  EXPECT_EQ(suiting.size() + left.size(), facts_.species().size());
  for (const Ranked& one : choose(facts_, choice_)) EXPECT_FALSE(one.whyNot.empty());
}

TEST_F(Choosing, OfWhatSuitsTheBestFitComesFirstAlsoWhenWordsAreTyped) {
  inOpenGround();
  choice_.of = ChoiceOf::Suiting;
  const auto suiting = choose(facts_, choice_);
  for (std::size_t i = 1; i < suiting.size(); ++i)
    EXPECT_GE(suiting[i - 1].points, suiting[i].points);
  choice_.filter.words = "a";
  std::vector<std::string> ranked;
  for (const Ranked& one : suiting) {
    const auto found = facts_.search("a");
    if (std::find(found.begin(), found.end(), one.species) != found.end())
      ranked.push_back(one.species->botanicalName);
  }
  EXPECT_THAT(names(), testing::UnorderedElementsAreArray(ranked));
  const auto typed = choose(facts_, choice_);
  for (std::size_t i = 1; i < typed.size(); ++i) EXPECT_GE(typed[i - 1].points, typed[i].points);
}

TEST_F(Choosing, NothingIsLeftOutOfNoPlace) {
  choice_.of = ChoiceOf::LeftOut;
  EXPECT_THAT(names(), IsEmpty());
}

TEST_F(Choosing, FiltersCombine) {
  choice_.filter.habits = {Habit::Forb};
  choice_.filter.lowest = Length::metres(1.4);
  EXPECT_THAT(names(), ElementsAre(kJoePye, test::kBlazingStar));
  choice_.filter.words = "eutrochium";
  EXPECT_THAT(names(), ElementsAre(kJoePye));
}

TEST_F(Choosing, AnOrderAskedForGoesBeforeThatOfTheSearch) {
  choice_.filter.words = "forb";
  const auto found = names();
  choice_.order = RankOrder::Height;
  const auto byHeight = names();
  EXPECT_THAT(byHeight, IsSupersetOf(found));
  std::vector<Length> heights;
  for (const Ranked& one : choose(facts_, choice_)) heights.push_back(one.species->height());
  EXPECT_TRUE(std::is_sorted(heights.begin(), heights.end()));
  EXPECT_THAT(heights, SizeIs(found.size()));
}

}  // namespace
}  // namespace tussock
