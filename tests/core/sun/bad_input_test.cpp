// SPDX-License-Identifier: MIT
// Yards drawn wrongly: said plainly, mapped all the same, and nothing lost.
#include <cmath>
#include <stdexcept>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/sun/map.h"
#include "core/sun/shade.h"
#include "core/sun/shade_problems.h"
#include "core/sun/solids.h"
#include "core/sun/survey_fit.h"
#include "core/sun/survey_reading.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;
using testing::HasSubstr;

SunMapRequest overview(double size, double cell) {
  SunMapRequest request;
  request.area = {{0, 0}, {size, size}};
  request.cell = Length::metres(cell);
  request.stepMinutes = 30;
  request.day = 2026y / 6 / 21;
  return request;
}

std::string refusalOf(const Yard& yard, const SunMapRequest& request) {
  try {
    (void)computeSunMap(yard, request);
  } catch (const std::invalid_argument& error) {
    return error.what();
  }
  return {};
}

Building shed() {
  Building building;
  building.id = Id<Building>(2);
  building.name = "Shed";
  building.footprint = rectangle({2, 2}, {4, 6});
  return building;
}

struct BadInput : testing::Test {
  Yard yard;
  BadInput() { yard.settings.latitude = Angle::degrees(42); }

  // The one problem of the yard; the map is there all the same, and is open where it should be.
  std::string problem() {
    const auto problems = shadeProblems(yard);
    const auto map = computeSunMap(yard, overview(20, 1));
    EXPECT_GT(map->hoursAt({18, 18})->total(), 12.0);
    EXPECT_EQ(problems.size(), 1u);
    return problems.empty() ? std::string() : sentenceOf(problems[0], UnitSystem::Metres);
  }
  std::string problemWith(Building building) {
    yard.buildings = yard.buildings.with(std::move(building));
    return problem();
  }
  std::string problemWith(Barrier barrier) {
    barrier.id = Id<Barrier>(3);
    yard.barriers = yard.barriers.with(std::move(barrier));
    return problem();
  }
  std::string problemWith(Tree tree) {
    tree.id = Id<Tree>(4);
    tree.at = {3, 4};
    yard.trees = yard.trees.with(std::move(tree));
    return problem();
  }
};

TEST_F(BadInput, SoundYardHasNoProblem) {
  yard.buildings = yard.buildings.with(shed());
  Tree tree;
  tree.id = Id<Tree>(4);
  yard.trees = yard.trees.with(tree);
  EXPECT_TRUE(shadeProblems(yard).empty());
}

// One bed, and others so far from it.
Yard withBedsApart(Yard yard, const std::vector<Point>& apart) {
  Bed bed;
  bed.id = Id<Bed>(10);
  bed.name = "Near";
  bed.outline = rectangle({0.0, 8.0}, {5.0, 10.0});
  yard.beds = yard.beds.with(bed);
  for (const Point away : apart) {
    bed.id = Id<Bed>(bed.id.value() + 1);
    bed.name = "Far";
    bed.outline = rectangle(away + Point{0.0, 8.0}, away + Point{5.0, 10.0});
    yard.beds = yard.beds.with(bed);
  }
  return yard;
}

// A bed keeps its hours, and the cells that they are counted in, however far away others lie, in
// the same rows too.
TEST_F(BadInput, BedsKilometresApart) {
  yard.buildings = yard.buildings.with(shed());
  Tree tree;
  tree.id = Id<Tree>(4);
  tree.at = {5.0, 6.5};
  yard.trees = yard.trees.with(tree);
  const Yard alone = withBedsApart(yard, {});
  const auto whole = computeSunMap(alone, seasonRequest(alone));
  const Polygon bed = alone.beds.find(Id<Bed>(10))->outline;
  EXPECT_LT(*whole->meanHours(bed), 11.0) << "in some shade";
  const Yard all = withBedsApart(yard, {{5000, 0}, {0, 5000}});
  EXPECT_TRUE(shadeProblems(all).empty());
  const SunMapRequest request = seasonRequest(all);
  EXPECT_EQ(request.cell, seasonRequest(alone).cell);
  const auto map = computeSunMap(all, request);
  ASSERT_TRUE(map);
  EXPECT_LT(map->asked().cells(), 3000u);
  EXPECT_DOUBLE_EQ(*map->meanHours(bed), *whole->meanHours(bed));
  for (const std::int64_t far : {11, 12})
    EXPECT_GT(*map->meanHours(all.beds.find(Id<Bed>(far))->outline), 11.5);
  EXPECT_FALSE(map->hoursAt({2500, 9}));
}

