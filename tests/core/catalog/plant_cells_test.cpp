// SPDX-License-Identifier: MIT
#include "core/catalog/plant_cells.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

// A column that was forgotten on either side would come back blank.
TEST(PlantCells, GiveBackEveryShippedSpecies) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  ASSERT_FALSE(facts.species().empty());
  for (const Species& species : facts.species()) {
    std::vector<CatalogueError> errors;
    const auto back = speciesFromCells(cellsOf(species), "again", errors);
    ASSERT_TRUE(back) << species.botanicalName << ": " << errors.front().text();
    EXPECT_EQ(*back, species) << species.botanicalName;
  }
}

Species fullOfFacts() {
  Species s = readShippedCatalogue().catalogue.species().front();
  s.synonyms = {"Cimicifuga racemosa", "Actaea monogyna"};
  s.spanishName = "=cohosh negro";
  s.foliageLow = Length::centimetres(60);
  s.foliageHigh = Length::centimetres(90.5);
  s.body = Body::SeeThrough;
  s.sunHoursLeast = 0.0;
  s.sunHoursMost = 4.5;
  s.soil = {SoilTexture::Loam, SoilTexture::Silt};
  s.sociability = 3;
  s.winterLeaf = WinterLeaf::Deciduous;
  s.upByWeek = 18;
  s.rabbitResistant = Answer::Yes;
  s.cautionNote = "Mind, it smells";
  s.diseaseMass = 30;
  s.nectarNote = "Bumble bees";
  s.regulated = "Nowhere known";
  s.sizesSold = {StockSize::Plug, StockSize::Gallon};
  s.sowing.germinationLow = 20;
  s.sowing.germinationHigh = 60;
  return s;
}

TEST(PlantCells, GiveBackEveryFact) {
  const Species species = fullOfFacts();
  std::vector<CatalogueError> errors;
  const PlantCells cells = cellsOf(species);
  const auto back = speciesFromCells(cells, "again", errors);
  ASSERT_TRUE(back) << errors.front().text();
  EXPECT_EQ(*back, species);
  for (const auto& [column, value] : cells) EXPECT_TRUE(isPlantColumn(column)) << column;
}

}  // namespace
}  // namespace tussock
