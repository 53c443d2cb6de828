// SPDX-License-Identifier: MIT
#include "core/catalog/catalogue.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/species_row.h"
#include "tests/support/fact_source.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::HasSubstr;

// A table with every column; `values` by name, the rest as below.
using Cells = std::map<std::string, std::string, std::less<>>;

std::string header() {
  std::string line;
  for (const std::string_view column : kPlantColumns)
    line.append(line.empty() ? "" : ",").append(column);
  return line + "\r\n";
}

std::string row(const Cells& values) {
  Cells cells{{"botanical_name", "Monarda fistulosa"},
              {"family", "Lamiaceae"},
              {"genus", "Monarda"},
              {"layer_form", "forb"},
              {"height_min_cm", "75"},
              {"height_max_cm", "120"},
              {"spread_cm", "75"},
              {"spacing_cm", "60"},
              {"sun", "full;part"},
              {"moisture", "dry;medium"}};
  for (const auto& [name, value] : values) cells[name] = value;
  std::string line;
  for (const std::string_view column : kPlantColumns) {
    if (column != kPlantColumns.front()) line += ",";
    const auto at = cells.find(column);
    if (at != cells.end()) line += at->second;
  }
  return line + "\r\n";
}

CatalogueReading read(const std::string& text) {
  return readCatalogue(text, "mine.csv");
}

std::string onlyError(const Cells& values) {
  const CatalogueReading reading = read(header() + row(values));
  EXPECT_EQ(reading.errors.size(), 1u);
  EXPECT_TRUE(reading.catalogue.species().empty());
  return reading.errors.empty() ? "" : reading.errors.front().text();
}

TEST(Catalogue, ReadsARow) {
  const CatalogueReading reading =
      read("\xEF\xBB\xBF" + header() +
           row({{"bloom_start_month", "6"},
                {"bloom_end_month", "8"},
                {"flower_hex", "#8A7FC0"},
                {"notes", "\"Leans, \"\"flops\"\"\nin rich soil\""},
                {"native_states", "IL IN"},
                {"sources", "USDA ALB: family genus; memory: spacing_cm"}}));
  ASSERT_TRUE(reading.errors.empty()) << reading.errors.front().text();
  const Species* species = reading.catalogue.find("Monarda fistulosa");
  ASSERT_NE(species, nullptr);
  EXPECT_EQ(species->heightHigh, Length::metres(1.2));
  EXPECT_EQ(species->sun, (std::vector{SunNeed::Full, SunNeed::Part}));
  EXPECT_EQ(species->flowerColour, (Rgb{0x8A, 0x7F, 0xC0}));
  EXPECT_EQ(species->notes, "Leans, \"flops\"\nin rich soil");
  EXPECT_EQ(species->nativeStates, (std::vector<std::string>{"IL", "IN"}));
  EXPECT_EQ(test::sourceOf(*species, "genus"), "USDA ALB");
  EXPECT_EQ(test::sourceOf(*species, "spacing_cm"), "memory");
  EXPECT_EQ(test::sourceOf(*species, "spread_cm"), "");
}

TEST(Catalogue, NamesFileLineColumnValueAndWhatWasExpected) {
  EXPECT_EQ(onlyError({{"spacing_cm", "-3"}}),
            "mine.csv, line 2, spacing_cm: '-3' is not a number from 1 to 3000.");
}

TEST(Catalogue, RefusesWhatCannotBe) {
  EXPECT_THAT(onlyError({{"spacing_cm", "nan"}}), HasSubstr("spacing_cm: 'nan'"));
  EXPECT_THAT(onlyError({{"spread_cm", ""}}), HasSubstr("spread_cm: centimetres"));
  EXPECT_THAT(onlyError({{"height_max_cm", "70"}}), HasSubstr("no less than height_min_cm"));
  EXPECT_THAT(onlyError({{"sun", "full;dusk"}}),
              AllOf(HasSubstr("'full;dusk'"), HasSubstr("shade")));
  EXPECT_THAT(onlyError({{"moisture", ""}}), HasSubstr("moisture"));
  EXPECT_THAT(onlyError({{"layer_form", "tree"}}), HasSubstr("'tree' is not one of forb"));
  EXPECT_THAT(onlyError({{"bloom_start_month", "13"}}), HasSubstr("from 1 to 12"));
  EXPECT_THAT(onlyError({{"bloom_start_month", "6"}}), HasSubstr("bloom_end_month"));
  EXPECT_THAT(onlyError({{"flower_hex", "mauve"}}), HasSubstr("a colour such as"));
  EXPECT_THAT(onlyError({{"genus", "Bidens"}}), HasSubstr("first word"));
  EXPECT_THAT(onlyError({{"native_states", "Ohio"}}), HasSubstr("two-letter states"));
  EXPECT_THAT(onlyError({{"sources", "USDA"}}), HasSubstr("source keys"));
  EXPECT_THAT(onlyError({{"light_to_germinate", "maybe"}}), HasSubstr("yes or no"));
  EXPECT_THAT(onlyError({{"common_name", "bee\xFF"}}), HasSubstr("UTF-8"));
}

