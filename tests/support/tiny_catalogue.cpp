// SPDX-License-Identifier: MIT
#include "tests/support/tiny_catalogue.h"

namespace tussock::test {

namespace {

struct Row {
  const char *name, *family, *common;
  Habit habit;
  FlowerForm form;
  double height, spacing;  // metres; spread equals spacing
  std::vector<SunNeed> sun;
  int bloomFirst, bloomLast;
  const char* disease;
};

Species speciesFrom(const Row& row) {
  Species species;
  species.botanicalName = row.name;
  species.genus = species.botanicalName.substr(0, species.botanicalName.find(' '));
  species.family = row.family;
  species.commonName = row.common;
  species.habit = row.habit;
  species.flowerForm = row.form;
  species.heightLow = species.heightHigh = Length::metres(row.height);
  species.spread = species.spacing = Length::metres(row.spacing);
  species.sun = row.sun;
  species.moisture = {Moisture::Medium};
  if (species.botanicalName == kAlexanders) species.moisture.push_back(Moisture::Moist);
  species.bloomFirstMonth = row.bloomFirst;
  species.bloomLastMonth = row.bloomLast;
  species.diseaseNote = row.disease;
  species.zoneLow = 3;
  species.zoneHigh = 9;
  return species;
}

}  // namespace

Catalogue tinyCatalogue() {
  using enum Habit;
  using enum FlowerForm;
  using enum SunNeed;
  const std::vector<Row> rows{
      {kBergamot,
       "Lamiaceae",
       "wild bergamot",
       Forb,
       Globe,
       1.0,
       0.5,
       {Full, Part},
       6,
       8,
       "Powdery mildew"},
      {kBluestem, "Poaceae", "little bluestem", Grass, Plume, 0.8, 0.4, {Full}, 8, 10, ""},
      {kConeflower,
       "Asteraceae",
       "orange coneflower",
       Forb,
       Daisy,
       0.6,
       0.4,
       {Full, Part},
       7,
       9,
       ""},
      {kJoePye, "Asteraceae", "sweet Joe-Pye weed", Forb, Umbel, 2.0, 0.8, {Part}, 7, 9, ""},
      {kAlexanders, "Apiaceae", "golden alexanders", Forb, Umbel, 0.5, 0.4, {Full, Part}, 4, 6, ""},
      {kAster, "Asteraceae", "smooth aster", Forb, Daisy, 0.8, 0.4, {Full, Part}, 8, 10, ""},
      {kGoldenrod,
       "Asteraceae",
       "wreath goldenrod",
       Forb,
       Daisy,
       0.7,
       0.4,
       {Part, Shade},
       9,
       10,
       ""},
      {kBlazingStar, "Asteraceae", "dense blazing star", Forb, Spire, 1.5, 0.4, {Full}, 7, 8, ""},
      {kFoamflower, "Saxifragaceae", "foamflower", Forb, Bell, 0.3, 0.3, {Shade}, 4, 5, ""},
      {kSedge, "Cyperaceae", "Pennsylvania sedge", Sedge, None, 0.2, 0.25, {Part, Shade}, 4, 5, ""},
      {kSpringBeauty, "Montiaceae", "spring beauty", Bulb, Bell, 0.1, 0.15, {Full}, 3, 4, ""},
  };
  std::vector<Species> species;
  for (const Row& row : rows) species.push_back(speciesFrom(row));
  return Catalogue(std::move(species));
}

}  // namespace tussock::test
