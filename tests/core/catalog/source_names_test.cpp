// SPDX-License-Identifier: MIT
#include "core/catalog/source_names.h"

#include <sstream>

#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"

namespace tussock {
namespace {

TEST(SourceNames, AreReadUpToTheNextEntry) {
  const SourceNames names = readSourceNames(
      "# Heading\nSome **strong** words.\n- **ONE** - First garden,\n  its page.\n- **TWO** - "
      "Second. "
      "**THREE** - Third\n\nMore.");
  EXPECT_EQ(
      names,
      (SourceNames{{"ONE", "First garden, its page."}, {"TWO", "Second."}, {"THREE", "Third"}}));
}

TEST(SourceNames, HaveAShortTitleForALine) {
  EXPECT_EQ(shortTitle("USDA NRCS, The PLANTS Database (plants.usda.gov). US work."),
            "USDA NRCS, The PLANTS Database");
  EXPECT_EQ(shortTitle("N. C. Deno, Seed Germination Theory and Practice and supplements (x)"),
            "N. C. Deno");
  EXPECT_EQ(shortTitle("Cornell Botanic Gardens, wild quinine page."), "Cornell Botanic Gardens");
  for (const auto& [key, explanation] : shippedSourceNames()) {
    EXPECT_FALSE(shortTitle(explanation).empty()) << key;
    EXPECT_LE(shortTitle(explanation).size(), 90u) << key;
  }
}

TEST(SourceNames, ExplainEveryKeyOfTheShippedTable) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  for (const Species& species : facts.species())
    for (const FactSource& source : species.sources) {
      std::istringstream keys(source.keys);
      for (std::string key; keys >> key;)
        EXPECT_TRUE(key == "memory" || shippedSourceNames().contains(key)) << key;
    }
  EXPECT_NE(shippedSourceNames().at("USDA").find("PLANTS Database"), std::string::npos);
}

}  // namespace
}  // namespace tussock
