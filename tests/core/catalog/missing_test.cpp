// SPDX-License-Identifier: MIT
#include "core/catalog/missing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/season_weeks.h"
#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using testing::HasSubstr;

class MissingFrom : public testing::Test {
 protected:
  void plant(const char* name) {
    const Species* species = facts_.find(name);
    planted_.push_back({species, species->usualLayer(), 1.0});
  }
  [[nodiscard]] std::vector<Missing> missing() const {
    return missingFrom(figuresOf(planted_), settings_);
  }
  [[nodiscard]] std::optional<Missing> first(Lack lack) const {
    for (const Missing& one : missing())
      if (one.lack == lack) return one;
    return std::nullopt;
  }

  Catalogue facts_ = test::tinyCatalogue();
  std::vector<Portion> planted_;
  Settings settings_;
  std::vector<int> season_ = seasonWeeks(settings_);  // 1 April to 31 October
};

// April to June and August to October leave July.
TEST_F(MissingFrom, AGapInJulyIsNamedByItsDays) {
  plant(test::kAlexanders);
  plant(test::kAster);
  const auto gap = first(Lack::Flowers);
  ASSERT_TRUE(gap);
  EXPECT_THAT(gap->text, HasSubstr("Nothing is in flower from "));
  EXPECT_THAT(gap->text, HasSubstr("July"));
  ASSERT_TRUE(gap->weeks);
  EXPECT_EQ(gap->weeks->first, weekOf(std::chrono::June / std::chrono::day{30}) + 1);
  EXPECT_EQ(gap->weeks->last, weekOf(std::chrono::August / std::chrono::day{1}) - 1);
}

TEST_F(MissingFrom, TheGapIsBestFilledByWhatFlowersAllThrough) {
  plant(test::kAlexanders);
  plant(test::kAster);
  RankRequest request;
  request.planted = planted_;
  request.season = season_;
  const auto best = bestToFill(*first(Lack::Flowers), rankFor(facts_, request), planted_, 3);
  ASSERT_EQ(best.size(), 3u);
  for (const Ranked& one : best) EXPECT_TRUE(one.species->bloomsInMonth(7));
}

TEST_F(MissingFrom, LayersGrassesAndHosts) {
  plant(test::kAster);
  EXPECT_TRUE(first(Lack::GroundLayer));
  EXPECT_TRUE(first(Lack::Grasses));
  EXPECT_TRUE(first(Lack::HostPlants));
  EXPECT_TRUE(first(Lack::EarlyNectar));
  plant(test::kSedge);
  EXPECT_FALSE(first(Lack::GroundLayer));
  EXPECT_FALSE(first(Lack::Grasses));
}

TEST_F(MissingFrom, AnEmptyListIsNotToldOffForEverything) {
  EXPECT_TRUE(missing().empty());
}

}  // namespace
}  // namespace tussock
