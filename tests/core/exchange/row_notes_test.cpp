// SPDX-License-Identifier: MIT
#include "core/exchange/row_notes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/families.h"
#include "core/catalog/resources.h"
#include "core/exchange/plant_csv.h"
#include "tests/support/plant_text.h"
#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::EndsWith;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

// Week 20 is 14 to 20 May (week 1 being 1 to 7 January).
TEST(RowNotes, OfOneKindAreToldTogetherWithTheirLines) {
  const BroughtIn given = bringInPlants(
      "botanical_name,bloom_start_month,bloom_end_month,bloom_start_week\n"
      "Zizia aurea,3,6,20\nMonarda fistulosa,6,9,20\nRudbeckia fulgida,7,9,20\n"
      "Liatris spicata,7,9,20\n",
      "mine.csv", test::tinyCatalogue(), {});
  ASSERT_EQ(given.notes.size(), 4u);
  EXPECT_THAT(toldTogether(given.notes, 4),
              ElementsAre(AllOf(StartsWith("mine.csv, line 2, bloom_start_week: week 20 lies"),
                                EndsWith(" A week outside of its month is in bloom_start_week also "
                                         "on lines 3, 4 and 5."))));
  EXPECT_THAT(toldTogether(given.notes, 2),
              ElementsAre(EndsWith("also on lines 3, 4 and 1 more up to line 5.")));
}

TEST(RowNotes, OfOtherKindsAndColumnsStandAlone) {
  const std::vector<RowNote> notes{{RowNote::Of::Week, 2, "bloom_start_week", "A."},
                                   {RowNote::Of::Synonym, 3, "botanical_name", "B."},
                                   {RowNote::Of::Week, 4, "bloom_end_week", "C."},
                                   {RowNote::Of::Synonym, 9, "botanical_name", "D."}};
  EXPECT_THAT(toldTogether(notes, 5),
              ElementsAre("A.", "B. A synonym is used also on line 9.", "C."));
  EXPECT_THAT(toldTogether({}, 5), IsEmpty());
}

// Cimicifuga racemosa (L.) Nutt. is Actaea racemosa L. (USDA PLANTS: ACRA7).
TEST(RowNotes, TellsWhichPlantTheValuesOfASynonymAreFor) {
  const Catalogue published = readShippedCatalogue().catalogue;
  const BroughtIn given =
      bringInPlants("botanical_name,spacing_cm\nmonarda Fistulosa,66\nCimicifuga racemosa,77\n",
                    "mine.csv", published, {});
  EXPECT_TRUE(given.errors.empty());
  EXPECT_EQ(given.taken.size(), 2u);
  ASSERT_EQ(given.notes.size(), 1u);
  EXPECT_EQ(
      given.notes.front().text,
      "mine.csv, line 3: Cimicifuga racemosa is a synonym of Actaea racemosa; your values are "
      "for that plant.");
}

// Hosta is in the Asparagaceae (APG IV); no Hosta is published here, so nothing tells that the
// Rosaceae are wrong.
TEST(RowNotes, AFamilyThatCannotBeCheckedIsTold) {
  const std::string csv =
      test::plantHeader() +
      test::plantRow(
          {{"botanical_name", "Hosta nova"}, {"genus", "Hosta"}, {"family", "Rosaceae"}}) +
      test::plantRow({{"botanical_name", "Monarda didyma"}, {"usda_symbol", "MODI"}});
  const BroughtIn given = bringInPlants(csv, "mine.csv", test::tinyCatalogue(), {});
  EXPECT_EQ(given.taken.size(), 2u);
  ASSERT_EQ(given.notes.size(), 1u);
  EXPECT_EQ(given.notes.front().text,
            "mine.csv, line 2, family: whether Hosta is in the Rosaceae was not checked, for the "
            "genus is not known here.");
}

// International Code of Nomenclature (Shenzhen Code, 2018), articles 18.1 and 18.5: the name of a
// family ends in -aceae, but for eight that are kept beside theirs.
TEST(RowNotes, WhatIsNoWellFormedNameOfAFamilyIsRefusedWhateverTheGenus) {
  for (const char* kept : {"Compositae", "Cruciferae", "Gramineae", "Guttiferae", "Labiatae",
                           "Leguminosae", "Palmae", "Umbelliferae"})
    EXPECT_TRUE(isPlantFamily(kept)) << kept;
  for (const char* none : {"Hostaidae", "Hostales", "Hostoideae", "Hosteae", "hostaceae"}) {
    const std::string csv =
        test::plantHeader() +
        test::plantRow({{"botanical_name", "Hosta nova"}, {"genus", "Hosta"}, {"family", none}});
    const BroughtIn given = bringInPlants(csv, "mine.csv", test::tinyCatalogue(), {});
    EXPECT_THAT(given.taken, IsEmpty()) << none;
    ASSERT_EQ(given.errors.size(), 1u) << none;
    EXPECT_EQ(given.errors.front().column, "family");
  }
}

}  // namespace
}  // namespace tussock