TEST(Catalogue, ABadRowNeverLosesTheRest) {
  const CatalogueReading reading =
      read(header() + row({{"spread_cm", "wide"}, {"sun", "none"}}) + "only,three,cells\r\n\r\n" +
           row({{"botanical_name", "Monarda didyma"}}));
  ASSERT_EQ(reading.errors.size(), 3u);
  EXPECT_EQ(reading.errors[0].line, 2u);
  EXPECT_EQ(reading.errors[2].line, 3u);
  EXPECT_NE(reading.catalogue.find("Monarda didyma"), nullptr);
}

TEST(Catalogue, GoesOnAfterAQuotationMarkThatIsNeverClosed) {
  const CatalogueReading reading = read(header() + row({{"notes", "\"never closed"}}) +
                                        row({{"botanical_name", "Monarda didyma"}}));
  ASSERT_EQ(reading.errors.size(), 1u);
  EXPECT_EQ(reading.errors.front().line, 2u);
  EXPECT_NE(reading.catalogue.find("Monarda didyma"), nullptr);
}

TEST(Catalogue, CountsLinesInsideQuotedText) {
  const CatalogueReading reading =
      read(header() + row({{"notes", "\"two\nlines\""}}) +
           row({{"botanical_name", "Monarda didyma"}, {"spread_cm", "0"}}));
  ASSERT_EQ(reading.errors.size(), 1u);
  EXPECT_EQ(reading.errors.front().line, 4u);
}

TEST(Catalogue, ReportsMissingColumns) {
  const CatalogueReading reading = read("botanical_name,family\r\nMonarda didyma,Lamiaceae\r\n");
  EXPECT_EQ(reading.errors.size(), kPlantColumns.size() - 2);
  EXPECT_EQ(reading.errors.front().text(),
            "mine.csv, line 1, genus: a column of this name is missing.");
}

TEST(Catalogue, RefusesTheSameNameTwice) {
  const CatalogueReading reading = read(header() + row({}) + row({}));
  ASSERT_EQ(reading.errors.size(), 1u);
  EXPECT_EQ(reading.errors.front().line, 3u);
  EXPECT_EQ(reading.catalogue.species().size(), 1u);
}

TEST(Catalogue, SaysWhenThereIsNothing) {
  EXPECT_EQ(read("").errors.size(), 1u);
  EXPECT_EQ(read("\r\n\r\n").errors.size(), 1u);
}

std::vector<std::string> found(std::string_view words) {
  static const Catalogue facts = readShippedCatalogue().catalogue;
  std::vector<std::string> names;
  for (const Species* species : facts.search(words)) names.push_back(species->botanicalName);
  return names;
}

TEST(Search, FindsNamesAsTheyAreTyped) {
  EXPECT_EQ(found("MONARDA fist"), std::vector<std::string>{"Monarda fistulosa"});
  EXPECT_THAT(found("bergamot"), testing::Contains("Monarda fistulosa"));
  EXPECT_EQ(found("novae-angliae"), std::vector<std::string>{"Symphyotrichum novae-angliae"});
  EXPECT_TRUE(found("no such plant").empty());
}

TEST(Search, EveryWordMustBeMet) {
  const auto names = found("tall wet summer pink");
  EXPECT_THAT(names, testing::Contains("Eutrochium maculatum"));
  EXPECT_THAT(names, testing::Not(testing::Contains("Phlox stolonifera")));
}

TEST(Search, LowIsNotFoundInYellow) {
  const auto names = found("low");
  EXPECT_THAT(names, testing::Contains("Phlox subulata"));
  EXPECT_THAT(names, testing::Not(testing::Contains("Silphium perfoliatum")));
}

TEST(Search, PutsTheGenusFirst) {
  EXPECT_EQ(found("phlox").front(), "Phlox divaricata");
  EXPECT_THAT(found("grass dry sun").size(), testing::Gt(3u));
}

TEST(Search, NothingTypedFindsAllInOrder) {
  const auto names = found("  ");
  EXPECT_EQ(names.size(), 160u);
  EXPECT_TRUE(std::is_sorted(names.begin(), names.end()));
}

}  // namespace
}  // namespace tussock
