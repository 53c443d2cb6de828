// SPDX-License-Identifier: MIT
// Rules recorded of a state. Cup plant: among New York's prohibited plants (6 NYCRR Part 575, as
// told at 961theeagle.com) and on Maine's list of plants not to be sold (a compilation of state
// lists of January 2026; see NYBAN and STLISTS in resources/plants-sources.md).
#include "core/catalog/regulated.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/fit.h"
#include "core/catalog/rank.h"

namespace tussock {
namespace {

using testing::Contains;
using testing::HasSubstr;

Species ruled(std::string note) {
  Species species;
  species.botanicalName = "Silphium perfoliatum";
  species.regulated = std::move(note);
  return species;
}

TEST(Regulated, NamesAStateInFullOrByItsLetters) {
  EXPECT_TRUE(isRegulatedIn(ruled("Prohibited in New York"), "NY"));
  EXPECT_TRUE(isRegulatedIn(ruled("noxious weed (OH, IN)"), "IN"));
  EXPECT_TRUE(isRegulatedIn(ruled("noxious in Virginia"), "VA"));
}

TEST(Regulated, IsNotOfAStateThatIsNotNamed) {
  EXPECT_FALSE(isRegulatedIn(ruled("noxious in West Virginia"), "VA"));
  EXPECT_FALSE(isRegulatedIn(ruled("noxious in Arkansas"), "KS"));
  EXPECT_FALSE(isRegulatedIn(ruled("noxious in Ohio"), "IN"));
  EXPECT_FALSE(isRegulatedIn(ruled(""), "NY"));
  EXPECT_FALSE(isRegulatedIn(ruled("noxious in Ohio"), ""));
}

TEST(Regulated, WhatAStateProhibitsIsLeftOutThereAndToldElsewhere) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  const Species& cup = *facts.find("Silphium perfoliatum");
  RankRequest request;
  request.place.state = "NY";
  EXPECT_THAT(rankOf(cup, request).whyNot, Contains(HasSubstr("regulated")));
  EXPECT_THAT(rankOf(cup, request).whyNot,
              Contains(HasSubstr("ask the department of agriculture of your state")));
  request.place.state = "ME";
  EXPECT_THAT(rankOf(cup, request).whyNot, Contains(HasSubstr("regulated")));
  request.place.state = "OH";
  const Ranked told = rankOf(cup, request);
  EXPECT_TRUE(told.suits());
  EXPECT_THAT(told.costs, Contains(HasSubstr("regulated somewhere")));
}

}  // namespace
}  // namespace tussock
