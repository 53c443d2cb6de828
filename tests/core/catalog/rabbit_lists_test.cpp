// SPDX-License-Identifier: MIT
// What rabbits leave, against two of the lists that the table cites, where these name whole genera:
// FIDC, Fiddlehead Creek (fiddleheadcreek.com/bunny-bustin-ny-natives): "Monarda sp., Penstemon
// sp., Iris sp., Anemone sp., Heuchera sp., and Lupinus sp."; KSRE, Kansas State Research and
// Extension (hutchnews.com, 10 February 2015): "aster, ... coreopsis,
// ... iris, ... verbena". Asters are those that were Aster until the genus was split:
// Symphyotrichum and Eurybia (Nesom, Phytologia 77, 1995).
#include <string_view>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/resources.h"
#include "tests/support/fact_source.h"

namespace tussock {
namespace {

struct GenusListed {
  const char* genus;
  const char* key;
};

TEST(RabbitLists, ASpeciesIsLeftWhereTheListNamesItsGenus) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  for (const GenusListed& listed : {GenusListed{"Monarda", "FIDC"},
                                    {"Penstemon", "FIDC"},
                                    {"Iris", "FIDC"},
                                    {"Anemone", "FIDC"},
                                    {"Heuchera", "FIDC"},
                                    {"Lupinus", "FIDC"},
                                    {"Symphyotrichum", "KSRE"},
                                    {"Eurybia", "KSRE"},
                                    {"Verbena", "KSRE"},
                                    {"Coreopsis", "KSRE"},
                                    {"Iris", "KSRE"}}) {
    std::size_t held = 0;
    for (const Species& species : catalogue.species()) {
      if (species.genus != listed.genus) continue;
      ++held;
      EXPECT_EQ(species.rabbitResistant, Answer::Yes) << species.botanicalName;
      EXPECT_THAT(test::sourceOf(species, "rabbit_resistant"), testing::HasSubstr(listed.key))
          << species.botanicalName;
    }
    EXPECT_GT(held, 0u) << listed.genus;
  }
}

}  // namespace
}  // namespace tussock
