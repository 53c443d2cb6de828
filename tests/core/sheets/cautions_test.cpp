// SPDX-License-Identifier: MIT
// What a plan warns of, from the facts of the plants on it; common practice.
#include "core/sheets/cautions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/catalogue.h"

namespace tussock {
namespace {

using testing::HasSubstr;
using testing::Not;

// The cautions of a plan with one species of the shipped table, in one line.
std::string cautionsOf(const char* name) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  const Species& species = *facts.find(name);
  ScheduleRow row;
  row.code = "CODE";
  row.caution = species.toxicityNote;
  row.handling = species.cautionNote;
  row.regulated = species.regulated;
  std::string text;
  for (const std::string& line : cautionLines(Yard{}, {row}, "", 1000.0)) text += line + ' ';
  return text;
}

constexpr auto kGloves = "Wear gloves: sap or skin caution for CODE";
constexpr auto kEaten = "Do not eat: caution noted for CODE";

TEST(Cautions, NothingIsSaidOfAPlantWithoutAny) {
  EXPECT_THAT(cautionsOf("Fragaria virginiana"), Not(HasSubstr("CODE"))) << "a strawberry";
  EXPECT_THAT(cautionsOf("Symphyotrichum laeve"), Not(HasSubstr("CODE")));
}

TEST(Cautions, EdgesAndPricklesAskForGloves) {
  for (const char* name : {"Spartina pectinata", "Carex stricta", "Eryngium yuccifolium"}) {
    EXPECT_THAT(cautionsOf(name), HasSubstr(kGloves)) << name;
    EXPECT_THAT(cautionsOf(name), Not(HasSubstr(kEaten))) << name;
  }
}

TEST(Cautions, APlantMayHarmTheSkinAndTheEater) {
  for (const char* name : {"Asclepias syriaca", "Sanguinaria canadensis", "Caltha palustris"}) {
    EXPECT_THAT(cautionsOf(name), HasSubstr(kGloves)) << name;
    EXPECT_THAT(cautionsOf(name), HasSubstr(kEaten)) << name;
  }
  EXPECT_THAT(cautionsOf("Parthenium integrifolium"), Not(HasSubstr(kEaten))) << "a rash alone";
  EXPECT_THAT(cautionsOf("Matteuccia struthiopteris"), HasSubstr(kEaten));
  EXPECT_THAT(cautionsOf("Baptisia australis"), Not(HasSubstr(kGloves)));
}

TEST(Cautions, ARuleIsTold) {
  EXPECT_THAT(cautionsOf("Silphium perfoliatum"),
              HasSubstr("Regulated in some places: CODE; ask your state before planting."));
}

}  // namespace
}  // namespace tussock
