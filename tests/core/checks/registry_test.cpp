// SPDX-License-Identifier: MIT
#include "core/checks/registry.h"

#include <algorithm>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/checks/thresholds.h"
#include "tests/support/faulty_yard.h"

namespace tussock {
namespace {

using namespace test;

class FaultyYard : public testing::Test {
 protected:
  [[nodiscard]] std::vector<Finding> findings() const {
    return runChecks({yard, facts, &sun}).value();
  }
  Yard yard = faultyYard().build();
  Catalogue facts = tinyCatalogue();
  SunMap sun = evenSun(5.0);
};

TEST(Registry, EnumWordsAndTableAgree) {
  const auto& words = EnumWords<CheckId>::values;
  ASSERT_EQ(allChecks().size(), words.size());
  std::set<std::string_view> titles;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const CheckEntry& entry = allChecks()[i];
    EXPECT_EQ(entry.id, words[i].first);
    EXPECT_EQ(fromWord<CheckId>(words[i].second), entry.id);
    EXPECT_TRUE(titles.insert(entry.title).second) << entry.title;
    EXPECT_TRUE(entry.ofBed != nullptr || entry.ofYard != nullptr);
  }
}

TEST_F(FaultyYard, IsFaultyInEveryWay) {
  std::set<CheckId> seen;
  for (const Finding& finding : findings()) seen.insert(finding.check);
  for (const auto& [check, word] : EnumWords<CheckId>::values)
    EXPECT_TRUE(seen.contains(check)) << word;
}

TEST_F(FaultyYard, KeysAreUniqueWithinARun) {
  std::set<std::string> keys;
  for (const Finding& finding : findings())
    EXPECT_TRUE(keys.insert(keyOf(finding)).second) << keyOf(finding);
}

TEST_F(FaultyYard, KeysStayWhenOnlyTheMeasureChanges) {
  const auto before = runCheck(CheckId::Spacing, {yard, facts, &sun});
  Drift drift = *yard.drifts.find(*idIf<Drift>(before.at(0).subjects.front()));
  drift.plants.back().at += {0.01, 0.0};
  yard.drifts = yard.drifts.with(drift);
  const auto after = runCheck(CheckId::Spacing, {yard, facts, &sun});
  EXPECT_EQ(keyOf(before.at(0)), keyOf(after.at(0)));
}

TEST_F(FaultyYard, AlertsComeFirstThenByCheck) {
  const auto found = findings();
  EXPECT_EQ(found.front().severity, Severity::Alert);
  EXPECT_TRUE(std::is_sorted(found.begin(), found.end(), [](const Finding& a, const Finding& b) {
    return a.severity != b.severity ? a.severity > b.severity : a.check < b.check;
  }));
}

TEST_F(FaultyYard, EveryFindingNamesAThresholdAndSomethingToShow) {
  for (const Finding& finding : findings()) {
    if (finding.check != CheckId::Pieces) {  // which goes by the rules of placing
      EXPECT_NE(findThreshold(finding.thresholdId), nullptr) << keyOf(finding);
    }
    const bool ofYard = finding.check == CheckId::BloomGap && finding.subjects.empty();
    EXPECT_EQ(finding.place.empty(), ofYard) << keyOf(finding);
  }
}

TEST_F(FaultyYard, AnyFindingCanBeAccepted) {
  for (const Finding& finding : findings()) {
    EXPECT_EQ(acceptanceOf(yard, finding), nullptr);
    const Yard accepted = faultyYard().accept(keyOf(finding), "It is meant so.").build();
    const Acceptance* acceptance = acceptanceOf(accepted, finding);
    ASSERT_NE(acceptance, nullptr);
    EXPECT_EQ(acceptance->reason, "It is meant so.");
    int others = 0;
    for (const Finding& other : findings())
      others += other != finding && acceptanceOf(accepted, other) != nullptr ? 1 : 0;
    EXPECT_EQ(others, 0);
  }
}

TEST_F(FaultyYard, StoppedChecksGiveNothing) {
  std::stop_source source;
  source.request_stop();
  EXPECT_FALSE(runChecks({yard, facts, &sun}, source.get_token()).has_value());
}

TEST(RunChecks, FindsNothingInAnEmptyYard) {
  EXPECT_TRUE(runChecks({Yard{}, tinyCatalogue(), nullptr}).value().empty());
}

}  // namespace
}  // namespace tussock
