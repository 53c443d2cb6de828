// SPDX-License-Identifier: MIT
#include "tests/core/planting/random_ground.h"

#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/tolerance.h"
#include "core/planting/one_piece.h"

namespace tussock::test {

namespace {

using Draw = std::mt19937;

double between(Draw& random, double low, double high) {
  // Not std::uniform_real_distribution: its numbers differ between libraries.
  return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
}

Ring wobbly(Draw& random, Point centre, double radius, int corners) {
  Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2.0 * std::numbers::pi * i / corners;
    ring.push_back(centre +
                   Point{std::cos(turn), std::sin(turn)} * (radius * between(random, 0.6, 1.3)));
  }
  return ring;
}

Polygon shapeFor(Draw& random, unsigned kind) {
  switch (kind % 5) {
    case 0:  // an L
      return {{{0, 0}, {9, 0}, {9, 3}, {3, 3}, {3, 8}, {0, 8}}, {}};
    case 1:  // a ring
      return normalised({wobbly(random, {4, 4}, 4.0, 17), {wobbly(random, {4, 4}, 1.2, 9)}});
    case 2:  // a strip
      return rectangle({0, 0}, {12, between(random, 0.7, 1.6)});
    case 3:
      return normalised({wobbly(random, {4, 4}, 4.0, 23), {}});
    default:
      return rotated(rectangle({0, 0}, {7, 4}), Angle::degrees(between(random, 0, 90)), {3, 3});
  }
}

void putThingsInTheWay(Draw& random, Yard& yard, IdSource& ids) {
  Paving paving;
  paving.id = ids.take<Paving>();
  const double x = between(random, 1, 6);
  paving.outline = rectangle({x, -2.0}, {x + 0.9, 10.0});
  if (random() % 2 == 0) yard.pavings = yard.pavings.with(paving);
  Tree tree;
  tree.id = ids.take<Tree>();
  tree.at = {between(random, 0, 8), between(random, 0, 5)};
  tree.trunkDiameter = Length::centimetres(between(random, 10, 60));
  yard.trees = yard.trees.with(tree);
  SteppingPlace step;
  step.id = ids.take<SteppingPlace>();
  step.at = {between(random, 0, 8), between(random, 0, 5)};
  yard.steppingPlaces = yard.steppingPlaces.with(step);
  Barrier wall;
  wall.id = ids.take<Barrier>();
  wall.line = {{between(random, 0, 4), -1}, {between(random, 4, 9), 5}};
  if (random() % 3 == 0) yard.barriers = yard.barriers.with(wall);
}

GrowRequest dropIn(Draw& random, Id<Bed> bed, const Box& box) {
  constexpr std::array kSpacings{0.2, 0.3, 0.38, 0.45, 0.6, 0.9};
  constexpr std::array kLayers{Layer::Main, Layer::Main, Layer::Ground, Layer::Bulbs};
  GrowRequest request;
  request.bed = bed;
  request.spacing = Length::metres(kSpacings[random() % kSpacings.size()]);
  request.layer = kLayers[random() % kLayers.size()];
  request.count = 1 + 2 * static_cast<int>(random() % 12);
  request.at = {between(random, box.low.x, box.high.x), between(random, box.low.y, box.high.y)};
  if (random() % 2 == 0) request.axis = Angle::degrees(between(random, 0, 180));
  request.stretch = between(random, 1.5, 5.0);
  return request;
}

}  // namespace

RandomGround randomGround(unsigned seed) {
  Draw random(seed);
  IdSource ids(2);
  Bed bed;
  bed.id = ids.take<Bed>();
  bed.outline = shapeFor(random, seed);
  if (random() % 2 == 0) bed.setback = Length::metres(between(random, 0.05, 0.5));
  bed.viewing.from = {Angle::degrees(between(random, 0, 359))};
  RandomGround result{{}, bed.id, {}};
  result.yard.beds = result.yard.beds.with(bed);
  putThingsInTheWay(random, result.yard, ids);
  for (int i = 0; i < 5; ++i) result.drops.push_back(dropIn(random, bed.id, boundsOf(bed.outline)));
  return result;
}

Yard withDrift(const Yard& yard, const GrowRequest& request, const std::vector<Point>& places,
               IdSource& ids) {
  Drift drift;
  drift.id = ids.take<Drift>();
  drift.bed = request.bed;
  drift.layer = request.layer;
  drift.spacing = request.spacing;
  for (const Point place : places) drift.plants.push_back({ids.take<Plant>(), place});
  Yard result = yard;
  result.drifts = yard.drifts.with(std::move(drift));
  return result;
}

void expectByTheRules(const Yard& yard, const Drift& drift) {
  const std::vector<Point> places = positionsOf(drift);
  EXPECT_EQ(places.size() % 2, 1U);
  EXPECT_TRUE(inOnePiece(places, drift.spacing));
  const Bed& bed = *yard.beds.find(drift.bed);
  const Length setback = std::max(bed.setback.value_or(Length()), drift.spacing / 2.0);
  for (const Point p : places) {
    EXPECT_TRUE(contains(bed.outline, p));
    EXPECT_TRUE(atLeast(Length::metres(distanceToEdge(bed.outline, p)), setback));
    for (const Drift& other : yard.drifts) {
      if (other.layer != drift.layer) continue;
      const Length least = kLooseSpacing * (other.spacing + drift.spacing) / 2.0;
      for (const Plant& plant : other.plants)
        EXPECT_TRUE(plant.at == p || atLeast(Length::metres(distance(plant.at, p)), least));
    }
  }
}

}  // namespace tussock::test
