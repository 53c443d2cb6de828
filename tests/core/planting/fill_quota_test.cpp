// SPDX-License-Identifier: MIT
// Shares after rounding to odd drifts: whatever the list, no species, genus or family is over its
// limit when the drifts are counted.
#include "core/planting/fill_quota.h"

#include <cmath>
#include <map>

#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"
#include "core/planting/fill_choose.h"

namespace tussock {
namespace {

struct Planned {
  std::vector<FillKind> kinds;
  std::vector<PlannedDrift> drifts;
  double area = 0.0, taken = 0.0;
  int all = 0;
};

// `count` species of the catalogue, every so many, on `area` square metres.
Planned plan(std::size_t count, std::size_t step, double area, unsigned seed) {
  static const Catalogue catalogue = readShippedCatalogue().catalogue;
  std::vector<const Species*> species;
  for (std::size_t i = seed; i < catalogue.species().size() && species.size() < count; i += step)
    species.push_back(&catalogue.species()[i]);
  Planned planned;
  planned.kinds = kindsOf(species, Settings());
  planned.area = area;
  StandingPlants standing;
  standing.ofKind.assign(planned.kinds.size(), 0.0);
  standing.ofGenus = standing.ofFamily = standing.ofKind;
  const FillLimits limits;
  const Quota quota = quotaFor(planned.kinds, area, standing, limits);
  Chance chance(seed);
  planned.drifts = driftsFor({planned.kinds, quota, standing, area, 0.5, limits}, chance);
  for (const PlannedDrift& drift : planned.drifts) {
    planned.all += drift.count;
    planned.taken += drift.count * planned.kinds[drift.kind].ground;
  }
  return planned;
}

template <class F>
double largest(const Planned& planned, F&& group) {
  std::map<std::size_t, int> sums;
  int most = 0;
  for (const PlannedDrift& drift : planned.drifts)
    most = std::max(most, sums[group(drift)] += drift.count);
  return static_cast<double>(most) / planned.all;
}

// Six species of six genera: a tenth each cannot be, a fifth of a genus can (Santamour 1990). What
// can be kept is not given up with what cannot.
TEST(Limits, AreWidenedOnlyWhereTheyStandInTheWay) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  std::vector<const Species*> six;
  for (const char* name :
       {"Carex muskingumensis", "Symphyotrichum novae-angliae", "Penstemon digitalis",
        "Silphium laciniatum", "Zizia aurea", "Monarda fistulosa"})
    six.push_back(catalogue.find(name));
  const FillLimits usual;
  const FillLimits wider = limitsWithin(kindsOf(six, Settings()), usual);
  EXPECT_GT(wider.speciesShare, 1.0 / 6.0);
  EXPECT_LE(wider.genusShare, usual.genusShare + 1e-9);
  EXPECT_LE(wider.familyShare, 1.2 * usual.familyShare);
  // Three species of one genus are bound to break every limit.
  const auto three = kindsOf(
      {catalogue.find("Symphyotrichum novae-angliae"), catalogue.find("Symphyotrichum laeve"),
       catalogue.find("Symphyotrichum oblongifolium")},
      Settings());
  EXPECT_GE(limitsWithin(three, usual).genusShare, 1.0);
  EXPECT_GE(limitsWithin(three, usual).familyShare, 1.0);
}

// Common practice: large plants are the accents of a bed. From where they come less often, and how
// much, is our own judgement: 1.6 times the spacing in the middle of the list, here 0.75 m.
TEST(Quota, GivesWhatStandsWideNoMoreGroundThanAtTheLimit) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  const auto kinds = kindsOf({catalogue.find("Lindera benzoin"), catalogue.find("Allium cernuum"),
                              catalogue.find("Baptisia alba")},
                             Settings());
  ASSERT_NEAR(kinds[2].spacing, 0.75, 1e-9);
  StandingPlants none;
  none.ofKind = none.ofGenus = none.ofFamily = std::vector<double>(kinds.size(), 0.0);
  FillLimits limits;
  limits.shareMinPlants = 10'000;
  const Quota quota = quotaFor(kinds, 40.0, none, limits);
  EXPECT_NEAR(quota.plants[1], quota.plants[2], 1e-9);
  EXPECT_NEAR(quota.plants[0] * std::pow(kinds[0].spacing, 2.0),
              quota.plants[2] * std::pow(1.6 * kinds[2].spacing, 2.0), 1e-9);
  double ground = 0.0;
  for (std::size_t i = 0; i < kinds.size(); ++i) ground += kinds[i].ground * quota.plants[i];
  EXPECT_NEAR(ground, 40.0, 1e-9);
}

