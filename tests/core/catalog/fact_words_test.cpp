// SPDX-License-Identifier: MIT
// Values in words, and back to the table. The inch is 25.4 mm and the ounce 28.349523125 g by
// definition (international yard and pound agreement, 1959).
#include "core/catalog/fact_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/fact_choices.h"
#include "core/catalog/plant_cells.h"
#include "core/catalog/species.h"
#include "core/catalog/species_row.h"

namespace tussock {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

constexpr UnitSystem kFeet = UnitSystem::FeetInches, kMetric = UnitSystem::Metres;

TypedFact read(const char* column, const char* typed, UnitSystem units = kFeet) {
  return readFact(column, typed, units);
}

TEST(FactWords, ShowSizesInTheUnitsOfTheYard) {
  EXPECT_EQ(shownFact("spacing_cm", "45", kFeet), "18 in");
  EXPECT_EQ(shownFact("spacing_cm", "45", kMetric), "45 cm");
  EXPECT_EQ(shownFact("height_max_cm", "160", kFeet), "5' 3\"");
  EXPECT_EQ(shownFact("height_max_cm", "160", kMetric), "1.60 m");
  EXPECT_EQ(shownFact("height_max_cm", "", kMetric), "");
}

TEST(FactWords, TakeSizesInEitherSystemButNoBareFigure) {
  for (const UnitSystem units : {kFeet, kMetric}) {
    EXPECT_EQ(read("spacing_cm", "18 in", units).value, "45.72");
    EXPECT_EQ(read("spacing_cm", "2' 6\"", units).value, "76.2");
    EXPECT_EQ(read("spacing_cm", "45 cm", units).value, "45");
    EXPECT_EQ(read("spacing_cm", "1.2 m", units).value, "120");
    EXPECT_THAT(read("spacing_cm", "18", units).trouble, HasSubstr("with its unit"));
    EXPECT_THAT(read("spacing_cm", "-3 cm", units).trouble, HasSubstr("Write a size"));
  }
  EXPECT_THAT(read("spacing_cm", "40 m", kMetric).trouble, HasSubstr("to 30.00 m"));
  EXPECT_EQ(read("spacing_cm", "").value, "") << "takes the own value away";
}

TEST(FactWords, NameMonths) {
  EXPECT_EQ(shownFact("bloom_start_month", "6", kFeet), "June");
  for (const char* typed : {"June", "june", "Jun", "6", "06"})
    EXPECT_EQ(std::stoi(read("bloom_start_month", typed).value), 6) << typed;
  for (const char* typed : {"Ju", "13", "0", "summer", "June July"})
    EXPECT_THAT(read("bloom_start_month", typed).trouble, HasSubstr("such as June")) << typed;
}

TEST(FactWords, SayWordsForTheTablesOwn) {
  EXPECT_EQ(shownFact("sun", "full;part", kFeet), "full sun, part shade");
  EXPECT_EQ(shownFact("habit_of_spread", "rhizome-slow", kFeet), "creeps slowly by rhizomes");
  for (const char* typed : {"full sun, part shade", "Full sun or part shade", "full;part"})
    EXPECT_EQ(read("sun", typed).value, "full;part") << typed;
  EXPECT_EQ(read("competitiveness", "strong").value, "high");
  EXPECT_EQ(read("competitiveness", "high").value, "high");
  EXPECT_THAT(read("sun", "half").trouble, AllOf(HasSubstr("full sun"), HasSubstr("part shade")));
  EXPECT_THAT(read("deer_resistant", "sometimes").trouble, HasSubstr("yes, no, not known"));
}

TEST(FactWords, CountWithTheirUnit) {
  EXPECT_EQ(shownFact("stratification_days_cold_moist", "60", kFeet), "60 days");
  EXPECT_EQ(shownFact("germination_min_pct", "70", kFeet), "70 %");
  for (const char* typed : {"60", "60 days", "60 d", "60 day"})
    EXPECT_EQ(read("stratification_days_cold_moist", typed).value, "60") << typed;
  EXPECT_EQ(read("stratification_days_cold_moist", "two months").value, "two months")
      << "for the table to refuse";
  EXPECT_EQ(read("germination_min_pct", "70%").value, "70");
}

// 300 seeds in a gram are 300 x 28.349523125 = 8504.86 in an ounce, told to two figures.
TEST(FactWords, CountSeedsInAnOunceOrAGram) {
  EXPECT_EQ(shownFact("seeds_per_gram", "300", kFeet), "8500 in an ounce");
  EXPECT_EQ(shownFact("seeds_per_gram", "28000", kFeet), "790000 in an ounce");
  EXPECT_EQ(shownFact("seeds_per_gram", "300", kMetric), "300 in a gram");
  EXPECT_EQ(read("seeds_per_gram", "300 in a gram").value, "300");
  EXPECT_EQ(read("seeds_per_gram", "8500 in an ounce").value, "299.83");
  EXPECT_EQ(read("seeds_per_gram", "300/g").value, "300");
  EXPECT_THAT(read("seeds_per_gram", "300").trouble, HasSubstr("gram or an ounce"));
}

TEST(FactWords, OfANegativeFigureItIsSaidThatItIsNegativeAndWhatMayBe) {
  for (const char* typed : {"-5", "-5 cm", "\u22125", "- 2 ft"}) {
    const TypedFact size = read("spacing_cm", typed);
    EXPECT_EQ(size.value, "") << typed;
    EXPECT_THAT(size.trouble, AllOf(HasSubstr("not be negative"), HasSubstr("98' 5\"")))
        << typed << ": 30 m are 98 feet and 5 inches";
  }
  EXPECT_THAT(readFact("spread_cm", "-5", kMetric).trouble, HasSubstr("to 30.00 m"));
  EXPECT_THAT(read("seeds_per_gram", "-5 in a gram").trouble, HasSubstr("not be negative"));
  EXPECT_THAT(read("bloom_start_week", "-5").trouble, HasSubstr("from 1 to 52")) << "not week 5";
  EXPECT_THAT(read("bloom_start_month", "-5").trouble, HasSubstr("not be negative")) << "not May";
}

TEST(FactWords, TellWeeksWithTheDayTheyBeginOn) {
  EXPECT_EQ(shownFact("up_by_week", "18", kFeet), "week 18, from 30 April");
  for (const char* typed : {"18", "week 18", "week 18, from 30 April", "30 April", "April 30"})
    EXPECT_EQ(read("up_by_week", typed).value, "18") << typed;
  EXPECT_THAT(read("up_by_week", "week 60").trouble, HasSubstr("from 1 to 52"));
}

TEST(FactWords, ListWithCommas) {
  EXPECT_EQ(shownFact("native_states", "IL IN", kFeet), "IL, IN");
  EXPECT_EQ(read("native_states", "il, IN").value, "IL IN");
  EXPECT_EQ(shownFact("synonyms", "Aster x;Aster y", kFeet), "Aster x, Aster y");
  EXPECT_EQ(read("synonyms", "Aster x, Aster y").value, "Aster x;Aster y");
}

// What is shown is read back as it was, to within the rounding of sizes and seeds.
TEST(FactWords, EveryShippedValueIsShownAndReadAgain) {
  const CatalogueReading shipped = readShippedCatalogue();
  int values = 0;
  for (const Species& species : shipped.catalogue.species())
    for (const auto& [column, value] : cellsOf(species)) {
      if (column == "sources") continue;
      const TypedFact again = readFact(column, shownFact(column, value, kMetric), kMetric);
      EXPECT_THAT(again.trouble, IsEmpty()) << species.botanicalName << ", " << column;
      EXPECT_EQ(again.value, value) << species.botanicalName << ", " << column;
      EXPECT_THAT(readFact(column, shownFact(column, value, kFeet), kFeet).trouble, IsEmpty())
          << species.botanicalName << ", " << column;
      ++values;
    }
  EXPECT_GT(values, 5000);
}

template <NamedEnum E>
void expectShown(const char* column) {
  for (const auto& [value, word] : EnumWords<E>::values) {
    bool there = false;
    for (const FactWord& one : factWords(column)) there = there || one.word == word;
    EXPECT_TRUE(there) << column << ", " << word;
  }
  EXPECT_EQ(factWords(column).size(), EnumWords<E>::values.size()) << column;
}

TEST(FactWords, HaveAWordForEveryChoice) {
  expectShown<Habit>("layer_form");
  expectShown<FlowerForm>("flower_form");
  expectShown<Body>("body");
  expectShown<SunNeed>("sun");
  expectShown<Moisture>("moisture");
  expectShown<SoilTexture>("soil");
  expectShown<LifeSpan>("life_span");
  expectShown<SpreadWay>("habit_of_spread");
  expectShown<Competitiveness>("competitiveness");
  expectShown<WinterLeaf>("winter_leaf");
  expectShown<Answer>("deer_resistant");
  expectShown<StockSize>("sizes_sold");
}

}  // namespace
}  // namespace tussock