TEST_F(BadInput, BedsOnlyInSmallCellsTakeNoMemoryForWhatLiesBetween) {
  EXPECT_THAT(refusalOf(yard, overview(5000, 0.1)), HasSubstr("256 MB is the most"));
  for (const Point apart : {Point{5000, 5000}, {5000, 0}}) {
    const Yard both = withBedsApart(yard, {apart});
    const auto map = computeSunMap(both, onlyBeds(both, overview(5000, 0.02)));
    ASSERT_TRUE(map);
    for (const Bed& bed : both.beds) EXPECT_GT(*map->meanHours(bed.outline), 14.0);
  }
}

TEST_F(BadInput, BedsThousandsOfKilometresApart) {
  yard = withBedsApart(yard, {{4e6, 4e6}});
  const auto problems = shadeProblems(yard);
  ASSERT_EQ(problems.size(), 2u);
  EXPECT_EQ(problems[1].subject, "the bed “Far”");
  EXPECT_THAT(problems[1].trouble, HasSubstr("or lie too far apart. Put some of the beds"));
}

TEST_F(BadInput, BuildingWithoutHeight) {
  Building building = shed();
  building.eave = building.ridge = Length();
  EXPECT_EQ(
      problemWith(building),
      "The building “Shed” at 3.00 m, 4.00 m has no height and casts no shade. Give it the height "
      "of its eave.");
  EXPECT_TRUE(solidsOf(yard).bodies.empty());
}

TEST_F(BadInput, RidgeNoHigherThanTheEave) {
  Building building = shed();
  building.roof = Roof::Gable;
  building.eave = Length::metres(5.0);
  building.ridge = Length::metres(3.0);
  EXPECT_THAT(
      problemWith(building),
      HasSubstr("has its ridge no higher than its eave and is shaded as under a flat roof"));
  EXPECT_FALSE(solidsOf(yard).bodies.empty());
  building.ridge = Length::metres(7.0);
  yard.buildings = yard.buildings.with(building);
  EXPECT_TRUE(shadeProblems(yard).empty());
}

TEST_F(BadInput, PlacesAreToldInTheUnitsOfTheYard) {
  Building building = shed();
  building.eave = building.ridge = Length();
  yard.buildings = yard.buildings.with(building);
  EXPECT_THAT(sentenceOf(shadeProblems(yard)[0], UnitSystem::FeetInches),
              HasSubstr("at 9' 10\", 13' 1\" has no height"));
}

TEST_F(BadInput, BuildingThatCrossesItself) {
  Building building = shed();
  building.footprint = {{{2, 2}, {6, 6}, {6, 2}, {2, 5}}, {}};
  const std::string text = problemWith(building);
  EXPECT_THAT(text, HasSubstr("The building “Shed” at 4.00 m, 4.00 m"));
  EXPECT_THAT(text, HasSubstr("crosses or touches itself. Move its corners"));
  // No shade is thrown from outside of what was drawn.
  const auto bodies = solidsOf(yard).bodies;
  EXPECT_FALSE(bodies.empty());
  for (const ConvexSolid& body : bodies)
    for (const SitePoint& corner : body.corners) {
      EXPECT_TRUE(corner.at.x > 1.99 && corner.at.x < 6.01);
      EXPECT_TRUE(corner.at.y > 1.99 && corner.at.y < 6.01);
    }
}

