// SPDX-License-Identifier: MIT
#include "core/catalog/own_plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/edit_plants.h"
#include "core/edit/draft.h"
#include "tests/support/fact_source.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::kBergamot;
using testing::HasSubstr;

const PlantValue* valueOf(const std::vector<PlantValue>& values, std::string_view column) {
  for (const PlantValue& value : values)
    if (value.column == column) return &value;
  return nullptr;
}

class OwnPlants : public testing::Test {
 protected:
  [[nodiscard]] PlantLayers layers() const { return {published_, personal_, yard_}; }
  [[nodiscard]] double spacingOf(const char* name) const {
    const MergedPlants merged = mergePlants(layers());
    const Species* species = merged.catalogue.find(name);
    return species == nullptr ? 0.0 : species->spacing.metres();
  }
  void set(const char* column, const char* value) {
    const PlantEdit edit = setOwnValue(layers(), kBergamot, column, value, ids_);
    ASSERT_TRUE(edit.errors.empty()) << edit.errors.front().text();
    yard_ = apply(yard_, edit.edit);
  }
  void setPersonal(const char* column, const char* value) {
    const PersonalPlantEdit edit = setPersonalValue(layers(), kBergamot, column, value);
    ASSERT_TRUE(edit.errors.empty()) << edit.errors.front().text();
    personal_ = withEdit(personal_, edit.edit);
  }

  Catalogue published_ = test::tinyCatalogue();
  std::vector<OwnSpecies> personal_;
  Yard yard_;
  IdSource ids_{2};
};

TEST_F(OwnPlants, AFaultyHeightIsToldUnderItsOwnColumnAlone) {
  const Catalogue shipped = readShippedCatalogue().catalogue;
  ASSERT_TRUE(shipped.find(kBergamot)->foliageHigh) << "leaves that it could bring down";
  const std::vector<OwnSpecies> wrong{{{}, kBergamot, {{"height_max_cm", "12 feet"}}}};
  const auto faults = faultsOf({shipped, wrong, yard_}, kBergamot);
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_EQ(faults.front().column, "height_max_cm");
}

TEST_F(OwnPlants, TheYardsValueGoesBeforeThePersonalOneBeforeThePublished) {
  EXPECT_NEAR(spacingOf(kBergamot), 0.5, 1e-12);
  setPersonal("spacing_cm", "60");
  EXPECT_NEAR(spacingOf(kBergamot), 0.6, 1e-12);
  set("spacing_cm", "70");
  EXPECT_NEAR(spacingOf(kBergamot), 0.7, 1e-12);
  set("spacing_cm", "");
  EXPECT_NEAR(spacingOf(kBergamot), 0.6, 1e-12);
  EXPECT_TRUE(yard_.ownSpecies.begin() == yard_.ownSpecies.end());
}

TEST_F(OwnPlants, ThePublishedValueStaysVisible) {
  set("spacing_cm", "70");
  const auto values = valuesOf(layers(), kBergamot);
  const PlantValue* spacing = valueOf(values, "spacing_cm");
  ASSERT_NE(spacing, nullptr);
  EXPECT_EQ(spacing->value, "70");
  EXPECT_EQ(spacing->origin, Origin::Yard);
  EXPECT_EQ(spacing->published, "50");
  EXPECT_EQ(valueOf(values, "family")->origin, Origin::Published);
}

TEST_F(OwnPlants, AnOwnValueIsNeverShownAsSourced) {
  set("spacing_cm", "70");
  const Catalogue merged = mergePlants(layers()).catalogue;
  EXPECT_EQ(test::sourceOf(*merged.find(kBergamot), "spacing_cm"), "own");
}

TEST_F(OwnPlants, AValueKeepsTheSourceItCameWithUntilItIsChanged) {
  personal_ = {{{}, kBergamot, {{"sources", "FNA: spacing_cm"}, {"spacing_cm", "60"}}}};
  const auto keys = [&] {
    return test::sourceOf(*mergePlants(layers()).catalogue.find(kBergamot), "spacing_cm");
  };
  EXPECT_EQ(keys(), "own FNA");
  EXPECT_EQ(valueOf(valuesOf(layers(), kBergamot), "spacing_cm")->ownSources, "FNA");
  set("spacing_cm", "70");
  EXPECT_EQ(keys(), "own") << "the yard's value is another";
  set("spacing_cm", "");
  setPersonal("spacing_cm", "65");
  EXPECT_EQ(keys(), "own");
  setPersonal("spacing_cm", "");
  EXPECT_TRUE(personal_.empty()) << "no sources of nothing";
}

TEST_F(OwnPlants, AWrongValueIsRefusedWithAReason) {
  const PlantEdit edit = setOwnValue(layers(), kBergamot, "spacing_cm", "-3", ids_);
  EXPECT_TRUE(edit.edit.empty());
  ASSERT_EQ(edit.errors.size(), 1u);
  EXPECT_THAT(edit.errors.front().text(),
              HasSubstr("spacing_cm: '-3' is not a number from 1 to 3000"));
}

