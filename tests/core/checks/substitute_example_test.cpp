// SPDX-License-Identifier: MIT
// The example yard's beds are full: what is put in place of a species has to fit among the rest.
#include <set>

#include <gtest/gtest.h>

#include "core/catalog/bloom.h"
#include "core/checks/substitute.h"
#include "core/exchange/example.h"

namespace tussock {
namespace {

constexpr double kMillimetre = 0.001;

// The placement rule: 0.85 of the mean of two spacings, within one layer.
void expectItsOwnSpacing(const Drift& drift, const Species& species, const Yard& yard) {
  EXPECT_EQ(drift.species, species.botanicalName);
  EXPECT_EQ(drift.spacing, species.spacing);
  EXPECT_EQ(drift.layer, species.usualLayer());
  EXPECT_EQ(drift.plants.size() % 2, 1u);
  for (const Drift& other : yard.drifts) {
    if (other.layer != drift.layer) continue;
    const double least =
        0.85 * (drift.spacing.metres() + other.spacing.metres()) / 2.0 - kMillimetre;
    for (const Plant& a : drift.plants)
      for (const Plant& b : other.plants)
        if (a.id != b.id) {
          EXPECT_GE(distance(a.at, b.at), least) << drift.species << " and " << other.species;
        }
  }
}

class SubstituteExampleTest : public testing::Test {
 protected:
  void put(const std::string& species, const Species& with) {
    SCOPED_TRACE(species + " -> " + with.botanicalName);
    IdSource ids(largestId(yard_) + 1);
    const Substitution done = substitute(yard_, species, with, ids);
    const Yard after = apply(yard_, done.edit);
    Area ground;
    for (const CountChange& change : done.drifts) {
      const Drift& drift = *after.drifts.find(change.drift);
      EXPECT_EQ(static_cast<int>(drift.plants.size()), change.after);
      expectItsOwnSpacing(drift, with, after);
      ground += groundOf(drift);
    }
    EXPECT_NEAR(ground.squareMetres(), done.groundAfter.squareMetres(), 1e-9);
    changed_ += done.drifts.size();
  }

  Catalogue facts_ = readShippedCatalogue().catalogue;
  Yard yard_ = buildExample(facts_).yard;
  std::size_t changed_ = 0;
};

TEST_F(SubstituteExampleTest, EachChangedDriftTakesTheNewSpacing) {
  std::set<std::string> planted;
  for (const Drift& drift : yard_.drifts) planted.insert(drift.species);
  for (const std::string& species : planted)
    for (const Substitute& one : substitutesFor({yard_, facts_, nullptr}, species, 3))
      put(species, *one.species);
  EXPECT_GT(changed_, planted.size());
}

// Twice the spacing in a full bed, and half of it.
TEST_F(SubstituteExampleTest, AlsoWhereTheSpacingIsFarOther) {
  put("Penstemon digitalis", *facts_.find("Baptisia alba"));
  EXPECT_GT(changed_, 0u);
  for (const Species& with : facts_.species())
    if (with.spacing >= Length::metres(0.9)) put("Penstemon digitalis", with);
}

}  // namespace
}  // namespace tussock
