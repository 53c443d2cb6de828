// SPDX-License-Identifier: MIT
// Detours: where every single change finds more, two after one another may find less.
#include "core/planting/fill_exchange.h"

#include <gtest/gtest.h>

#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

const std::vector<std::string> kBoth{"Dalea purpurea", "Coreopsis lanceolata"};

class Detours : public testing::Test {
 protected:
  // Two drifts of one species. That both are of the other is best; one of each is worst.
  void SetUp() override {
    builder_.bed("Walk", "POLYGON ((0 0, 4 0, 4 4, 0 4, 0 0))");
    for (const double north : {1.0, 3.0}) {
      builder_.drift(kBoth[0], test::row(5, 0.4, {1.0, north}));
      drifts_.push_back(builder_.lastDrift());
    }
    kinds_ = kindsOf({test::shippedFacts().find(kBoth[0]), test::shippedFacts().find(kBoth[1])},
                     Settings());
    for (FillKind& kind : kinds_) kind.spacing = 0.4;
  }
  [[nodiscard]] int changed(const Yard& yard) const {
    int count = 0;
    for (const Id<Drift> id : drifts_) count += yard.drifts.find(id)->species == kBoth[1] ? 1 : 0;
    return count;
  }
  PlantingWorth exchanged(Yard& yard, int detours, double between) {
    const FillJudge judge = [&, between](const Yard& now) {
      const double cost[] = {2.0, between, 0.0};
      return FillVerdict{cost[changed(now)], drifts_};
    };
    const std::function<double(const Yard&)> score = [](const Yard&) { return 0.5; };
    ExchangeTask task{kinds_, judge, score};
    task.mostDetours = detours, task.seed = 7;
    return exchangeSpecies(task, drifts_, yard, WorkWatch({}, std::chrono::seconds(20)));
  }

  test::YardBuilder builder_;
  std::vector<Id<Drift>> drifts_;
  std::vector<FillKind> kinds_;
};

TEST_F(Detours, FindWhatNoSingleChangeDoes) {
  Yard yard = builder_.build();
  EXPECT_GT(exchanged(yard, 0, 3.0).found, 0.0);
  EXPECT_EQ(changed(yard), 0);
  EXPECT_EQ(exchanged(yard, 20, 3.0).found, 0.0);
  EXPECT_EQ(changed(yard), 2);
}

TEST_F(Detours, AreTakenBackWhereNothingBetterFollows) {
  drifts_.pop_back();  // the other may not change: a single change is all there is
  Yard yard = builder_.build();
  const Yard before = yard;
  EXPECT_EQ(exchanged(yard, 20, 3.0).found, 2.0);
  EXPECT_EQ(yard, before);
}

}  // namespace
}  // namespace tussock