// A tenth each would give the vine, at 2.4 m, three quarters of the bed: the limit of the others
// gives way instead (our own judgement).
TEST(Quota, WidensTheShareOfOthersBeforeOneThatStandsWideTakesTheBed) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  std::vector<const Species*> species{catalogue.find("Clematis virginiana")};
  for (const char* name :
       {"Sorghastrum nutans", "Eryngium yuccifolium", "Lobelia cardinalis", "Monarda fistulosa",
        "Asclepias tuberosa", "Geum triflorum", "Penstemon digitalis", "Zizia aurea",
        "Allium cernuum", "Dalea purpurea"})
    species.push_back(catalogue.find(name));
  const auto kinds = kindsOf(species, Settings());
  StandingPlants none;
  none.ofKind = none.ofGenus = none.ofFamily = std::vector<double>(kinds.size(), 0.0);
  const Quota quota = quotaFor(kinds, 200.0, none, FillLimits());
  ASSERT_TRUE(quota.limited);
  EXPECT_LT(kinds[0].ground * quota.plants[0] / 200.0, 0.25);
  EXPECT_LE(quota.plants[0], mostSharesOf(kinds)[0] * quota.total + 1e-6);
  for (std::size_t i = 1; i < kinds.size(); ++i)
    EXPECT_LT(quota.plants[i] / quota.total, 0.125) << kinds[i].species->botanicalName;
}

class Shares : public testing::TestWithParam<unsigned> {};

TEST_P(Shares, AreKeptAfterRounding) {
  for (const double area : {30.0, 60.0, 300.0}) {
    const Planned planned = plan(26, 7, area, GetParam());
    if (planned.all < FillLimits().shareMinPlants || !sharesCanBeKept(planned.kinds, FillLimits()))
      continue;
    const auto kind = [](const PlannedDrift& drift) { return drift.kind; };
    EXPECT_LE(largest(planned, kind), 0.10) << area;
    EXPECT_LE(largest(planned, [&](auto& d) { return planned.kinds[d.kind].genus; }), 0.20);
    EXPECT_LE(largest(planned, [&](auto& d) { return planned.kinds[d.kind].family; }), 0.30);
    EXPECT_NEAR(planned.taken / area, 1.0, 0.06);
    for (const PlannedDrift& drift : planned.drifts) EXPECT_EQ(drift.count % 2, 1);
  }
}
INSTANTIATE_TEST_SUITE_P(Lists, Shares, testing::Range(0u, 7u));

// By arithmetic: 2 rows, 1 spacing apart, of plants each 0.9 take 2 x 0.866 / (0.9 x 2) of a band 2
// spacings wide; 3 rows would stand 0.5 apart, so 2 sqrt(0.81 - 0.25) along the row.
TEST(Band, TakesWholeRows) {
  EXPECT_NEAR(takenInBand(2.0), 2 * 0.866 / (0.9 * 2.0), 1e-3);
  EXPECT_NEAR(takenInBand(2.5), 3 * 0.866 / (2.0 * std::sqrt(0.81 - 0.5625) * 2.5), 1e-3);
  EXPECT_LT(takenInBand(1.0 / 0.45), 0.93) << "45 cm in a strip of a metre";
  EXPECT_GT(takenInBand(1.0 / 0.4), 0.96);
  EXPECT_EQ(takenInBand(8.0), 1.0);
}

// A tenth each: of 120 plants a species may have twelve, so eleven in an odd group, and eleven
// species at least; where 900 others stand in the yard it may have all, and what the bed's size
// asks for decides.
TEST(Species, ABedOfALargeYardNeedsFewer) {
  EXPECT_GE(speciesFor(120, 0, 0.0, FillLimits()), 11u);
  EXPECT_LE(speciesFor(120, 900, 0.0, FillLimits()), 6u);
}

// Nine species at a tenth each come to nine tenths; ten of one family to three.
TEST(Shares, CanBeKeptOnlyWhereTheyComeToTheWhole) {
  std::vector<FillKind> kinds(10);
  for (std::size_t i = 0; i < kinds.size(); ++i) kinds[i].genus = kinds[i].family = i;
  EXPECT_TRUE(sharesCanBeKept(kinds, FillLimits()));
  for (FillKind& kind : kinds) kind.family = 0;
  EXPECT_FALSE(sharesCanBeKept(kinds, FillLimits()));
  kinds.resize(9);
  for (std::size_t i = 0; i < kinds.size(); ++i) kinds[i].family = i;
  EXPECT_FALSE(sharesCanBeKept(kinds, FillLimits()));
}

// Of 48 plants a tenth is 4.8, that is 4: eleven species come to 44, twelve to 48.
TEST(Shares, ComeInWholePlants) {
  std::vector<FillKind> kinds(11);
  for (std::size_t i = 0; i < kinds.size(); ++i) kinds[i].genus = kinds[i].family = i;
  EXPECT_TRUE(sharesCanBeKept(kinds, FillLimits()));
  EXPECT_FALSE(sharesCanBeKept(kinds, FillLimits(), 48));
  kinds.emplace_back().genus = kinds.back().family = 11;
  EXPECT_TRUE(sharesCanBeKept(kinds, FillLimits(), 48));
}

}  // namespace
}  // namespace tussock
