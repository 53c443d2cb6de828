// SPDX-License-Identifier: MIT
#include "core/exchange/plant_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/edit_plants.h"
#include "core/catalog/resources.h"
#include "core/catalog/species_row.h"
#include "tests/support/plant_text.h"
#include "tests/support/tiny_catalogue.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

OwnPlantsReading read(std::string_view csv) {
  static const Catalogue published = test::tinyCatalogue();
  return readOwnPlants(csv, "mine.csv", published);
}

std::vector<std::string> textsOf(const std::vector<CatalogueError>& errors) {
  std::vector<std::string> texts;
  for (const CatalogueError& error : errors) texts.push_back(error.text());
  return texts;
}

TEST(OwnPlantsCsv, TakesValuesThatGoBeforePublishedOnes) {
  const OwnPlantsReading reading =
      read("botanical_name,spacing_cm,notes\nMonarda fistulosa,60,by the gate\n");
  EXPECT_THAT(textsOf(reading.errors), IsEmpty());
  ASSERT_EQ(reading.plants.size(), 1u);
  EXPECT_THAT(reading.plants.front().facts,
              ElementsAre(OwnFact{"notes", "by the gate"}, OwnFact{"spacing_cm", "60"}));
}

TEST(OwnPlantsCsv, AnotherFormOfAPublishedNameIsThatPlant) {
  const Catalogue published = readShippedCatalogue().catalogue;
  const OwnPlantsReading reading = readOwnPlants(
      "botanical_name,notes\nAster laevis,a\nechinacea purpurea,b\nMonarda  fistulosa,c\n"
      "wild bergamot,d\nSymphyotrichum laeve,e\n",
      "mine.csv", published);
  std::vector<std::string> names;
  for (const OwnSpecies& one : reading.plants) names.push_back(one.botanicalName);
  EXPECT_THAT(names,
              ElementsAre("Echinacea purpurea", "Monarda fistulosa", "Symphyotrichum laeve"));
  EXPECT_THAT(textsOf(reading.errors),
              testing::Contains(HasSubstr("line 6, botanical_name: 'Symphyotrichum laeve' is not a "
                                          "name of its own, for an earlier row has it")));
}

// Aster laevis L. is the basionym of Symphyotrichum laeve (USDA PLANTS: SYLA3).
TEST(OwnPlantsCsv, AnOlderNameMayComeWithItsOwnGenus) {
  const Catalogue published = readShippedCatalogue().catalogue;
  const auto reading = [&](const char* genus) {
    return readOwnPlants(
        std::string("botanical_name,genus,notes\nAster laevis,") + genus + ",by the gate\n",
        "mine.csv", published);
  };
  const OwnPlantsReading older = reading("Aster");
  EXPECT_THAT(textsOf(older.errors), IsEmpty());
  ASSERT_EQ(older.plants.size(), 1u);
  EXPECT_EQ(older.plants.front().botanicalName, "Symphyotrichum laeve");
  EXPECT_THAT(older.plants.front().facts, ElementsAre(OwnFact{"notes", "by the gate"}));
  EXPECT_TRUE(reading("Symphyotrichum").errors.empty());
  EXPECT_THAT(textsOf(reading("Solidago").errors),
              ElementsAre(HasSubstr("line 2, genus: 'Solidago' is not the first word of")));
}

// RFC 4180 ends lines with CR LF; old programs for the Macintosh wrote the CR alone.
TEST(OwnPlantsCsv, LinesAreCountedWhereACarriageReturnAloneEndsThem) {
  const OwnPlantsReading reading =
      read("botanical_name,spacing_cm\rMonarda fistulosa,60\r\rZizia aurea,wide\r");
  EXPECT_EQ(reading.lines, std::vector<std::size_t>{2});
  EXPECT_THAT(textsOf(reading.errors), ElementsAre(HasSubstr("line 4, spacing_cm: 'wide'")));
  EXPECT_THAT(textsOf(read("\r\rbotanical_name;notes\rMonarda fistulosa;a\r").errors),
              ElementsAre(HasSubstr("mine.csv, line 3: ")));
}

TEST(OwnPlantsCsv, RowsThatSayNothingNewAreCounted) {
  const BroughtIn read = bringInPlants(
      "botanical_name,spacing_cm,family\nMonarda fistulosa,,\nZizia aurea,,Apiaceae\n"
      "Liatris spicata,66,\n",
      "more.csv", test::tinyCatalogue(), {});
  EXPECT_THAT(textsOf(read.errors), IsEmpty());
  EXPECT_EQ(read.taken.size(), 1u);
  EXPECT_EQ(read.rowsWithoutNews, 2u);
}

