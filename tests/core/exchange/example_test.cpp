// SPDX-License-Identifier: MIT
#include "core/exchange/example.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/checks/registry.h"
#include "core/geometry/lattice.h"
#include "core/geometry/tolerance.h"
#include "core/planting/edit_drift.h"
#include "core/planting/one_piece.h"
#include "core/store/sha256.h"

namespace tussock {
namespace {

class ExampleYard : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    facts_ = new Catalogue(readShippedCatalogue().catalogue);
    example_ = new Example(buildExample(*facts_));
  }
  static void TearDownTestSuite() {
    delete example_;
    delete facts_;
  }
  static const Yard& yard() { return example_->yard; }

  inline static Catalogue* facts_ = nullptr;
  inline static Example* example_ = nullptr;
};

TEST_F(ExampleYard, HasWhatAForecourtHas) {
  EXPECT_EQ(yard().lotLines.size(), 1U);
  EXPECT_EQ(yard().beds.size(), 3U);
  EXPECT_EQ(yard().buildings.size(), 2U);
  EXPECT_EQ(yard().barriers.size(), 1U);
  EXPECT_GE(yard().trees.size(), 3U);
  EXPECT_GE(yard().pavings.size(), 4U);
  EXPECT_EQ(yard().waterPoints.size(), 1U);
}

TEST_F(ExampleYard, HasAtLeastFourteenSpeciesThatTheFactsKnow) {
  std::set<std::string> species;
  for (const Drift& drift : yard().drifts) {
    species.insert(drift.species);
    EXPECT_NE(facts_->find(drift.species), nullptr) << drift.species;
    EXPECT_FALSE(codeOf(yard(), drift.species).empty());
  }
  EXPECT_GE(species.size(), 14U);
}

TEST_F(ExampleYard, EveryDriftIsOddInOnePieceAndInsideItsBed) {
  for (const Drift& drift : yard().drifts) {
    SCOPED_TRACE(drift.species);
    EXPECT_EQ(drift.plants.size() % 2, 1U);
    EXPECT_TRUE(inOnePiece(positionsOf(drift), drift.spacing));
    const Bed& bed = *yard().beds.find(drift.bed);
    for (const Plant& plant : drift.plants) {
      EXPECT_TRUE(contains(bed.outline, plant.at));
      EXPECT_TRUE(
          atLeast(Length::metres(distanceToEdge(bed.outline, plant.at)), drift.spacing / 2.0));
    }
  }
}

TEST_F(ExampleYard, FillsItsBeds) {
  for (const Bed& bed : yard().beds) {
    SCOPED_TRACE(bed.name);
    Area taken;
    for (const Drift* drift : driftsIn(yard(), bed.id))
      taken += triangularGround(drift->spacing) * static_cast<double>(drift->plants.size());
    EXPECT_GE(taken / areaOf(bed.outline), 0.93);
    EXPECT_LE(taken / areaOf(bed.outline), 1.05);
  }
}

TEST_F(ExampleYard, HasASmallNumberOfFindingsToMend) {
  const auto sun = computeSunMap(yard(), seasonRequest(yard()));
  const auto findings = runChecks({yard(), *facts_, &*sun});
  ASSERT_TRUE(findings.has_value());
  EXPECT_GE(findings->size(), 1U);
  EXPECT_LE(findings->size(), 12U);
  for (const Finding& finding : *findings) {
    EXPECT_NE(finding.check, CheckId::Spacing);
    EXPECT_NE(finding.check, CheckId::SetBack);
    EXPECT_NE(finding.check, CheckId::OddCount);
    EXPECT_NE(finding.check, CheckId::Obstructed);
  }
}

TEST_F(ExampleYard, ThePhotoIsThePictureThatComesWithIt) {
  ASSERT_EQ(yard().photos.size(), 1U);
  EXPECT_EQ(yard().photos.begin()->contentHash, sha256(example_->picture));
  EXPECT_LT(example_->picture.size(), 1'500'000U);
}

TEST_F(ExampleYard, IsTheSameEveryTime) {
  EXPECT_EQ(buildExample(*facts_).yard, yard());
}

}  // namespace
}  // namespace tussock
