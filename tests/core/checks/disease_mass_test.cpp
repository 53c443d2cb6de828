// SPDX-License-Identifier: MIT
// One block of 15 plants of a species prone to leaf disease is too many together: common practice.
#include <gtest/gtest.h>

#include "core/checks/describe.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

YardBuilder rowOf(const char* species, int count) {
  return YardBuilder().bed("Walk", kSquareBed).drift(species, row(count, 0.4, {1.0, 5.0}));
}

TEST(DiseaseMass, CleanYardHasNone) {
  EXPECT_TRUE(found(CheckId::DiseaseMass, rowOf(kBergamot, 7)).empty());
}

TEST(DiseaseMass, FourteenPass) {
  EXPECT_TRUE(found(CheckId::DiseaseMass, rowOf(kBergamot, 14)).empty());
}

TEST(DiseaseMass, FifteenAreFound) {
  const auto findings = found(CheckId::DiseaseMass, rowOf(kBergamot, 15));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].measured, 15.0);
  EXPECT_EQ(findings[0].about, kBergamot);
  EXPECT_EQ(findings[0].plants.size(), 15U);
}

TEST(DiseaseMass, SixteenAreFound) {
  EXPECT_EQ(found(CheckId::DiseaseMass, rowOf(kBergamot, 16)).at(0).measured, 16.0);
}

// What is recorded of the species goes before the limit for all.
TEST(DiseaseMass, TheSpeciesOwnMassGoesBeforeTheUsualOne) {
  for (const int own : {9, 21}) {
    std::vector<Species> species = tinyCatalogue().species();
    for (Species& one : species)
      if (one.botanicalName == kBergamot) one.diseaseMass = own;
    const Catalogue facts(std::move(species));
    for (const int count : {own - 1, own}) {
      const Yard yard = rowOf(kBergamot, count).build();
      std::size_t masses = 0;
      const std::vector<Finding> all = runChecks({yard, facts, nullptr}).value();
      for (const Finding& finding : all) {
        if (finding.check != CheckId::DiseaseMass) continue;
        ++masses;
        EXPECT_EQ(finding.required, own);
        EXPECT_EQ(describe(finding, yard, facts).limit,
                  "Plants of this species in one mass: " + std::to_string(own) +
                      ". Source: its plant facts.");
      }
      EXPECT_EQ(masses, count >= own ? 1u : 0u) << count << " of " << own;
    }
  }
}

TEST(DiseaseMass, ASpeciesNotProneIsLeftAlone) {
  EXPECT_TRUE(found(CheckId::DiseaseMass, rowOf(kBluestem, 21)).empty());
}

// Two drifts of 9, spaced 0.4: they touch when nearer than 1.3 x 0.4 = 0.52 m.
YardBuilder twoMasses(double apart) {
  return YardBuilder()
      .bed("Walk", kSquareBed)
      .drift(kBergamot, row(9, 0.4, {1.0, 5.0}))
      .drift(kBergamot, row(9, 0.4, {1.0, 5.0 + apart}));
}

TEST(DiseaseMass, DriftsThatTouchAreOneMass) {
  const auto findings = found(CheckId::DiseaseMass, twoMasses(0.5));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].measured, 18.0);
  EXPECT_EQ(findings[0].subjects.size(), 2U);
}

TEST(DiseaseMass, DriftsApartAreTwo) {
  EXPECT_TRUE(found(CheckId::DiseaseMass, twoMasses(0.53)).empty());
}

}  // namespace
}  // namespace tussock
