// SPDX-License-Identifier: MIT
// A bed on a slope is filled by distances along its ground: plan area / cos(slope), as in
// slope_test.cpp.
#include <cmath>

#include <gtest/gtest.h>

#include "core/geometry/lattice.h"
#include "core/planting/laid_flat.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

// Rise over run 1 : 2, facing south-east; the bed lies away from the origin.
Yard slopingYard() {
  test::YardBuilder builder;
  builder.bed("Bank", "POLYGON ((20 10, 27 10, 27 15, 20 15, 20 10))").viewing("S");
  builder.step({23, 12}, 0.3);
  Yard yard = builder.build();
  yard.settings.slope = Angle::radians(std::atan(0.5));
  yard.settings.aspect = Angle::degrees(135);
  return yard;
}

// Invented figures, so that no fact of a real plant moves the result: fourteen kinds of 30 to 45 cm
// spacing, each a family of its own, that flower one after another.
Catalogue ownSpecies() {
  std::vector<Species> all;
  for (int i = 0; i < 14; ++i) {
    Species one;
    one.genus = std::string("Genus") + static_cast<char>('a' + i);
    one.botanicalName = one.genus + " exemplaris";
    one.commonName = "plant " + std::to_string(i + 1);
    one.family = one.genus + "aceae";
    one.habit = i % 4 == 0 ? Habit::Grass : Habit::Forb;
    one.heightLow = one.heightHigh = Length::metres(0.4 + 0.06 * i);
    one.spread = one.spacing = Length::metres(i % 2 == 0 ? 0.3 : 0.45);
    one.bloomFirstMonth = 4 + i % 6;
    one.bloomLastMonth = 5 + i % 6;
    one.flowerColour = Rgb{180, 60, 140};
    all.push_back(std::move(one));
  }
  return Catalogue(std::move(all));
}

std::vector<ListedSpecies> listed(const Catalogue& facts) {
  std::vector<ListedSpecies> list;
  for (const Species& species : facts.species()) list.push_back({species.botanicalName, 0.0});
  return list;
}

TEST(FillSlope, KeepsDistancesAndDensityAlongTheGround) {
  const Catalogue facts = ownSpecies();
  FillRequest request;
  request.plants = listed(facts);
  const test::Filled bank = test::filled(slopingYard(), request, facts);
  EXPECT_EQ(bank.broken(), 0);
  const Slope slope(bank.after.settings);
  double taken = 0.0;
  for (const Drift& drift : bank.after.drifts) {
    if (drift.layer != Layer::Main) continue;
    taken +=
        static_cast<double>(drift.plants.size()) * triangularGround(drift.spacing).squareMetres();
    for (const Plant& a : drift.plants)
      for (const Plant& b : drift.plants)
        if (a.id != b.id) {
          EXPECT_GE(slope.distance(a.at, b.at), 0.85 * drift.spacing.metres() - 1e-3);
        }
  }
  const double ground = 35.0 * std::sqrt(1.25);  // 1 : 2
  EXPECT_NEAR(taken / ground, 0.98, 0.05);
}

TEST(FillSlope, LaidFlatIsAsLargeAsTheGroundIs) {
  const Yard flat = laidFlat(slopingYard());
  EXPECT_NEAR(areaOf(flat.beds.begin()->outline).squareMetres(), 35.0 * std::sqrt(1.25), 1e-6);
  EXPECT_TRUE(Slope(flat.settings).level());
}

TEST(FillSlope, LevelGroundIsLeftAsItIs) {
  Yard yard = slopingYard();
  yard.settings.slope = Angle();
  EXPECT_EQ(laidFlat(yard), yard);
}

// A bank of 4 by 3 m on the plan, rise over run 3 : 4, has 4 by 3.75 m of ground: as much list.
TEST(FillSlope, AListIsProposedForTheGroundNotThePlan) {
  test::YardBuilder steep, level;
  steep.bed("Bank", "POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0))").viewing("S");
  level.bed("Bed", "POLYGON ((0 0, 4 0, 4 3.75, 0 3.75, 0 0))").viewing("S");
  Yard bank = steep.build();
  const Yard bed = level.build();
  bank.settings.slope = Angle::radians(std::atan(0.75));
  bank.settings.aspect = Angle::degrees(180);
  const auto listFor = [](const Yard& yard) {
    return proposeList(yard, test::shippedFacts(), nullptr, yard.beds.begin()->id, 1, 0.5);
  };
  EXPECT_EQ(listFor(bank), listFor(bed));
  EXPECT_GT(listFor(bed).size(), 5u);
}

}  // namespace
}  // namespace tussock