TEST_F(OwnPlants, APlantThatCannotBeReadLeavesThePublishedOne) {
  Draft draft(yard_);
  draft.put(OwnSpecies{ids_.take<OwnSpecies>(), kBergamot, {{"spacing_cm", "wide"}}});
  yard_ = draft.yard();
  const MergedPlants merged = mergePlants(layers());
  EXPECT_EQ(merged.errors.size(), 1u);
  ASSERT_NE(merged.catalogue.find(kBergamot), nullptr);
  EXPECT_EQ(*merged.catalogue.find(kBergamot), *published_.find(kBergamot));
}

TEST_F(OwnPlants, ADuplicateIsANewPlantToChange) {
  const PlantEdit edit = duplicatePlant(layers(), kBergamot, "Monarda 'Claire Grace'", ids_);
  ASSERT_TRUE(edit.errors.empty());
  yard_ = apply(yard_, edit.edit);
  EXPECT_NEAR(spacingOf("Monarda 'Claire Grace'"), 0.5, 1e-12);
  EXPECT_EQ(duplicatePlant(layers(), kBergamot, "Rudbeckia fulgida", ids_).errors.size(), 1u);
  yard_ = apply(yard_, inverse(edit.edit));
  EXPECT_EQ(spacingOf("Monarda 'Claire Grace'"), 0.0);
}

TEST_F(OwnPlants, ANameAloneIsNoPlant) {
  const PlantCells alone{{"botanical_name", "Rosa gardeniana"}};
  EXPECT_GE(addOwnPlant(layers(), alone, ids_).errors.size(), 5u);  // family, form, sizes, needs
  EXPECT_GE(addPersonalPlant(layers(), alone).errors.size(), 5u);
}

TEST_F(OwnPlants, WhatNobodyCanHaveMeantIsRefused) {
  const auto added = [&](PlantCells cells) {
    for (const auto& [column, value] : copiedCells(layers(), kBergamot))
      cells.emplace(column, value);
    const PlantEdit edit = addOwnPlant(layers(), cells, ids_);
    EXPECT_EQ(addPersonalPlant(layers(), cells).errors.size(), edit.errors.size());
    return edit.errors.empty() ? std::string() : edit.errors.front().text();
  };
  EXPECT_THAT(added({{"botanical_name", "Rosa"}}),
              HasSubstr("'Rosa' is not a genus with a species"));
  EXPECT_THAT(added({{"botanical_name", "Rosa gallica"}, {"family", "Roseae"}}),
              HasSubstr("such as Asteraceae"));
  EXPECT_THAT(added({{"botanical_name", "Rosa gallica"}, {"usda_symbol", "?"}}),
              HasSubstr("a symbol of USDA PLANTS"));
  EXPECT_EQ(added({{"botanical_name", "Rosa gallica"}, {"usda_symbol", "ROGA"}}), "");
  EXPECT_EQ(added({{"botanical_name", "\u00D7 Heucherella alba"}}), "");
}

TEST_F(OwnPlants, AnotherPlantsSymbolIsRefusedAndThatPlantNamed) {
  set("usda_symbol", "MOFI");
  const PlantEdit edit = setOwnValue(layers(), "Rudbeckia fulgida", "usda_symbol", "MOFI", ids_);
  ASSERT_EQ(edit.errors.size(), 1u);
  EXPECT_THAT(edit.errors.front().text(), HasSubstr("for Monarda fistulosa has it"));
  EXPECT_TRUE(edit.edit.empty());
  set("usda_symbol", "MOFI");  // its own again
}

// A yard kept from before the entry was judged opens as it was.
TEST_F(OwnPlants, WhatWasKeptBeforeIsNotRefused) {
  PlantCells cells = copiedCells(layers(), kBergamot);
  OwnSpecies rosa{ids_.take<OwnSpecies>(), "Rosa", {}};
  for (const auto& [column, value] : cells) rosa.facts.push_back({column, value});
  Draft draft(yard_);
  draft.put(rosa);
  yard_ = draft.yard();
  EXPECT_TRUE(mergePlants(layers()).errors.empty());
  EXPECT_NE(mergePlants(layers()).catalogue.find("Rosa"), nullptr);
}

TEST_F(OwnPlants, TheFirstEndOfARangeSetsBothAndTheLastTakesBoth) {
  set("sun_hours_min", "5");
  set("sun_hours_max", "8");
  const Species* species = nullptr;
  MergedPlants merged = mergePlants(layers());
  species = merged.catalogue.find(kBergamot);
  EXPECT_EQ(species->sunHoursLeast, 5.0);
  EXPECT_EQ(species->sunHoursMost, 8.0);
  set("sun_hours_max", "");
  EXPECT_TRUE(yard_.ownSpecies.begin() == yard_.ownSpecies.end());
  setPersonal("germination_max_pct", "70");
  merged = mergePlants(layers());
  EXPECT_EQ(merged.catalogue.find(kBergamot)->sowing.germinationLow, 70);
}

