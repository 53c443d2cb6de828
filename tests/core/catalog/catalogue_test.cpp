// SPDX-License-Identifier: MIT
#include "core/catalog/catalogue.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/species_row.h"
#include "tests/support/fact_source.h"
#include "tests/support/plant_text.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::HasSubstr;

using test::Cells;

std::string header() {
  return test::plantHeader();
}

std::string row(const Cells& values) {
  return test::plantRow(values);
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
  EXPECT_THAT(onlyError({{"spread_cm", ""}}), HasSubstr("spread_cm: a number of centimetres"));
  EXPECT_THAT(onlyError({{"height_max_cm", "70"}}),
              HasSubstr("is not height_min_cm (75 cm) or more"));
  EXPECT_THAT(onlyError({{"sun", "full;dusk"}}),
              AllOf(HasSubstr("'full;dusk'"), HasSubstr("shade")));
  EXPECT_THAT(onlyError({{"moisture", ""}}), HasSubstr("moisture"));
  EXPECT_THAT(onlyError({{"layer_form", "tree"}}), HasSubstr("'tree' is not one of forb"));
  EXPECT_THAT(onlyError({{"bloom_start_month", "13"}}), HasSubstr("from 1 to 12"));
  EXPECT_THAT(onlyError({{"bloom_start_month", "6"}}), HasSubstr("bloom_end_month"));
  EXPECT_THAT(onlyError({{"flower_hex", "mauve"}}), HasSubstr("a colour such as"));
  EXPECT_THAT(onlyError({{"genus", "Bidens"}}), HasSubstr("first word"));
  EXPECT_THAT(onlyError({{"botanical_name", "+1+2 x"}}),
              HasSubstr("botanical_name: '+1+2 x' is not a botanical name"));
  EXPECT_THAT(onlyError({{"native_states", "Ohio"}}), HasSubstr("two-letter states"));
  EXPECT_THAT(onlyError({{"sources", "USDA"}}), HasSubstr("source keys"));
  EXPECT_THAT(onlyError({{"light_to_germinate", "maybe"}}), HasSubstr("one of unknown, yes, no"));
  EXPECT_THAT(onlyError({{"common_name", "bee\xFF"}}), HasSubstr("UTF-8"));
  EXPECT_THAT(onlyError({{"life_span", "forever"}}), HasSubstr("one of unknown, annual"));
  EXPECT_THAT(onlyError({{"habit_of_spread", "walks"}}), HasSubstr("one of unknown, clump"));
  EXPECT_THAT(onlyError({{"body", "glass"}}), HasSubstr("one of unknown, solid, see-through"));
  EXPECT_THAT(onlyError({{"soil", "loam;mud"}}), HasSubstr("joined with ';'"));
  EXPECT_THAT(onlyError({{"sociability_level", "6"}}), HasSubstr("from 1 to 5"));
  EXPECT_THAT(onlyError({{"up_by_week", "53"}}), HasSubstr("from 1 to 52"));
  EXPECT_THAT(onlyError({{"sizes_sold", "barrel"}}), HasSubstr("sizes_sold: 'barrel'"));
}

TEST(Catalogue, RefusesRangesOutOfOrder) {
  EXPECT_THAT(onlyError({{"foliage_height_min_cm", "40"}}), HasSubstr("the other end"));
  EXPECT_THAT(onlyError({{"foliage_height_min_cm", "40"}, {"foliage_height_max_cm", "30"}}),
              HasSubstr("is not foliage_height_min_cm (40 cm) or more"));
  EXPECT_THAT(onlyError({{"foliage_height_min_cm", "40"}, {"foliage_height_max_cm", "130"}}),
              HasSubstr("no more than height_max_cm (120 cm)"));
  EXPECT_THAT(onlyError({{"sun_hours_min", "6"}, {"sun_hours_max", "4"}}),
              HasSubstr("is not sun_hours_min (6) or more"));
  EXPECT_THAT(onlyError({{"germination_min_pct", "60"}, {"germination_max_pct", "40"}}),
              HasSubstr("is not germination_min_pct (60) or more"));
  EXPECT_THAT(onlyError({{"hardiness_zone_min", "8"}, {"hardiness_zone_max", "3"}}),
              HasSubstr("is not hardiness_zone_min (8) or more"));
}

TEST(Catalogue, RefusesBloomThatEndsBeforeItStarts) {
  EXPECT_EQ(onlyError({{"bloom_start_month", "9"}, {"bloom_end_month", "4"}}),
            "mine.csv, line 2, bloom_end_month: '4' is not bloom_start_month (9) or more; over the "
            "New Year flowers last half a year at most.");
  EXPECT_THAT(onlyError({{"bloom_start_month", "6"}, {"bloom_end_month", "5"}}),
              HasSubstr("is not bloom_start_month (6) or more"));
  EXPECT_THAT(onlyError({{"bloom_start_month", "4"},
                         {"bloom_end_month", "5"},
                         {"bloom_start_week", "21"},
                         {"bloom_end_week", "16"}}),
              HasSubstr("bloom_end_week: '16' is not bloom_start_week (21) or more"));
  EXPECT_THAT(onlyError({{"bloom_start_week", "40"}, {"bloom_end_month", "5"}}),
              HasSubstr("bloom_end_month: '5' is not the first week (40) or more"));
}

// The Ozark witch hazel flowers from January to April, the Christmas rose from December to March,
// the winter jasmine from November on (memory).
TEST(Catalogue, TakesFlowersThatLastOverTheNewYear) {
  for (const auto& [first, last] : {std::pair("12", "3"), {"11", "2"}, {"10", "3"}, {"1", "4"}}) {
    const CatalogueReading reading =
        read(header() + row({{"bloom_start_month", first}, {"bloom_end_month", last}}));
    EXPECT_TRUE(reading.errors.empty()) << first << " to " << last;
  }
}

TEST(Catalogue, TellsAllThatIsWrongWithARowAtOnce) {
  const CatalogueReading reading = read(header() + row({{"height_max_cm", "tall"},
                                                        {"germination_min_pct", "60"},
                                                        {"germination_max_pct", "40"},
                                                        {"bloom_start_month", "6"},
                                                        {"hardiness_zone_min", "8"},
                                                        {"hardiness_zone_max", "3"}}));
  std::vector<std::string> columns;
  for (const CatalogueError& error : reading.errors) columns.push_back(error.column);
  EXPECT_THAT(columns, testing::UnorderedElementsAre("height_max_cm", "germination_max_pct",
                                                     "bloom_end_month", "hardiness_zone_max"));
}

TEST(Catalogue, AsksAboutACommaInANumber) {
  EXPECT_EQ(onlyError({{"height_max_cm", "\"1,20\""}}),
            "mine.csv, line 2, height_max_cm: '1,20' is not a number from 1 to 6000, with a point "
            "for decimals and no commas.");
}

TEST(Catalogue, KeepsMarkupAsText) {
  const CatalogueReading reading = read(header() + row({{"notes", "<script>alert(1)</script>"}}));
  ASSERT_TRUE(reading.errors.empty());
  EXPECT_EQ(reading.catalogue.species().front().notes, "<script>alert(1)</script>");
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
            "mine.csv, line 1, synonyms: a column of this name is missing.");
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

}  // namespace
}  // namespace tussock
