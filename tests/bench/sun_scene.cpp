// SPDX-License-Identifier: MIT
#include "tests/bench/sun_scene.h"

#include <random>

#include "core/sun/sun_days.h"
#include "core/sun/sun_work.h"

namespace tussock::bench {

namespace {

void addHouses(Yard& yard) {
  const auto add = [&](Point low, Point high, Roof roof, double eave, double ridge) {
    Building building;
    building.id = Id<Building>(largestId(yard) + 1);
    building.footprint = rectangle(low, high);
    building.roof = roof;
    building.eave = Length::metres(eave);
    building.ridge = Length::metres(ridge);
    yard.buildings = yard.buildings.with(building);
  };
  add({14, 8}, {26, 16}, Roof::Gable, 3.0, 6.0);
  add({28, 10}, {34, 16}, Roof::Hip, 2.6, 4.4);
  add({3, 20}, {6, 23}, Roof::Flat, 2.4, 2.4);
}

void addFences(Yard& yard) {
  const auto add = [&](Point from, Point to, double openness) {
    Barrier barrier;
    barrier.id = Id<Barrier>(largestId(yard) + 1);
    barrier.line = {from, to};
    barrier.height = Length::metres(1.8);
    barrier.openness = openness;
    yard.barriers = yard.barriers.with(barrier);
  };
  add({0.5, 24.5}, {39.5, 24.5}, 0.0);
  add({0.5, 0.5}, {0.5, 24.5}, 0.3);
}

void addTrees(Yard& yard) {
  const Point places[]{{5, 5}, {10, 18}, {33, 4}, {37, 19}, {20, 3}, {28, 21}};
  double height = 6.0;
  for (const Point at : places) {
    Tree tree;
    tree.id = Id<Tree>(largestId(yard) + 1);
    tree.at = at;
    tree.height = Length::metres(height);
    tree.crownRadius = Length::metres(height / 3.0);
    tree.crown = height > 9.5 ? CrownShape::Cone : CrownShape::Ellipsoid;
    yard.trees = yard.trees.with(tree);
    height += 1.0;
  }
}

double within(std::mt19937_64& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

void setPlace(Yard& yard) {
  yard.settings.latitude = Angle::degrees(39.1);
  yard.settings.longitude = Angle::degrees(-84.5);
}

// A yard's solids again, elsewhere.
void addMoved(const Yard& from, Point by, Yard& to) {
  for (Building building : from.buildings) {
    building.id = Id<Building>(largestId(to) + 1);
    building.footprint = moved(building.footprint, by);
    to.buildings = to.buildings.with(building);
  }
  for (Barrier barrier : from.barriers) {
    barrier.id = Id<Barrier>(largestId(to) + 1);
    for (Point& p : barrier.line) p += by;
    to.barriers = to.barriers.with(barrier);
  }
  for (Tree tree : from.trees) {
    tree.id = Id<Tree>(largestId(to) + 1);
    tree.at += by;
    to.trees = to.trees.with(tree);
  }
}

}  // namespace

OneCore::OneCore() {
  sched_getaffinity(0, sizeof before_, &before_);
  cpu_set_t one;
  CPU_ZERO(&one);
  CPU_SET(static_cast<std::size_t>(sched_getcpu()), &one);
  sched_setaffinity(0, sizeof one, &one);
}

OneCore::~OneCore() {
  sched_setaffinity(0, sizeof before_, &before_);
}

Yard referenceYard() {
  Yard yard;
  setPlace(yard);
  addHouses(yard);
  addFences(yard);
  addTrees(yard);
  return yard;
}

// In the reference yard's proportions: 27 buildings, 18 fences, 55 trees.
Yard crowdedYard() {
  Yard yard;
  setPlace(yard);
  std::mt19937_64 random(11);
  for (int i = 0; i < 27; ++i) {
    Building building;
    building.id = Id<Building>(largestId(yard) + 1);
    const Point low{within(random, 0, 36), within(random, 0, 22)};
    building.footprint = rectangle(low, low + Point{within(random, 1.5, 4), within(random, 1, 3)});
    building.roof = static_cast<Roof>(i % 3);
    building.eave = Length::metres(within(random, 2, 3));
    building.ridge = building.eave + Length::metres(building.roof == Roof::Flat ? 0.0 : 1.0);
    yard.buildings = yard.buildings.with(building);
  }
  for (int i = 0; i < 18; ++i) {
    Barrier barrier;
    barrier.id = Id<Barrier>(largestId(yard) + 1);
    const Point from{within(random, 0, 34), within(random, 0, 20)};
    barrier.line = {from, from + (i % 2 == 0 ? Point{6, 0} : Point{0, 5})};
    barrier.height = Length::metres(1.8);
    barrier.openness = i % 2 == 0 ? 0.0 : 0.3;
    yard.barriers = yard.barriers.with(barrier);
  }
  for (int i = 0; i < 55; ++i) {
    Tree tree;
    tree.id = Id<Tree>(largestId(yard) + 1);
    tree.at = {within(random, 0, 40), within(random, 0, 25)};
    tree.height = Length::metres(within(random, 3, 9));
    tree.crownRadius = tree.height * (1.0 / 3.0);
    tree.crownBase = Length::metres(1);
    tree.crown = static_cast<CrownShape>(i % 3);
    yard.trees = yard.trees.with(tree);
  }
  return yard;
}

Yard tenYards() {
  Yard yard;
  setPlace(yard);
  const Yard one = referenceYard();
  for (int east = 0; east < 2; ++east)
    for (int north = 0; north < 5; ++north) addMoved(one, {east * 40.0, north * 25.0}, yard);
  return yard;
}

SunMapRequest requestOf(double width, double height, double cell, int step) {
  SunMapRequest request;
  request.area = {{0, 0}, {width, height}};
  request.cell = Length::metres(cell);
  request.stepMinutes = step;
  return request;
}

double cellsAndStepsComputed(const Yard& yard, const SunMapRequest& request) {
  const SunWork work = workOf(yard, request);
  double steps = 0.0;
  for (const DayClass& days : work.classes) steps += static_cast<double>(work.stepsOf(days).size());
  return steps * static_cast<double>(work.grid.asked.cells());
}

// Cells times the steps of all the season's days.
double cellsAndSteps(const Yard& yard, const SunMapRequest& request) {
  double steps = 0.0;
  for (const Date day : daysOf(growingSeason(yard.settings), request.year))
    steps += static_cast<double>(
        stepsOf(day, yard.settings.latitude, yard.settings.longitude, request.stepMinutes).size());
  const double cell = request.cell.metres();
  return steps * request.area.width() * request.area.height() / (cell * cell);
}

}  // namespace tussock::bench
