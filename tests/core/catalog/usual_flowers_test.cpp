// SPDX-License-Identifier: MIT
#include "core/catalog/usual_flowers.h"

#include <algorithm>
#include <map>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/likeness.h"

namespace tussock {
namespace {

int medianOf(std::vector<int> values) {
  std::sort(values.begin(), values.end());
  const std::size_t middle = values.size() / 2;
  return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

// By the colour words of resources/plants.csv.
std::map<std::string, std::vector<Rgb>> coloursByWord() {
  std::map<std::string, std::vector<Rgb>> colours;
  const Catalogue facts = readShippedCatalogue().catalogue;
  for (const Species& one : facts.species())
    if (one.flowerColour) colours[one.flowerColourWord].push_back(*one.flowerColour);
  return colours;
}

Species yellowForb() {
  Species species;
  species.botanicalName = "Bidens aristosa";
  species.flowerColourWord = "yellow";
  species.bloomFirstMonth = 8, species.bloomLastMonth = 9;
  return species;
}

TEST(UsualFlowers, AreTheMedianOfTheShippedSpeciesOfEachWord) {
  const auto colours = coloursByWord();
  ASSERT_GT(colours.size(), 10u);
  for (const auto& [word, all] : colours) {
    std::vector<int> red, green, blue;
    for (const Rgb& one : all)
      red.push_back(one.red), green.push_back(one.green), blue.push_back(one.blue);
    EXPECT_EQ(usualFlowerColour(word), (Rgb{medianOf(red), medianOf(green), medianOf(blue)}))
        << word;
  }
}

TEST(UsualFlowers, TakeTheFirstWordThatIsKnown) {
  EXPECT_EQ(usualFlowerColour("Pale Yellow"), usualFlowerColour("yellow"));
  EXPECT_EQ(usualFlowerColour("violet-blue"), usualFlowerColour("violet"));
  EXPECT_FALSE(usualFlowerColour("none"));
  EXPECT_FALSE(usualFlowerColour(""));
}

TEST(UsualFlowers, StandInWhereNothingIsGivenAndSaySo) {
  Species own = yellowForb();
  EXPECT_EQ(flowerColourOf(own), usualFlowerColour("yellow"));
  EXPECT_EQ(flowerFormOf(own), FlowerForm::Daisy);
  EXPECT_THAT(standInWords(own, "flower_hex"), testing::EndsWith(", as usual for yellow"));
  EXPECT_EQ(standInWords(own, "flower_form"), "daisy, as usual for a forb");
  own.flowerColour = Rgb{1, 2, 3}, own.flowerForm = FlowerForm::Bell;
  EXPECT_EQ(flowerColourOf(own), (Rgb{1, 2, 3}));
  EXPECT_EQ(flowerFormOf(own), FlowerForm::Bell);
  EXPECT_EQ(standInWords(own, "flower_hex") + standInWords(own, "flower_form"), "");
}

TEST(UsualFlowers, NeverMakeAFernFlowerOrAShrubSeeThrough) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  for (const Species& one : facts.species()) {
    EXPECT_EQ(flowerFormOf(one), one.flowerForm) << one.botanicalName;
    EXPECT_EQ(flowerColourOf(one), one.flowerColour) << one.botanicalName;
  }
  EXPECT_NE(usualFlowerForm(Habit::Shrub), FlowerForm::Spire);
}

TEST(UsualFlowers, AreComparedAndWhatIsNotKnownIsAlikeToNothing) {
  const Species own = yellowForb();
  Species given = yellowForb(), unknown = yellowForb(), fern = yellowForb();
  given.flowerColour = usualFlowerColour("yellow");
  unknown.flowerColourWord.clear();
  fern.flowerColourWord = "none";
  EXPECT_DOUBLE_EQ(likenessOf(own, given).colour, 1.0);
  EXPECT_DOUBLE_EQ(likenessOf(unknown, unknown).colour, 0.0);
  EXPECT_DOUBLE_EQ(likenessOf(unknown, own).colour, 0.0);
  EXPECT_DOUBLE_EQ(likenessOf(fern, fern).colour, 1.0) << "neither has flowers";
}

}  // namespace
}  // namespace tussock
