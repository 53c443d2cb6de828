// SPDX-License-Identifier: MIT
// What stands in or is laid on a bed is seen on the sheets, above its soil and under its edge.
#include <gtest/gtest.h>

#include "core/sheets/plan.h"
#include "tests/support/planted_yard.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

// Position of the last item with this wash, -1 when there is none.
int lastOf(const Sheet& sheet, Wash wash) {
  int last = -1;
  for (int i = 0; i < static_cast<int>(sheet.items.size()); ++i)
    if (const auto* path = std::get_if<PaperPath>(&sheet.items[static_cast<std::size_t>(i)]))
      if (path->wash == wash) last = i;
  return last;
}

Plan laidPlanOf(const Yard& yard) {
  PlanOptions options;
  options.date = Date{std::chrono::year{2027}, std::chrono::April, std::chrono::day{14}};
  return makePlan(yard, test::smallCatalogue(), options);
}

TEST(LaidOnBeds, PathAndShedLieOverTheSoil) {
  const Yard yard = test::YardBuilder()
                        .paving("Path", "POLYGON((4 -1,5 -1,5 5,4 5,4 -1))")
                        .building("Shed", "POLYGON((7 1,9 1,9 3,7 3,7 1))")
                        .bed("Front", "POLYGON((0 0,10 0,10 4,0 4,0 0))")
                        .drift("Monarda fistulosa", {{2, 2}})
                        .build();
  int sheets = 0;
  for (const Sheet& sheet : laidPlanOf(yard).sheets) {
    if (sheet.scale <= 0.0) continue;
    ++sheets;
    const int soil = lastOf(sheet, Wash::Soil);
    ASSERT_GE(soil, 0) << sheet.title;
    EXPECT_GT(lastOf(sheet, Wash::Paving), soil) << sheet.title;
    EXPECT_GT(lastOf(sheet, Wash::Building), soil) << sheet.title;
  }
  EXPECT_EQ(sheets, 2);
}

// A plaza drawn around and under a bed hides neither its edge nor its plants.
TEST(LaidOnBeds, ABedInAPlazaKeepsItsEdge) {
  const Yard yard = test::YardBuilder()
                        .paving("Plaza", "POLYGON((-3 -3,13 -3,13 7,-3 7,-3 -3))")
                        .bed("Front", "POLYGON((0 0,10 0,10 4,0 4,0 0))")
                        .drift("Monarda fistulosa", {{2, 2}})
                        .build();
  const Sheet overview = laidPlanOf(yard).sheets.front();
  const int paving = lastOf(overview, Wash::Paving);
  bool edgeAbove = false, plantAbove = false;
  for (int i = paving + 1; i < static_cast<int>(overview.items.size()); ++i) {
    const PaperItem& item = overview.items[static_cast<std::size_t>(i)];
    plantAbove = plantAbove || std::holds_alternative<PaperPlant>(item);
    if (const auto* path = std::get_if<PaperPath>(&item))
      edgeAbove = edgeAbove || (path->weight == Weight::Bold && path->wash == Wash::None);
  }
  EXPECT_TRUE(edgeAbove);
  EXPECT_TRUE(plantAbove);
}

TEST(LaidOnBeds, AHeightLimitIsDrawnAndNamedWithItsHeight) {
  Yard yard = test::YardBuilder()
                  .bed("Front", "POLYGON((0 0,10 0,10 4,0 4,0 0))")
                  .drift("Monarda fistulosa", {{2, 2}})
                  .build();
  HeightLimit limit;
  limit.id = Id<HeightLimit>(700);
  limit.name = "Sight lines";
  limit.outline = rectangle({6, -3}, {12, 2});
  limit.height = Length::centimetres(75);
  yard.heightLimits = yard.heightLimits.with(limit);
  const Sheet overview = laidPlanOf(yard).sheets.front();
  std::string words;  // on the drawing or, broken into lines, in the list of numbered names
  for (const PaperItem& item : overview.items)
    if (const auto* text = std::get_if<PaperText>(&item)) words += text->text + " ";
  EXPECT_NE(words.find("Sight lines (no plant, fence or building over 75 cm)"), std::string::npos)
      << words;
}

// The main layer is what is set out first and must be read through nothing.
TEST(LaidOnBeds, GroundCoversAndBulbsLieUnderTheMainLayer) {
  const Yard yard = test::YardBuilder()
                        .bed("Front", "POLYGON((0 0,10 0,10 4,0 4,0 0))")
                        .drift("Monarda fistulosa", {{2, 2}})
                        .drift("Carex pensylvanica", {{2.1, 2}, {4, 2}})
                        .spaced(0.25)
                        .layer(Layer::Ground)
                        .build();
  int sheets = 0;
  for (const Sheet& sheet : laidPlanOf(yard).sheets) {
    std::vector<PaperPlant> plants;
    for (const PaperItem& item : sheet.items)
      if (const auto* plant = std::get_if<PaperPlant>(&item)) plants.push_back(*plant);
    if (plants.empty()) continue;
    ++sheets;
    ASSERT_EQ(plants.size(), 3U) << "each once";
    EXPECT_LT(plants[0].radius, plants[1].radius) << sheet.title << ": the sedge in the open first";
    EXPECT_EQ(plants[0].mark, PlantMark::Symbol);
    EXPECT_EQ(plants[1].mark, PlantMark::Symbol) << "the bergamot";
    EXPECT_EQ(plants[2].mark, PlantMark::CentreOnly) << "the sedge under it";
  }
  EXPECT_GE(sheets, 1);
}

}  // namespace
}  // namespace tussock
