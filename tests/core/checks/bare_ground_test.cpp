// SPDX-License-Identifier: MIT
// Ground that a fill leaves bare is told. A plant takes s² √3/2 of it, as in the triangular pattern
// (docs/methods-planting.md).
#include "core/checks/bare_ground.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;

const Catalogue& catalogue() {
  static const Catalogue shipped = readShippedCatalogue().catalogue;
  return shipped;
}

// A bed of 5 by 4 m: 125 spacings² of 0.4 m. Each plant takes 0.16 √3/2 = 0.13856 m², so that 134
// of them take 0.928 and 135 take 0.935 of it.
class BareGround : public testing::Test {
 protected:
  BareGround() {
    builder_.bed("Walk", "POLYGON ((0 0, 5 0, 5 4, 0 4, 0 0))");
    request_.bed = builder_.lastBed();
    result_.plants = {{"Monarda fistulosa", 0.0}};
  }
  void plant(int count) { builder_.drift("Monarda fistulosa", test::row(count, 0.03, {0.3, 2.0})); }
  [[nodiscard]] std::string told() const {
    return bareGround(builder_.build(), catalogue(), request_, result_);
  }

  test::YardBuilder builder_;
  FillRequest request_;
  FillResult result_;
};

TEST_F(BareGround, IsToldJustUnderTheLimit) {
  plant(134);
  EXPECT_THAT(told(), AllOf(HasSubstr("The plants take 93\u00a0% of the ground; 1.4"),
                            HasSubstr("m² lie bare. Fill the gaps, or list plants of smaller")));
}

TEST_F(BareGround, IsNotToldJustOverIt) {
  plant(135);
  EXPECT_THAT(told(), IsEmpty());
}

// 114 plants take 15.8 of 20 m².
TEST_F(BareGround, SaysWhatToDoAboutIt) {
  plant(114);
  EXPECT_THAT(told(), HasSubstr("take 79\u00a0% of the ground; 4.2"));
  result_.cutShort = true;
  EXPECT_THAT(told(), HasSubstr("Allow more time"));
  result_.cutShort = false;
  request_.what = FillWhat::EmptyPart;
  EXPECT_THAT(told(), HasSubstr("List plants of smaller spacing"));
  request_.what = FillWhat::OneSpecies;  // says by itself how many found room
  EXPECT_THAT(told(), IsEmpty());
}

// A quarter of the bed is paved: 104 plants take 14.4 of the 15 m² that are left.
TEST_F(BareGround, IsNotWherePavingLies) {
  builder_.paving("Walk", "POLYGON ((0 0, 5 0, 5 1, 0 1, 0 0))");
  plant(104);
  EXPECT_THAT(told(), IsEmpty());
}

// 1 by 4 m are 25 spacings²: its edges cost too much.
TEST_F(BareGround, OfASmallBedIsNotTold) {
  builder_.bed("Strip", "POLYGON ((10 0, 11 0, 11 4, 10 4, 10 0))");
  request_.bed = builder_.lastBed();
  builder_.drift("Monarda fistulosa", test::row(7, 0.5, {10.5, 0.5}));
  EXPECT_THAT(told(), IsEmpty());
}

TEST_F(BareGround, TellsThatTheListHasNoMainLayer) {
  builder_.drift("Carex pensylvanica", test::row(9, 0.3, {0.5, 2.0})).layer(Layer::Ground);
  result_.plants = {{"Carex pensylvanica", 0.0}, {"Camassia scilloides", 0.0}};
  EXPECT_THAT(told(), HasSubstr("The list names no plants of the main layer"));
  result_.plants.front().matrix = true;
  EXPECT_THAT(told(), HasSubstr("Nothing of the main layer was planted"));
}

}  // namespace
}  // namespace tussock
