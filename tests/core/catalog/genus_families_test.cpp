// SPDX-License-Identifier: MIT
// Genus and family against published lists, one line a genus in tests/data/genus-families.csv with
// where it was read:
// TPL: The Plant List, version 1 (Royal Botanic Gardens, Kew, and Missouri Botanical Garden), as
// the
//   table "theplantlist" of the R package taxize 0.9.100 (Debian r-cran-taxize) gives it.
// MN: MNTaxa, the vascular plants of Minnesota, genera and families as in
//   github.com/stuartWagenius/mnPlas @11c8953, raw/genusFamilyImproved.csv. Its families are older
//   ones in part, so only genera whose family has stayed were taken from it.
// Else the page.
#include <map>

#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/resources.h"
#include "core/catalog/table.h"

namespace tussock {
namespace {

// Both names are right, International Code of Nomenclature, article 18.5.
std::string newName(const std::string& family) {
  if (family == "Compositae") return "Asteraceae";
  return family == "Leguminosae" ? "Fabaceae" : family;
}

std::map<std::string, std::string, std::less<>> publishedFamilies() {
  const Table table = readTable(readFile(std::string(TUSSOCK_TEST_DATA) + "/genus-families.csv"));
  std::map<std::string, std::string, std::less<>> families;
  for (const TableRow& row : table.rows)
    if (row.cells.size() == 3 && !row.cells[2].empty())
      families.emplace(row.cells[0], newName(row.cells[1]));
  return families;
}

TEST(GenusFamilies, AreThoseOfPublishedLists) {
  const auto families = publishedFamilies();
  const Catalogue facts = readShippedCatalogue().catalogue;
  ASSERT_FALSE(facts.species().empty());
  for (const Species& species : facts.species()) {
    EXPECT_EQ(species.genus, genusOf(species.botanicalName));
    const auto at = families.find(species.genus);
    if (at == families.end())
      ADD_FAILURE() << "no published family is noted for " << species.genus;
    else
      EXPECT_EQ(species.family, at->second) << species.botanicalName;
  }
}

}  // namespace
}  // namespace tussock
