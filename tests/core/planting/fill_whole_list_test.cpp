// SPDX-License-Identifier: MIT
// A plant list of one's own: all of it is planted as far as the bed holds it in groups.
#include <map>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/geometry/lattice.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

constexpr auto kSixSquareMetres = "POLYGON ((0 0, 3 0, 3 2, 0 2, 0 0))";

std::set<std::string> speciesIn(const test::Filled& bed) {
  std::set<std::string> species;
  for (const Drift& drift : bed.after.drifts)
    if (drift.layer == Layer::Main) species.insert(drift.species);
  return species;
}

test::Filled seeded(std::string_view outline, int seed, std::vector<ListedSpecies> plants) {
  FillRequest request;
  request.seed = seed;
  request.plants = std::move(plants);
  return test::filled(test::YardBuilder().bed("Bed", std::string(outline)).viewing("S").build(),
                      request);
}

std::vector<ListedSpecies> fifteen() {
  std::vector<ListedSpecies> plants;
  for (const char* name :
       {"Schizachyrium scoparium", "Monarda fistulosa", "Coreopsis lanceolata", "Echinacea pallida",
        "Asclepias tuberosa", "Sporobolus heterolepis", "Penstemon digitalis", "Solidago speciosa",
        "Symphyotrichum laeve", "Bouteloua curtipendula", "Allium cernuum", "Dalea purpurea",
        "Agastache foeniculum", "Coreopsis verticillata", "Echinacea purpurea"})
    plants.push_back({name, 0.0});
  return plants;
}

TEST(List, IsSaidToBeSmallForALongList) {
  EXPECT_THAT(seeded(kSixSquareMetres, 1, fifteen()).result.notes,
              Contains(HasSubstr("small for")));
  const test::Filled large = seeded("POLYGON ((0 0, 9 0, 9 5, 0 5, 0 0))", 1, fifteen());
  EXPECT_THAT(large.result.notes, Not(Contains(HasSubstr("small for"))));
}

TEST(List, IsPlantedWholeWithAnySeedWhereTheBedIsLargeEnough) {
  for (const int seed : {1, 2, 3, 4, 5, 6}) {
    const test::Filled bed = seeded("POLYGON ((0 0, 5 0, 5 3, 0 3, 0 0))", seed, fifteen());
    EXPECT_EQ(speciesIn(bed).size(), 15u) << seed;
    EXPECT_EQ(bed.broken(), 0) << seed;
  }
}

// Two of the three are disease-prone, so that something is found whatever is done: no drift changes
// hands for it, and no plant is given up, at the cost of what was asked.
TEST(List, IsPlantedInTheSharesAskedForWithoutHoles) {
  const std::vector<std::vector<ListedSpecies>> lists{{{"Rudbeckia fulgida", 0.41},
                                                       {"Echinacea purpurea", 0.35},
                                                       {"Schizachyrium scoparium", 0.24}},
                                                      {{"Echinacea purpurea", 0.5},
                                                       {"Schizachyrium scoparium", 0.1},
                                                       {"Penstemon digitalis", 0.4}}};
  for (const auto& list : lists) {
    const test::Filled bed = seeded("POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))", 1, list);
    const Bed& ground = *bed.after.beds.begin();
    double all = 0.0, taken = 0.0;
    std::map<std::string, double> counts;
    for (const Drift& drift : bed.after.drifts) {
      const auto plants = static_cast<double>(drift.plants.size());
      all += plants, counts[drift.species] += plants;
      taken += plants * triangularGround(drift.spacing).squareMetres();
    }
    for (const ListedSpecies& listed : list)
      EXPECT_NEAR(counts[listed.species] / all, listed.share, 0.05) << listed.species;
    EXPECT_GE(taken / areaOf(ground.outline).squareMetres(), 0.93);
  }
}

}  // namespace
}  // namespace tussock
