// SPDX-License-Identifier: MIT
#include "app/panels/bench_filter.h"

#include <gmock/gmock.h>

#include "tests/app/open_yard.h"

namespace tussock {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

class BenchFilterTest : public testing::Test {
 protected:
  BenchFilterTest() {
    filter_.fits.emplace();
    filter_.fits->place.moisture = Moisture::Medium;
    filter_.fits->place.sunHours = 8.0;
  }
  [[nodiscard]] std::vector<std::string> shown() const {
    std::vector<std::string> names;
    for (const Species* one : shownSpecies(facts_, filter_)) names.push_back(one->botanicalName);
    return names;
  }

  Catalogue facts_ = test::fewSpecies();
  BenchFilter filter_;
};

TEST_F(BenchFilterTest, WhatSuitsComesInOrderOfFit) {
  EXPECT_THAT(shown(), ElementsAre("Echinacea purpurea", "Symphyotrichum laeve"));
  const Species* aster = facts_.find("Symphyotrichum laeve");
  filter_.fits->place.state = "OH";
  Species native = *aster;
  native.nativeStates = {"OH"};
  Species stranger = *facts_.find("Echinacea purpurea");
  facts_ = Catalogue({native, stranger});
  EXPECT_THAT(shown(), ElementsAre("Symphyotrichum laeve", "Echinacea purpurea"));
}

TEST_F(BenchFilterTest, TellsWhyWhatWasTypedIsLeftOut) {
  filter_.words = "bluestem";
  EXPECT_THAT(shown(), IsEmpty());
  const auto left = leftOut(facts_, filter_, 3);
  ASSERT_EQ(left.size(), 1u);
  EXPECT_EQ(left.front().species->botanicalName, "Schizachyrium scoparium");
  EXPECT_THAT(left.front().whyNot, ElementsAre("the ground is medium; asks for dry"));
}

TEST_F(BenchFilterTest, LeavesNothingOutWithoutAPlace) {
  filter_.fits.reset();
  filter_.words = "bluestem";
  EXPECT_EQ(shown().size(), 1u);
  EXPECT_THAT(leftOut(facts_, filter_, 3), IsEmpty());
}

}  // namespace
}  // namespace tussock
