// SPDX-License-Identifier: MIT
#include "tests/support/planted_yard.h"

#include "core/edit/draft.h"
#include "core/planting/edit_drift.h"

namespace tussock::test {

namespace {

struct Facts {
  const char *botanical, *common;
  Habit habit;
  FlowerForm form;
  double height, spacing;  // cm
  int firstMonth, lastMonth;
  Rgb flower;
  const char* toxicity;
};

const std::vector<Facts>& table() {
  static const std::vector<Facts> facts{{"Echinacea purpurea",
                                         "purple coneflower",
                                         Habit::Forb,
                                         FlowerForm::Daisy,
                                         95,
                                         45,
                                         6,
                                         9,
                                         {0xC0, 0x5A, 0x9C},
                                         ""},
                                        {"Monarda fistulosa",
                                         "wild bergamot",
                                         Habit::Forb,
                                         FlowerForm::Globe,
                                         110,
                                         60,
                                         7,
                                         9,
                                         {0xB4, 0x8C, 0xCC},
                                         ""},
                                        {"Schizachyrium scoparium",
                                         "little bluestem",
                                         Habit::Grass,
                                         FlowerForm::Plume,
                                         90,
                                         45,
                                         8,
                                         10,
                                         {0xC8, 0x9A, 0x70},
                                         ""},
                                        {"Asclepias tuberosa",
                                         "butterfly milkweed",
                                         Habit::Forb,
                                         FlowerForm::Umbel,
                                         60,
                                         45,
                                         6,
                                         8,
                                         {0xF0, 0x80, 0x20},
                                         "Sap can irritate skin; toxic if eaten"},
                                        {"Carex pensylvanica",
                                         "Pennsylvania sedge",
                                         Habit::Sedge,
                                         FlowerForm::None,
                                         25,
                                         30,
                                         4,
                                         5,
                                         {0xA0, 0xB0, 0x60},
                                         ""},
                                        {"Liatris spicata",
                                         "dense blazing star",
                                         Habit::Forb,
                                         FlowerForm::Spire,
                                         100,
                                         35,
                                         7,
                                         9,
                                         {0xA0, 0x50, 0xB0},
                                         ""},
                                        {"Coreopsis lanceolata",
                                         "lanceleaf coreopsis",
                                         Habit::Forb,
                                         FlowerForm::Daisy,
                                         50,
                                         35,
                                         5,
                                         7,
                                         {0xF2, 0xC8, 0x20},
                                         ""},
                                        {"Penstemon digitalis",
                                         "foxglove beardtongue",
                                         Habit::Forb,
                                         FlowerForm::Bell,
                                         90,
                                         40,
                                         5,
                                         7,
                                         {0xF4, 0xF0, 0xF4},
                                         ""},
                                        {"Symphyotrichum oblongifolium 'October Skies'",
                                         "aromatic aster",
                                         Habit::Forb,
                                         FlowerForm::Daisy,
                                         60,
                                         50,
                                         9,
                                         10,
                                         {0x80, 0x80, 0xD0},
                                         ""}};
  return facts;
}

Species speciesOf(const Facts& facts) {
  Species species;
  species.botanicalName = facts.botanical, species.commonName = facts.common;
  species.genus = genusOf(facts.botanical);
  species.habit = facts.habit, species.flowerForm = facts.form;
  species.heightLow = Length::centimetres(facts.height * 0.8);
  species.heightHigh = Length::centimetres(facts.height * 1.2);
  species.spacing = species.spread = Length::centimetres(facts.spacing);
  species.bloomFirstMonth = facts.firstMonth, species.bloomLastMonth = facts.lastMonth;
  species.flowerColour = facts.flower, species.toxicityNote = facts.toxicity;
  return species;
}

Point middleOfCell(const Box& box, int columns, int rows, int column, int row) {
  return box.low + Point{box.width() * (column + 0.5) / columns, box.height() * (row + 0.5) / rows};
}

struct Planting {
  Id<Bed> bed;
  int count = 5;
  StockSize size = StockSize::Plug;
};

Yard withDrift(const Yard& yard, const Planting& planting, std::size_t species, Point at,
               IdSource& ids) {
  const Catalogue facts = smallCatalogue();
  const Species& chosen = *facts.find(table()[species % table().size()].botanical);
  GrowRequest request;
  request.bed = planting.bed, request.spacing = chosen.spacing;
  request.count = planting.count, request.at = at;
  const DriftEdit edit = plantDrift(yard, chosen, request, ids, planting.size);
  return apply(yard, edit.edit);
}

void putSite(Draft& draft) {
  Settings settings;
  settings.name = "Tannery Lane front yard", settings.state = "OH";
  draft.put(settings);
  draft.put(LotLine{Id<LotLine>(2), "lot", rectangle({0, 0}, {18, 14}), ""});
  Building house;
  house.id = Id<Building>(3), house.name = "House", house.footprint = rectangle({3, 9}, {14, 13.5});
  draft.put(house);
  draft.put(Paving{Id<Paving>(4), "Walk", rectangle({8, 0}, {9.2, 9}), ""});
  Tree tree;
  tree.id = Id<Tree>(5), tree.name = "Oak", tree.at = {15.5, 5},
  tree.crownRadius = Length::metres(2);
  draft.put(tree);
  draft.put(WaterPoint{Id<WaterPoint>(6), "Hose bib", {13, 8.9}, ""});
  BuriedLine gas;
  gas.id = Id<BuriedLine>(7), gas.kind = "gas", gas.line = {{16.8, 0}, {16.8, 12}, {14, 12}};
  draft.put(gas);
}

}  // namespace

Catalogue smallCatalogue() {
  std::vector<Species> species;
  for (const Facts& facts : table()) species.push_back(speciesOf(facts));
  return Catalogue(species);
}

Yard plantedYard() {
  Draft draft{Yard{}};
  putSite(draft);
  Bed bed;
  bed.id = Id<Bed>(10), bed.name = "Walk bed";
  bed.outline = {{{0.8, 5.0},
                  {1.6, 4.2},
                  {3.6, 3.8},
                  {6.0, 4.0},
                  {7.6, 4.6},
                  {7.7, 6.0},
                  {6.6, 6.9},
                  {4.2, 7.3},
                  {2.0, 7.0},
                  {0.9, 6.2}},
                 {}};
  bed.viewing.from = {Angle::degrees(180)};
  draft.put(bed);
  Bed corner;
  corner.id = Id<Bed>(11), corner.name = "Corner bed";
  corner.outline = rectangle({10, 1}, {13.5, 2.8});
  corner.viewing.from = {Angle::degrees(180)};
  draft.put(corner);
  IdSource ids(20);
  Yard yard = draft.yard();
  const Box box = boundsOf(bed.outline);
  constexpr int kCounts[] = {7, 5, 9, 7, 5, 7, 3, 5, 7, 5, 3, 7};
  for (int i = 0; i < 12; ++i)
    yard = withDrift(yard, {bed.id, kCounts[i]}, static_cast<std::size_t>(i),
                     middleOfCell(box, 4, 3, i % 4, i / 4), ids);
  const Box low = boundsOf(corner.outline);
  yard = withDrift(yard, {corner.id, 7}, 4, middleOfCell(low, 3, 1, 0, 0), ids);
  yard = withDrift(yard, {corner.id, 5}, 6, middleOfCell(low, 3, 1, 1, 0), ids);
  return withDrift(yard, {corner.id, 1, StockSize::Existing}, 0, middleOfCell(low, 3, 1, 2, 0),
                   ids);
}

Yard griddedYard(double width, double depth, int columns, int rows) {
  Draft draft{Yard{}};
  Settings settings;
  settings.name = "Grid";
  draft.put(settings);
  Bed bed;
  bed.id = Id<Bed>(10), bed.name = "Grid bed";
  bed.outline = rectangle({0, 0}, {width, depth});
  draft.put(bed);
  const Catalogue facts = smallCatalogue();
  std::int64_t next = 20;
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column) {
      const Species& species = facts.species()[static_cast<std::size_t>(row + column) % 9];
      Drift drift;
      drift.id = Id<Drift>(next++), drift.bed = bed.id, drift.species = species.botanicalName;
      drift.spacing = Length::centimetres(30);
      const Point at = middleOfCell(boundsOf(bed.outline), columns, rows, column, row);
      for (const Point step :
           {Point{0, 0}, Point{0.3, 0}, Point{-0.3, 0}, Point{0.15, 0.26}, Point{-0.15, 0.26}})
        drift.plants.push_back({Id<Plant>(next++), at + step});
      draft.put(drift);
    }
  return draft.yard();
}

}  // namespace tussock::test