// The areas of two equal halves, gone round one way and the other, cancel out; their shade does
// not.
TEST_F(BadInput, BuildingOfTwoHalvesThatCrossCastsTheShadeOfBoth) {
  Building building = shed();
  building.roof = Roof::Flat;
  building.footprint = {{{2, 2}, {6, 6}, {6, 2}, {2, 6}}, {}};
  EXPECT_THAT(problemWith(building), HasSubstr("crosses or touches itself. Move its corners"));
  const SunPosition overhead{Angle::degrees(180), Angle::degrees(89)};
  const auto shadows = shadowsOf(solidsOf(yard), overhead, std::chrono::June / 21);
  for (const Point in : {Point{2.5, 4}, Point{5.5, 4}}) EXPECT_EQ(directShare(shadows, in), 0.0);
  for (const Point out : {Point{4, 2.5}, Point{4, 5.5}}) EXPECT_EQ(directShare(shadows, out), 1.0);
}

TEST_F(BadInput, BuildingWhoseBaseIsAboveItsRoof) {
  Building building = shed();
  building.base = Length::metres(5);
  EXPECT_THAT(problemWith(building), HasSubstr("Lower its base."));
}

TEST_F(BadInput, CornersWithoutAPlace) {
  Building building = shed();
  building.footprint.outer[1].x = NAN;
  EXPECT_THAT(problemWith(building), HasSubstr("no finite position"));
}

TEST_F(BadInput, WallWithoutHeightOrLength) {
  Barrier wall;
  wall.kind = BarrierKind::Hedge;
  wall.line = {{2, 2}, {5, 5}};
  wall.height = Length();
  EXPECT_EQ(problemWith(wall),
            "The hedge at 2.00 m, 2.00 m has no height and casts no shade. Give it a height.");
  wall.height = Length::metres(2);
  wall.line = {{2, 2}, {2, 2}};
  EXPECT_THAT(problemWith(wall), HasSubstr("has no length"));
}

TEST_F(BadInput, CrownWiderThanItsTreeIsHigh) {
  yard.settings.units = UnitSystem::Metres;
  Tree tree;
  tree.height = Length::metres(4);
  tree.crownBase = Length::metres(1);
  tree.crownRadius = Length::metres(3);
  EXPECT_THAT(problemWith(tree), HasSubstr("has a crown 6.00 m wide on a height of 4.00 m"));
  EXPECT_EQ(solidsOf(yard).crowns.at(0).radius, 3.0);
}

TEST_F(BadInput, CrownThatIsNone) {
  Tree tree;
  tree.crownRadius = Length();
  EXPECT_THAT(problemWith(tree), HasSubstr("only its trunk casts shade"));
  tree.crownRadius = Length::metres(2);
  tree.crownBase = tree.height;
  EXPECT_THAT(problemWith(tree), HasSubstr("Lower the base"));
  tree.height = Length();
  EXPECT_THAT(problemWith(tree), HasSubstr("has no height"));
}

TEST_F(BadInput, LeafDatesOverTheNewYearAreTakenAtTheirWord) {
  Tree tree;
  tree.leafOn = std::chrono::October / 1;
  tree.leafOff = std::chrono::April / 20;
  EXPECT_THAT(problemWith(tree), HasSubstr("from 1 October to 20 April, over the new year"));
  EXPECT_TRUE(inLeaf(solidsOf(yard).crowns.at(0), std::chrono::January / 1));
  EXPECT_FALSE(inLeaf(solidsOf(yard).crowns.at(0), std::chrono::July / 1));
  yard.settings.latitude = Angle::degrees(-42);
  EXPECT_TRUE(shadeProblems(yard).empty());
}

TEST_F(BadInput, AllThatIsDoubtfulAboutATreeIsTold) {
  yard.settings.units = UnitSystem::Metres;
  Tree tree;
  tree.height = Length::metres(4);
  tree.crownRadius = Length::metres(6);
  tree.leafOn = std::chrono::October / 20;
  tree.leafOff = std::chrono::April / 25;
  const std::string problem = problemWith(tree);
  EXPECT_THAT(problem, HasSubstr("has a crown 12.00 m wide on a height of 4.00 m"));
  EXPECT_THAT(problem, HasSubstr("as its radius. It is in leaf from 20 October to 25 April"));
}