TEST(OwnPlantsCsv, ANewPlantMustBeWhole) {
  EXPECT_EQ(read(test::plantHeader() + test::plantRow({{"botanical_name", "Monarda didyma"}}))
                .plants.size(),
            1u);
  const OwnPlantsReading reading = read("botanical_name,spacing_cm\nMonarda didyma,60\n");
  EXPECT_TRUE(reading.plants.empty());
  EXPECT_THAT(textsOf(reading.errors),
              testing::Contains(HasSubstr("mine.csv, line 1, family: a column of this name")));
}

// A table of hundreds of new plants that lacks a column has one fault, not hundreds.
TEST(OwnPlantsCsv, AColumnThatIsWantingIsToldOnceForTheTable) {
  std::string csv = "botanical_name,spacing_cm\nMonarda fistulosa,60\n";
  for (int i = 0; i < 300; ++i) csv += "Monarda nova" + std::to_string(i) + ",60\n";
  csv += "Monarda lata,wide\n";
  const OwnPlantsReading reading = read(csv);
  EXPECT_EQ(reading.plants.size(), 1u);
  EXPECT_EQ(reading.rowsLeft.size(), 301u) << "each is kept in the file, see rewrittenTable";
  EXPECT_TRUE(reading.canBeRewritten);
  const auto texts = textsOf(reading.errors);
  EXPECT_LT(texts.size(), kPlantColumns.size());
  EXPECT_THAT(texts, testing::Contains("mine.csv, line 1, family: a column of this name, which a "
                                       "new plant needs (301 rows are left out for want of it, "
                                       "the first on line 3), is missing."));
  EXPECT_THAT(texts, testing::Contains(HasSubstr("line 303, spacing_cm: 'wide'")));
  EXPECT_THAT(texts, testing::Not(testing::Contains(HasSubstr("line 3,"))));
}

TEST(OwnPlantsCsv, NamesTheFaultsOfEachRowAndKeepsTheRest) {
  const OwnPlantsReading reading = read(
      "botanical_name,height_max_cm\nMonarda fistulosa,-120\nRudbeckia fulgida,\"1,20\"\n,5\n"
      "Liatris spicata,160\nLiatris spicata,170\n");
  EXPECT_EQ(reading.plants.size(), 1u);
  EXPECT_THAT(
      textsOf(reading.errors),
      ElementsAre(HasSubstr("line 2, height_max_cm: '-120' is not a number from 1 to 6000"),
                  HasSubstr("with a point for decimals"), HasSubstr("line 4, botanical_name"),
                  HasSubstr("line 6, botanical_name: 'Liatris spicata' is not a name of its own")));
}

TEST(OwnPlantsCsv, ABadRowDoesNotStandInTheWayOfAGoodOneOfItsName) {
  const OwnPlantsReading reading = read(
      "botanical_name,spacing_cm\nMonarda fistulosa,-20\nMonarda fistulosa,60\n"
      "Monarda fistulosa,61\n");
  EXPECT_THAT(textsOf(reading.errors),
              ElementsAre(HasSubstr("line 2, spacing_cm"), HasSubstr("line 4, botanical_name")));
  ASSERT_EQ(reading.plants.size(), 1u);
  EXPECT_EQ(reading.plants.front().facts.front().value, "60");
}

TEST(OwnPlantsCsv, ARowInAnotherEncodingIsToldAndTheRestIsKept) {
  const OwnPlantsReading reading =
      read("botanical_name,notes\nMonarda fistulosa,caf\xE9\nSolidago caesia,by the gate\n");
  EXPECT_THAT(textsOf(reading.errors),
              ElementsAre("mine.csv, line 2, notes: 'caf\xC3\xA9' is not in UTF-8 (it is shown as "
                          "Latin-1 has it); save the file as CSV UTF-8."));
  EXPECT_EQ(reading.plants.size(), 1u);
}

