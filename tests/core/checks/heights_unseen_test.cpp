// SPDX-License-Identifier: MIT
// Where nobody has said from where a bed is seen, a fill says that it did not look at heights.
#include "core/checks/heights_unseen.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/checks/checked_fill.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class HeightsUnseen : public testing::Test {
 protected:
  HeightsUnseen() {
    builder_.bed("Walk", "POLYGON ((0 0, 5 0, 5 4, 0 4, 0 0))");
    request_.bed = builder_.lastBed();
    bare_ = builder_.build();
  }
  void plantTwo() {
    builder_.drift("Monarda fistulosa", test::row(5, 0.4, {0.5, 1.0}));
    builder_.drift("Rudbeckia hirta", test::row(5, 0.4, {0.5, 3.0}));
  }
  [[nodiscard]] std::string told() {
    const Yard planted = builder_.build();
    result_.edit = difference(bare_, planted, "Fill Walk");
    const Catalogue none;
    const CheckInput input{planted, none};
    return heightsUnseen(FillOutcome(input, request_, result_));
  }

  test::YardBuilder builder_;
  Yard bare_;
  FillRequest request_;
  FillResult result_;
};

TEST_F(HeightsUnseen, IsToldWithTheRemedy) {
  plantTwo();
  EXPECT_EQ(told(),
            "The bed has no viewing side, so heights were not looked at. Say from where it is "
            "seen (Seen from) and fill again.");
}

TEST_F(HeightsUnseen, IsNotToldOnceTheSideIsKnown) {
  plantTwo();
  builder_.viewing("S");
  EXPECT_THAT(told(), IsEmpty());
  builder_.viewing("all");
  EXPECT_THAT(told(), IsEmpty());
}

TEST_F(HeightsUnseen, OneSpeciesHidesNoOther) {
  builder_.drift("Monarda fistulosa", test::row(5, 0.4, {0.5, 1.0}));
  EXPECT_THAT(told(), IsEmpty());
}

TEST_F(HeightsUnseen, WhatStoodThereAlreadyWasNotPlantedNow) {
  plantTwo();
  bare_ = builder_.build();
  EXPECT_THAT(told(), IsEmpty());
  result_.unchanged = true;  // all that would be planted stands there
  EXPECT_THAT(told(), HasSubstr("no viewing side"));
}

TEST_F(HeightsUnseen, BulbsAndGroundCoversHideNothing) {
  plantTwo();
  bare_ = builder_.build();
  builder_.drift("Camassia scilloides", test::row(5, 0.2, {0.5, 2.0})).layer(Layer::Bulbs);
  EXPECT_THAT(told(), IsEmpty());
}

TEST(HeightsUnseenFill, AFillTellsItAmongItsNotes) {
  const Catalogue shipped = readShippedCatalogue().catalogue;
  test::YardBuilder builder;
  builder.bed("Walk", "POLYGON ((0 0, 5 0, 5 4, 0 4, 0 0))");
  FillRequest request;
  request.bed = builder.lastBed();
  request.plants = {{"Monarda fistulosa", 0.0}, {"Rudbeckia hirta", 0.0}};
  IdSource ids(1000);
  const auto blind = fillChecked(builder.build(), shipped, nullptr, request, ids);
  ASSERT_TRUE(blind);
  EXPECT_THAT(blind->notes, Contains(HasSubstr("heights were not looked at")));
  builder.viewing("S");
  const auto seen = fillChecked(builder.build(), shipped, nullptr, request, ids);
  ASSERT_TRUE(seen);
  EXPECT_THAT(seen->notes, Not(Contains(HasSubstr("heights were not looked at"))));
}

}  // namespace
}  // namespace tussock