// Published leaves of 65 to 110 cm, as the shipped bergamot has them.
TEST_F(OwnPlants, AHeightOfOnesOwnBringsTheLeavesDown) {
  std::vector<Species> leafy{*published_.find(kBergamot)};
  leafy.front().heightLow = Length::centimetres(75);
  leafy.front().heightHigh = Length::centimetres(120);
  leafy.front().foliageLow = Length::centimetres(65);
  leafy.front().foliageHigh = Length::centimetres(110);
  published_ = Catalogue(leafy);
  setPersonal("height_min_cm", "50");
  setPersonal("height_max_cm", "90");
  const MergedPlants merged = mergePlants(layers());
  EXPECT_TRUE(merged.errors.empty());
  const Species& low = *merged.catalogue.find(kBergamot);
  EXPECT_NEAR(low.foliageHigh->metres(), 0.9, 1e-9);
  EXPECT_NEAR(low.foliageLow->metres(), 0.65, 1e-9);
  const auto values = valuesOf(layers(), kBergamot);
  EXPECT_TRUE(valueOf(values, "foliage_height_max_cm")->heldToHeight);
  EXPECT_FALSE(valueOf(values, "foliage_height_min_cm")->heldToHeight) << "as published";
  EXPECT_FALSE(valueOf(values, "height_max_cm")->heldToHeight) << "as written";
  setPersonal("foliage_height_max_cm", "80");
  const auto written = valuesOf(layers(), kBergamot);
  EXPECT_FALSE(valueOf(written, "foliage_height_max_cm")->heldToHeight) << "now written";
}

TEST_F(OwnPlants, WeeksOfOnesOwnGoBeforeTheMonthsAndMonthsBeforePublishedWeeks) {
  set("bloom_start_week", "28");
  EXPECT_EQ(mergePlants(layers()).catalogue.find(kBergamot)->bloomWeeks()->first, 27);
  std::vector<Species> finer{*published_.find(kBergamot)};
  finer.front().bloomFirstWeek = 25;
  published_ = Catalogue(finer);
  yard_ = Yard{};
  EXPECT_EQ(mergePlants(layers()).catalogue.find(kBergamot)->bloomWeeks()->first, 24);
  set("bloom_start_month", "5");
  EXPECT_EQ(mergePlants(layers()).catalogue.find(kBergamot)->bloomWeeks()->first,
            weekOf(std::chrono::May / 1));
}

TEST_F(OwnPlants, AYardCarriesThePersonalPlantsThatItUses) {
  setPersonal("spacing_cm", "60");
  test::YardBuilder builder;
  builder.bed("Bed", "POLYGON((0 0, 9 0, 9 9, 0 9, 0 0))").drift(kBergamot, {{1.0, 1.0}});
  const ChangeSet planting = difference(yard_, builder.build(), "Plant");
  IdSource ids(1000);
  yard_ = apply(yard_, carrying(layers(), planting, ids));
  personal_.clear();  // opened on another machine
  EXPECT_NEAR(spacingOf(kBergamot), 0.6, 1e-12);
}

// The yard's value was right beside what was known when it was carried.
TEST_F(OwnPlants, ValuesOfTwoLayersThatDoNotGoTogetherSayWhoseEachIs) {
  set("height_max_cm", "110");
  personal_ = {{{}, kBergamot, {{"height_max_cm", "250"}, {"height_min_cm", "200"}}}};
  const MergedPlants merged = mergePlants(layers());
  ASSERT_EQ(merged.errors.size(), 1u);
  EXPECT_EQ(
      merged.errors.front().text(),
      "This yard's plant Monarda fistulosa, height_max_cm: '110' is not height_min_cm (200 cm) "
      "or more; height_max_cm is that of this yard, height_min_cm that of your plants of all "
      "yards. Until one of them is changed, what is published of Monarda fistulosa holds.");
  EXPECT_EQ(merged.catalogue.find(kBergamot)->heightHigh, published_.find(kBergamot)->heightHigh);
}

TEST_F(OwnPlants, APersonalEditIsUndoneByItsInverse) {
  setPersonal("spacing_cm", "60");
  const auto before = personal_;
  const PersonalPlantEdit edit = setPersonalValue(layers(), kBergamot, "spread_cm", "80");
  const auto after = withEdit(personal_, edit.edit);
  EXPECT_NE(after, before);
  EXPECT_EQ(withEdit(after, inverse(edit.edit)), before);
  EXPECT_THROW((void)withEdit({}, edit.edit), EditConflict);
}

}  // namespace
}  // namespace tussock