TEST(OwnPlantsCsv, SaysWhichColumnsItLeavesOut) {
  const OwnPlantsReading reading = read(
      "\xEF\xBB\xBF"
      "\r\nbotanical_name,price,spacing_cm\r\nMonarda fistulosa,3.50,60\r\n");
  EXPECT_THAT(textsOf(reading.errors), ElementsAre(HasSubstr("line 2: 'price' is not a column")));
  ASSERT_EQ(reading.plants.size(), 1u);
  EXPECT_EQ(reading.plants.front().facts.size(), 1u);
}

TEST(OwnPlantsCsv, GivesBackWhatItWrote) {
  const std::vector<OwnSpecies> plants{
      {{},
       "Monarda fistulosa",
       {{"host_note", "a;=1;@b"},
        {"notes", "=HYPERLINK(\"http://x\"), \"tall\""},
        {"spacing_cm", "60"}}},
      {{}, "Rudbeckia fulgida", {{"common_name", "<b>Susan</b>"}}}};
  const OwnPlantsReading reading = read(ownPlantsCsv(plants));
  EXPECT_THAT(textsOf(reading.errors), IsEmpty());
  EXPECT_EQ(reading.plants, plants);
}

TEST(OwnPlantsCsv, WritesNoFormula) {
  EXPECT_EQ(ownPlantsCsv({{{}, "Monarda fistulosa", {{"notes", "=1+1"}, {"host_note", "@x"}}}}),
            "botanical_name,host_note,notes\r\nMonarda fistulosa,'@x,'=1+1\r\n");
  EXPECT_EQ(ownPlantsCsv({{{}, "Monarda fistulosa", {{"notes", "x;=1+1;y"}}}}),
            "botanical_name,notes\r\nMonarda fistulosa,x;'=1+1;y\r\n");
}

TEST(PlantsCsv, AWholeTableComesBackAsItWas) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  const CatalogueReading again = readCatalogue(plantsCsv(facts), "again.csv");
  EXPECT_THAT(textsOf(again.errors), IsEmpty());
  EXPECT_EQ(again.catalogue.species(), facts.species());
}

// Cell by cell against the file itself, "unknown" among them.
TEST(PlantsCsv, WritesEveryCellOfTheShippedTableAsItIsThere) {
  const Table shipped = readTable(readFile(resourceFolder() / "plants.csv"));
  const Table again = readTable(plantsCsv(readShippedCatalogue().catalogue));
  ASSERT_EQ(again.rows.size(), shipped.rows.size());
  for (std::size_t row = 0; row < shipped.rows.size(); ++row)
    for (std::size_t i = 0; i < shipped.rows[row].cells.size(); ++i)
      EXPECT_EQ(again.rows[row].cells.at(i), shipped.rows[row].cells[i])
          << shipped.rows[row].cells[0] << ", " << kPlantColumns[i];
}

TEST(PlantsCsv, TheShippedTableBroughtInHoldsNothingOfOnesOwn) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  const BroughtIn given =
      bringInPlants(readFile(resourceFolder() / "plants.csv"), "plants.csv", facts, {});
  EXPECT_THAT(textsOf(given.errors), IsEmpty());
  EXPECT_TRUE(given.taken.empty())
      << given.taken.front().botanicalName << ", " << given.taken.front().facts.front().column;
}

BroughtIn bringIn(const std::string& csv, const std::vector<OwnSpecies>& personal = {}) {
  static const Catalogue published = readShippedCatalogue().catalogue;
  return bringInPlants(csv, "mine.csv", published, personal);
}

TEST(BringingIn, LeavesOutWhatNobodyCanHaveMeant) {
  const BroughtIn given = bringIn(
      test::plantHeader() +
      test::plantRow({{"botanical_name", "Rosa"}, {"genus", "Rosa"}, {"family", "Rosaceae"}}) +
      test::plantRow({{"botanical_name", "Monarda clinopodia"}, {"usda_symbol", "MOFI"}}) +
      test::plantRow({{"botanical_name", "Monarda media"}, {"family", "Fooaceae"}}) +
      test::plantRow({{"botanical_name", "Monarda 'Claire Grace'"}, {"usda_symbol", "MOXX9"}}) +
      test::plantRow({{"botanical_name", "Monarda russeliana"}, {"usda_symbol", "MOXX9"}}));
  EXPECT_THAT(
      textsOf(given.errors),
      ElementsAre(HasSubstr("line 2, botanical_name: 'Rosa' is not a genus with a species"),
                  HasSubstr("line 3, usda_symbol: 'MOFI' is not a symbol of its own, for Monarda "
                            "fistulosa has it"),
                  HasSubstr("line 4, family: 'Fooaceae' is not a plant family"),
                  HasSubstr("for Monarda 'Claire Grace' has it")));
  ASSERT_EQ(given.taken.size(), 1u);
  EXPECT_EQ(given.taken.front().botanicalName, "Monarda 'Claire Grace'");
}

