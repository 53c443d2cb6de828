// SPDX-License-Identifier: MIT
// Files that are no plant table, or not quite.
#include "core/catalog/plant_table.h"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/table.h"
#include "tests/support/plant_text.h"

namespace tussock {
namespace {

using testing::HasSubstr;

PlantTable readPlants(std::string_view csv, ColumnsAsked asked = ColumnsAsked::All) {
  return readPlantTable(csv, "mine.csv", asked);
}

std::string onlyTableError(std::string_view csv) {
  const PlantTable table = readPlants(csv);
  EXPECT_EQ(table.errors.size(), 1u);
  EXPECT_TRUE(table.rows.empty());
  return table.errors.empty() ? "" : table.errors.front().text();
}

std::string notesIn(const PlantTable& table) {
  for (const OwnFact& fact : ownPlantOf(table.rows.front(), table.places).facts)
    if (fact.column == "notes") return fact.value;
  return {};
}

TEST(PlantTable, SaysHowToSaveAFileInAnotherEncoding) {
  const std::string_view littleEndian(
      "\xFF\xFE"
      "b\0o\0t\0",
      8);
  const std::string_view unmarked("b\0o\0t\0", 6);
  EXPECT_THAT(onlyTableError(littleEndian), HasSubstr("save the file as CSV UTF-8"));
  EXPECT_THAT(onlyTableError(unmarked), HasSubstr("save the file as CSV UTF-8"));
}

TEST(PlantTable, AFileThatIsNoTextIsToldOnce) {
  std::string database("SQLite format 3\0\x10\0\x02\x02\0\x40\x20\x20\0\0\0\x0C\0\0", 30);
  database.append(200'000, '\0');
  for (int i = 0; i < 50'000; ++i) database += "a,b\n";
  EXPECT_THAT(onlyTableError(database), HasSubstr("save the spreadsheet as CSV UTF-8"));
}

TEST(PlantTable, NamesTheRowThatIsNotUtf8AndKeepsTheRest) {
  const std::string csv = test::plantHeader() + test::plantRow({{"common_name", "caf\xE9"}}) +
                          test::plantRow({{"botanical_name", "Monarda didyma"}});
  const PlantTable table = readPlants(csv);
  ASSERT_EQ(table.errors.size(), 1u);
  EXPECT_EQ(table.errors.front().line, 2u);
  EXPECT_EQ(table.rows.size(), 1u);
}

TEST(PlantTable, ANulByteIsToldWhereItStandsAndTheRestIsKept) {
  const std::string csv = test::plantHeader() +
                          test::plantRow({{"common_name", std::string("bee\0balm", 8)}}) +
                          test::plantRow({{"botanical_name", "Monarda didyma"}});
  const PlantTable table = readPlants(csv);
  ASSERT_EQ(table.errors.size(), 1u);
  EXPECT_EQ(table.errors.front().line, 2u);
  EXPECT_EQ(table.errors.front().column, "common_name");
  EXPECT_THAT(table.errors.front().text(), HasSubstr("NUL byte"));
  EXPECT_EQ(table.rows.size(), 1u);
}

TEST(PlantTable, SaysThatCommasPartTheColumns) {
  EXPECT_THAT(onlyTableError("botanical_name;family;genus\r\nMonarda didyma;Lamiaceae;Monarda\r\n"),
              HasSubstr("a line of column names with commas between them"));
}

TEST(PlantTable, NeedsOnlyNamesWhereItAddsToAnother) {
  const PlantTable table =
      readPlants("botanical_name,notes\nMonarda didyma,by the door\n", ColumnsAsked::NameOnly);
  EXPECT_TRUE(table.errors.empty());
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(ownPlantOf(table.rows.front(), table.places),
            (OwnSpecies{{}, "Monarda didyma", {{"notes", "by the door"}}}));
  EXPECT_EQ(readPlants("notes\nby the door\n", ColumnsAsked::NameOnly).errors.size(), 1u);
}

TEST(PlantTable, TakesTheGuardOffAFormula) {
  const PlantTable table =
      readPlants("botanical_name,notes\nMonarda didyma,'=1+1\n", ColumnsAsked::NameOnly);
  EXPECT_EQ(notesIn(table), "=1+1");
}

TEST(PlantTable, OfColumnsOfOneNameTheFirstCountsAndEachOtherIsTold) {
  const PlantTable table = readPlants(
      "botanical_name,notes,sun,notes,notes\nMonarda didyma,a,full,b,c\n", ColumnsAsked::NameOnly);
  ASSERT_EQ(table.errors.size(), 2u);
  EXPECT_EQ(table.errors[0].text(),
            "mine.csv, line 1, notes: columns 2 and 4 both have this name. Column 2 counts; the "
            "values of column 4 are left out.");
  EXPECT_THAT(table.errors[1].text(), HasSubstr("columns 2 and 5 both"));
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(notesIn(table), "a");
}

// A spreadsheet writes as many commas in each line as its widest row needs (common practice).
TEST(PlantTable, ColumnsAndRowsWithoutAnythingAreNoFault) {
  const PlantTable table = readPlants(
      "botanical_name,notes,,\n,,,\nMonarda didyma,a,,\n,,,\n,,,,\n", ColumnsAsked::NameOnly);
  EXPECT_TRUE(table.errors.empty()) << table.errors.front().text();
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(ownPlantOf(table.rows.front(), table.places),
            (OwnSpecies{{}, "Monarda didyma", {{"notes", "a"}}}));
}

TEST(PlantTable, AColumnWithoutANameIsToldByItsNumberIfItHasValues) {
  const PlantTable table = readPlants(
      "\nbotanical_name,,notes,,\nMonarda didyma,from Ann,a,,3.50\n", ColumnsAsked::NameOnly);
  ASSERT_EQ(table.errors.size(), 2u);
  EXPECT_EQ(table.errors[0].text(), "mine.csv, line 2: column 2 has no name; it is left out.");
  EXPECT_EQ(table.errors[1].text(), "mine.csv, line 2: column 5 has no name; it is left out.");
  ASSERT_EQ(table.rows.size(), 1u);
  EXPECT_EQ(notesIn(table), "a");
}

TEST(PlantTable, ReadsAHundredThousandRows) {
  constexpr std::size_t kRows = 100'000;
  std::string csv = test::plantHeader();
  for (std::size_t i = 0; i < kRows; ++i)
    csv += test::plantRow({{"botanical_name", "Monarda no" + std::to_string(i)}});
  csv += test::plantRow({{"spread_cm", "-3"}});
  const CatalogueReading reading = readCatalogue(csv, "mine.csv");
  EXPECT_EQ(reading.catalogue.species().size(), kRows);
  ASSERT_EQ(reading.errors.size(), 1u);
  EXPECT_EQ(reading.errors.front().line, kRows + 2);
}

TEST(PlantTable, SaysWhatStandsBetweenTheColumnsInPlaceOfCommas) {
  for (const auto& [csv, mark] :
       {std::pair("botanical_name;notes\nMonarda fistulosa;a\n", "semicolons"),
        std::pair("botanical_name;notes\nMonarda fistulosa;\"a; \"\"b\"\"\"\n", "semicolons"),
        std::pair("\"botanical_name\";\"notes\"\n\"Monarda fistulosa\";\"a\"\n", "semicolons"),
        std::pair("botanical_name\tnotes\nMonarda fistulosa\ta\n", "tabs")}) {
    const PlantTable table = readPlantTable(csv, "mine.csv", ColumnsAsked::NameOnly);
    ASSERT_EQ(table.errors.size(), 1u) << mark;
    EXPECT_THAT(table.errors.front().text(), testing::AllOf(HasSubstr("line 1"), HasSubstr(mark)));
    EXPECT_TRUE(table.rows.empty());
  }
}

TEST(PlantTable, SaysHowAColumnIsWrittenThatIsThereWithCapitals) {
  const PlantTable table = readPlantTable("Botanical_Name,Spacing cm\nMonarda fistulosa,60\n",
                                          "mine.csv", ColumnsAsked::NameOnly);
  ASSERT_EQ(table.errors.size(), 2u);
  EXPECT_THAT(table.errors[0].text(),
              HasSubstr("'Botanical_Name' is not botanical_name, as that column is written"));
  EXPECT_THAT(table.errors[1].text(), HasSubstr("'Spacing cm' is not spacing_cm, as that"));
}

TEST(PlantTable, RowsAreTheSameHoweverLinesEnd) {
  const std::string_view text =
      "a, b ,c\n ,\t,\n\n  \t \n,,\nlast one , here,\xC3\xA9\nx\n,y\n'=1+1,a b  c,\n"
      " \" in, quotes \" ,\"a \"\"word\"\" \",\"\"\n\"\",,\"z\"\n";
  std::string returns(text);
  std::replace(returns.begin(), returns.end(), '\n', '\r');
  const Table plain = readTable(text), other = readTable(returns);
  ASSERT_EQ(plain.rows.size(), 9u);
  ASSERT_EQ(other.rows.size(), plain.rows.size());
  for (std::size_t i = 0; i < plain.rows.size(); ++i)
    EXPECT_EQ(plain.rows[i].cells, other.rows[i].cells) << i;
  EXPECT_EQ(plain.rows[2].line, 5u);
  EXPECT_EQ(plain.rows[7].cells, (std::vector<std::string>{" in, quotes ", "a \"word\" ", ""}));
  EXPECT_EQ(readTable("a,b\nc\"d,e\n\"f\"g,h\ni,j\n").badQuotes, (std::vector<std::size_t>{2, 3}));
  const Table quoted = readTable("a,b\n\"c\nd\",e\nf,g\n");
  ASSERT_EQ(quoted.rows.size(), 3u);
  EXPECT_EQ(quoted.rows[1].cells, (std::vector<std::string>{"c\nd", "e"}));
  EXPECT_EQ(quoted.rows[2].line, 4u);
}

}  // namespace
}  // namespace tussock
