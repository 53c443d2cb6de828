// SPDX-License-Identifier: MIT
#include "core/checks/kept_findings.h"

#include <gtest/gtest.h>

#include "tests/support/faulty_yard.h"

namespace tussock {
namespace {

using namespace test;

// After each edit the kept findings must be those of a fresh run.
class KeptFindingsTest : public testing::Test {
 protected:
  void expectFresh() {
    const auto kept = findings.run(yard, facts, sun);
    EXPECT_EQ(kept, runChecks({yard, facts, sun.get()}));
  }
  void moveDrift(std::size_t number, Point step) {
    Drift drift = *(yard.drifts.begin() + static_cast<std::ptrdiff_t>(number));
    for (Plant& plant : drift.plants) plant.at += step;
    yard.drifts = yard.drifts.with(drift);
  }

  Yard yard = faultyYard().build();
  Catalogue facts = tinyCatalogue();
  std::shared_ptr<const SunMap> sun = std::make_shared<const SunMap>(evenSun(5.0));
  KeptFindings findings;
};

TEST_F(KeptFindingsTest, AreTheSameTwice) {
  expectFresh();
  expectFresh();
}

TEST_F(KeptFindingsTest, FollowADriftThatMoves) {
  expectFresh();
  moveDrift(1, {0.0, 3.0});
  expectFresh();
  moveDrift(0, {4.0, 0.0});
  expectFresh();
}

TEST_F(KeptFindingsTest, FollowADriftIntoAnotherBed) {
  expectFresh();
  Drift drift = *yard.drifts.begin();
  drift.bed = std::next(yard.beds.begin())->id;
  yard.drifts = yard.drifts.with(drift);
  expectFresh();
}

TEST_F(KeptFindingsTest, ForgetWhatIsRemoved) {
  expectFresh();
  yard.drifts = yard.drifts.without(yard.drifts.begin()->id);
  expectFresh();
  yard.beds = yard.beds.without(yard.beds.begin()->id);
  expectFresh();
}

TEST_F(KeptFindingsTest, FollowObstaclesSettingsAndSun) {
  expectFresh();
  Paving paving = *yard.pavings.begin();
  paving.outline = moved(paving.outline, {-10.0, 1.0});
  yard.pavings = yard.pavings.with(paving);
  expectFresh();
  yard.settings.thresholds.push_back({"spacing_factor", 1.0});
  expectFresh();
  sun = std::make_shared<const SunMap>(evenSun(8.0));
  expectFresh();
  sun.reset();
  expectFresh();
}

TEST_F(KeptFindingsTest, SurviveAStop) {
  expectFresh();
  moveDrift(1, {0.0, 3.0});
  std::stop_source source;
  source.request_stop();
  EXPECT_FALSE(findings.run(yard, facts, sun, source.get_token()).has_value());
  expectFresh();
}

}  // namespace
}  // namespace tussock