TEST(BringingIn, RefusesASynonymThatIsTheNameOfAnotherPlant) {
  const BroughtIn given =
      bringIn(test::plantHeader() +
              test::plantRow({{"botanical_name", "Monarda media"},
                              {"usda_symbol", ""},
                              {"synonyms", "Monarda violacea; Monarda fistulosa"}}) +
              test::plantRow({{"botanical_name", "Monarda clinopodia"},
                              {"usda_symbol", ""},
                              {"synonyms", "Monarda glabra"}}));
  EXPECT_THAT(textsOf(given.errors),
              ElementsAre(AllOf(HasSubstr("line 2, synonyms: "),
                                HasSubstr("Monarda fistulosa is the botanical name of one"))));
  ASSERT_EQ(given.taken.size(), 1u);
  EXPECT_EQ(given.taken.front().botanicalName, "Monarda clinopodia");
}

// Week 20 is 14 to 20 May, week 22 28 May to 3 June (week 1 being 1 to 7 January).
TEST(BringingIn, TellsOfWeeksThatLieOutsideOfTheMonthOfTheirRow) {
  const BroughtIn given = bringIn(
      "botanical_name,bloom_start_month,bloom_end_month,bloom_start_week,bloom_end_week\n"
      "Monarda fistulosa,6,9,22,36\nZizia aurea,3,6,20,\nAmsonia hubrichtii,5,6,20,\n");
  EXPECT_THAT(textsOf(given.errors), IsEmpty());
  EXPECT_EQ(given.taken.size(), 3u);
  ASSERT_EQ(given.notes.size(), 1u);
  EXPECT_THAT(given.notes.front().text,
              HasSubstr("mine.csv, line 3, bloom_start_week: week 20 lies outside of March, which "
                        "bloom_start_month gives. The week counts"));
}

// USDA PLANTS: Actaea is in the Ranunculaceae. Asclepiadaceae is the family that books before the
// Angiosperm Phylogeny Group have for milkweeds, Compositae the other name of the Asteraceae
// (International Code of Nomenclature, article 18.5). ZZ is no state of Publication 28 of the
// United States Postal Service; ON is Ontario.
TEST(BringingIn, KnowsStatesAndTheFamiliesOfPublishedGenera) {
  const auto row = [](const char* name, const char* genus, const char* family, const char* states) {
    return test::plantRow({{"botanical_name", name},
                           {"genus", genus},
                           {"family", family},
                           {"native_states", states}});
  };
  const BroughtIn given =
      bringIn(test::plantHeader() + row("Actaea alba", "Actaea", "Rosaceae", "IA") +
              row("Actaea rubra", "Actaea", "Ranunculaceae", "IA ZZ") +
              row("Asclepias meadii", "Asclepias", "Asclepiadaceae", "IA ON") +
              row("Aster alpinus", "Aster", "Compositae", "") +
              row("Liatris spicata 'Kobold'", "Liatris", "Compositae", ""));
  EXPECT_THAT(textsOf(given.errors),
              ElementsAre(HasSubstr("line 2, family: 'Rosaceae' is not Ranunculaceae, the family "
                                    "of Actaea"),
                          AllOf(HasSubstr("line 3, native_states: 'IA ZZ' is not"),
                                HasSubstr("ZZ is none"))));
  EXPECT_EQ(given.taken.size(), 3u);
}

// Kept when they are stored and written again, but never for a value that they do not tell of.
TEST(BringingIn, KeepsTheSourcesThatValuesCameWith) {
  const Catalogue published = readShippedCatalogue().catalogue;
  const BroughtIn given =
      bringIn(test::plantHeader() +
              test::plantRow({{"botanical_name", "Monarda media"},
                              {"usda_symbol", ""},
                              {"sources", "FNA: spacing_cm spread_cm; memory: sun"}}));
  EXPECT_THAT(textsOf(given.errors), IsEmpty());
  const std::string stored = ownPlantsCsv(given.taken);
  EXPECT_THAT(stored, HasSubstr("FNA: spacing_cm spread_cm; memory: sun"));
  const OwnPlantsReading again = readOwnPlants(stored, "plants.csv", published);
  EXPECT_EQ(again.plants, given.taken);
  const BroughtIn changed =
      bringIn("botanical_name,spacing_cm,spread_cm,sources\nMonarda media,41,42,BOOK: spread_cm\n",
              again.plants);
  EXPECT_THAT(textsOf(changed.errors), IsEmpty());
  EXPECT_THAT(ownPlantsCsv(withTaken(again.plants, changed.taken)),
              HasSubstr("memory: sun; BOOK: spread_cm\r\n"));
}

