// SPDX-License-Identifier: MIT
#include "tests/support/random_beds.h"

#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace tussock::test {

namespace {

using Draw = std::mt19937;

double between(Draw& random, double low, double high) {
  // Not std::uniform_real_distribution: its numbers differ between libraries.
  return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
}

// Corners round a centre at radii that change slowly.
Ring rounded(Draw& random, int corners, double wobble) {
  const double a = between(random, 0.0, 6.28), b = between(random, 0.0, 6.28);
  Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2.0 * std::numbers::pi * i / corners;
    const double radius =
        1.0 + wobble * (0.6 * std::sin(2.0 * turn + a) + 0.4 * std::sin(3.0 * turn + b));
    ring.push_back({radius * std::cos(turn), radius * std::sin(turn)});
  }
  return ring;
}

// A bent band, thicker in the middle.
Ring kidney(Draw& random) {
  constexpr int kSteps = 20;
  const double bend = between(random, 1.2, 2.4), thick = between(random, 0.35, 0.55);
  Ring ring;
  for (const double side : {1.0, -1.0})
    for (int i = 0; i <= kSteps; ++i) {
      const double t =
          side > 0.0 ? static_cast<double>(i) / kSteps : 1.0 - static_cast<double>(i) / kSteps;
      const double turn = bend * (t - 0.5);
      const double half = thick * (0.3 + 0.7 * std::sqrt(std::max(0.0, 4.0 * t * (1.0 - t))));
      const double radius = 1.6 + side * half;
      ring.push_back({radius * std::sin(turn), radius * std::cos(turn)});
    }
  return ring;
}

Polygon shaped(Draw& random, BedShape shape) {
  switch (shape) {
    case BedShape::Convex:
      return {rounded(random, 24, 0.12), {}};
    case BedShape::L: {
      const double arm = between(random, 0.25, 0.45), other = between(random, 0.6, 1.2);
      return {{{0, 0}, {1.6, 0}, {1.6, arm}, {arm, arm}, {arm, other}, {0, other}}, {}};
    }
    case BedShape::Kidney:
      return {kidney(random), {}};
    case BedShape::Ring: {
      Ring inner = rounded(random, 16, 0.05);
      for (Point& p : inner) p = p * 0.3;
      return {rounded(random, 28, 0.08), {inner}};
    }
    case BedShape::Strip:
      return rectangle({0, 0}, {between(random, 3.0, 25.0), 1.0});
    case BedShape::Triangle:
      return {{{0, 0}, {between(random, 1.2, 2.0), 0}, {between(random, 0.2, 1.0), 1.0}}, {}};
  }
  return {};
}

Polygon scaled(Polygon polygon, double factor) {
  for (Point& p : polygon.outer) p = p * factor;
  for (Ring& hole : polygon.holes)
    for (Point& p : hole) p = p * factor;
  return normalised(std::move(polygon));
}

Viewing viewing(Draw& random, BedShape shape) {
  if (shape == BedShape::Ring) return {true, {}};
  const double side = between(random, 0.0, 2.0 * std::numbers::pi);
  switch (random() % 5) {
    case 0:
      return {true, {}};
    case 1:
      return {false, {Angle::radians(side), Angle::radians(side + std::numbers::pi / 2.0)}};
    default:
      return {false, {Angle::radians(side)}};
  }
}

void addTree(Yard& yard) {
  Tree tree;
  tree.id = Id<Tree>(5);
  tree.crownRadius = Length::metres(1.8);
  tree.height = Length::metres(5.0);
  yard.trees = yard.trees.with(tree);
}

Settings settings() {
  Settings settings;
  settings.latitude = Angle::degrees(42.0);
  settings.longitude = Angle::degrees(-88.0);
  settings.hardinessZone = "5b";
  settings.state = "IL";
  settings.lastFrost = MonthDay{std::chrono::April, std::chrono::day{25}};
  settings.firstFrost = MonthDay{std::chrono::October, std::chrono::day{15}};
  return settings;
}

}  // namespace

std::string_view nameOf(BedShape shape) {
  constexpr std::array<std::string_view, kBedShapes> kNames{"convex", "L",     "kidney",
                                                            "ring",   "strip", "triangle"};
  return kNames[static_cast<std::size_t>(shape)];
}

RandomBed randomBed(unsigned seed) {
  Draw random(seed * 9973U + 11U);
  RandomBed result;
  result.shape = static_cast<BedShape>(seed % kBedShapes);
  result.yard.settings = settings();
  Bed bed;
  bed.id = result.bed = Id<Bed>(2);
  bed.name = "Bed";
  const Polygon shape = shaped(random, result.shape);
  const double area = 3.0 * std::pow(400.0 / 3.0, between(random, 0.0, 1.0));
  const double factor =
      result.shape == BedShape::Strip ? 1.0 : std::sqrt(area / areaOf(shape).squareMetres());
  bed.outline = scaled(shape, factor);
  bed.outline = rotated(bed.outline, Angle::degrees(between(random, 0.0, 360.0)), Point{});
  bed.moisture = random() % 4 == 0 ? Moisture::Moist : Moisture::Medium;
  bed.viewing = viewing(random, result.shape);
  result.yard.beds = result.yard.beds.with(bed);
  if (result.shape == BedShape::Ring) addTree(result.yard);
  return result;
}

RandomBed randomBedSeenAcross(unsigned seed) {
  RandomBed result = randomBed(seed);
  Draw random(seed * 7919U + 5U);
  const double side = between(random, 0.0, 2.0 * std::numbers::pi);
  const bool four = seed / kBedShapes % 3 == 2;
  Bed bed = *result.yard.beds.find(result.bed);
  bed.viewing = {false, {}};
  for (int quarter = 0; quarter < 4; quarter += four ? 1 : 2)
    bed.viewing.from.push_back(Angle::radians(side + quarter * std::numbers::pi / 2.0));
  result.yard.beds = result.yard.beds.with(bed);
  return result;
}

}  // namespace tussock::test