TEST_F(BadInput, AllThatIsDoubtfulAboutABuildingIsTold) {
  Building building = shed();
  building.footprint.outer = {{3, 4}, {6, 7}, {6, 4}, {3, 7}};
  building.eave = building.ridge = Length();
  const std::string problem = problemWith(building);
  EXPECT_THAT(problem, HasSubstr("Move its corners, or draw it again. It has no height"));
}

TEST_F(BadInput, LeafDatesOfOneDay) {
  Tree tree;
  tree.leafOff = tree.leafOn;
  EXPECT_THAT(problemWith(tree), HasSubstr("in leaf all year"));
}

TEST_F(BadInput, FiveKilometresAreMappedOrRefusedWithACellThatWorks) {
  const std::string text = refusalOf(yard, overview(5000, 0.1));
  EXPECT_THAT(text, HasSubstr("5000 m by 5000 m"));
  EXPECT_THAT(text, HasSubstr("0.1 m"));
  EXPECT_THAT(text, HasSubstr("256 MB"));
  const auto at = text.find("larger cells, of ");
  ASSERT_NE(at, std::string::npos) << text;
  const double cell = std::stod(text.substr(at + 17));
  EXPECT_EQ(refusalOf(yard, overview(5000, cell)), "");
  EXPECT_NE(refusalOf(yard, overview(5000, cell - 0.01)), "") << "the smallest";
  EXPECT_EQ(finestCell(yard, overview(5000, 0.1)), Length::metres(cell));
  EXPECT_EQ(finestCell(yard, overview(20, 0.1)), Length::metres(0.1));
}

TEST_F(BadInput, OneTroubleOfManyTreesIsToldOnce) {
  for (const int i : {10, 11, 12}) {
    Tree tree;
    tree.id = Id<Tree>(i);
    tree.name = "Oak " + std::to_string(i);
    tree.leafOn = std::chrono::November / 1;
    tree.leafOff = std::chrono::May / 1;
    if (i == 12) tree.height = Length();
    yard.trees = yard.trees.with(tree);
  }
  const auto sentences = sentencesOf(solidProblems(yard), UnitSystem::Metres);
  ASSERT_EQ(sentences.size(), 2u);
  EXPECT_THAT(sentences[0], HasSubstr("The tree “Oak 10”"));
  EXPECT_THAT(sentences[0], HasSubstr("The same holds for the tree “Oak 11”."));
  EXPECT_THAT(sentences[1], HasSubstr("The tree “Oak 12”"));
}

// Day lengths in the almanac tests are checked against published ones; this is what follows.
TEST_F(BadInput, NobodySawMoreSunThanTheDayHas) {
  SunReading reading;
  reading.day = Date(std::chrono::year(2027), std::chrono::June, std::chrono::day(21));
  reading.hours = 15.3;  // of 15.2 from sunrise to sunset at 42 degrees
  EXPECT_FALSE(readingProblem(reading, yard.settings));
  reading.hours = 20.0;
  EXPECT_THAT(readingProblem(reading, yard.settings).value_or(""),
              HasSubstr("On 2027-06-21 the sun is up for 15.2 h at this place, so 20 h cannot"));
  reading.id = Id<SunReading>(70);
  yard.sunReadings = yard.sunReadings.with(reading);
  EXPECT_TRUE(compareReadings(yard).empty());
  yard.settings.latitude = Angle::degrees(70);
  EXPECT_FALSE(readingProblem(reading, yard.settings)) << "midnight sun";
}

TEST_F(BadInput, NoCellNoStepNoPlace) {
  EXPECT_THAT(refusalOf(yard, overview(20, 0)), HasSubstr("Give a length"));
  EXPECT_THAT(refusalOf(yard, overview(20, NAN)), HasSubstr("Give a length"));
  yard.settings.latitude = Angle::degrees(97);
  EXPECT_THAT(refusalOf(yard, overview(20, 1)), HasSubstr("Set them in the yard's settings"));
}

}  // namespace
}  // namespace tussock