TEST(BringingIn, TellsOfSourcesThatCannotBeRead) {
  EXPECT_THAT(
      textsOf(bringIn("botanical_name,spacing_cm,sources\nMonarda fistulosa,66,FNA\n").errors),
      ElementsAre(HasSubstr("line 2, sources: 'FNA' is not source keys, a colon and")));
}

TEST(BringingIn, ARowOfAPersonalPlantNeedsOnlyWhatItChanges) {
  const std::string mine =
      test::plantHeader() +
      test::plantRow(
          {{"botanical_name", "Monarda media"}, {"usda_symbol", ""}, {"spacing_cm", "45"}});
  const std::vector<OwnSpecies> personal = bringIn(mine).taken;
  ASSERT_EQ(personal.size(), 1u);
  const BroughtIn given = bringIn("botanical_name,spacing_cm\nMonarda media,50\n", personal);
  EXPECT_THAT(textsOf(given.errors), IsEmpty());
  ASSERT_EQ(given.taken.size(), 1u);
  EXPECT_THAT(given.taken.front().facts, ElementsAre(OwnFact{"spacing_cm", "50"}));
  EXPECT_EQ(withTaken(personal, given.taken).front().facts.size(), personal.front().facts.size());
  const BroughtIn bad = bringIn("botanical_name,spacing_cm\nMonarda media,wide\n", personal);
  EXPECT_THAT(textsOf(bad.errors),
              ElementsAre(AllOf(HasSubstr("line 2, spacing_cm: 'wide' is not a number"),
                                testing::Not(HasSubstr("beside")))));
}

// Each is sound over the published values (75 to 120 cm); together they are not.
TEST(BringingIn, LeavesOutARowThatThePersonalValuesBesideItWouldSpoil) {
  const std::vector<OwnSpecies> personal{{{}, "Monarda fistulosa", {{"height_min_cm", "110"}}},
                                         {{}, "Penstemon digitalis", {{"notes", "mine"}}}};
  const BroughtIn given = bringIn(
      "botanical_name,height_max_cm\nMonarda fistulosa,100\nPenstemon digitalis,95\n", personal);
  EXPECT_THAT(
      textsOf(given.errors),
      ElementsAre(HasSubstr("mine.csv, line 2, height_max_cm: '100' is not height_min_cm "
                            "(110 cm) or more, beside your own values of Monarda fistulosa")));
  ASSERT_EQ(given.taken.size(), 1u);
  const Catalogue published = readShippedCatalogue().catalogue;
  const std::string kept = ownPlantsCsv(withTaken(personal, given.taken));
  EXPECT_THAT(textsOf(readOwnPlants(kept, "plants.csv", published).errors), IsEmpty());
}

TEST(PlantsCsv, AWholeTableGivenBackAsOwnPlantsKeepsTheChangesOnly) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  std::string csv = plantsCsv(facts);
  const std::string from = "Mildly toxic if eaten";
  csv.replace(csv.find(from), from.size(), "Toxic to geese");
  const OwnPlantsReading reading = readOwnPlants(csv, "again.csv", facts);
  EXPECT_THAT(textsOf(reading.errors), IsEmpty());
  ASSERT_EQ(reading.plants.size(), 1u);
  EXPECT_THAT(reading.plants.front().facts,
              ElementsAre(OwnFact{"toxicity_note", "Toxic to geese"}));
}

// The limit is ours: twenty thousand plants are read in some five seconds.
TEST(PlantsCsv, MoreThanTwentyThousandPlantsAreWarnedOf) {
  EXPECT_EQ(manyPlantsWords(20'000), "");
  EXPECT_THAT(manyPlantsWords(20'001), HasSubstr("20001 plants of your own"));
}

}  // namespace
}  // namespace tussock
