// SPDX-License-Identifier: MIT
#include "tests/core/sun/ray_scene.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tussock::test {

namespace {

double evenly(std::mt19937_64& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

int whole(std::mt19937_64& random, int low, int high) {
  return std::uniform_int_distribution<int>(low, high)(random);
}

bool oneIn(int count, std::mt19937_64& random) {
  return whole(random, 1, count) == 1;
}

RayHouse randomHouse(std::mt19937_64& random) {
  RayHouse house;
  house.at = {evenly(random, 0, 14), evenly(random, 0, 10)};
  house.width = evenly(random, 2, 5);
  house.length = house.width * evenly(random, 1.2, 2.0);
  house.turn = evenly(random, 0, 6.2);
  house.roof = static_cast<Roof>(whole(random, 0, 2));
  if (oneIn(3, random)) {
    house.otherWidth = house.width * evenly(random, 0.5, 0.95);
    house.otherLength = house.width * evenly(random, 1.3, 2.2);
  }
  if (oneIn(4, random)) house.base = evenly(random, 2.0, 3.0);
  house.eave = house.base + evenly(random, 2, 5);
  house.ridge = house.eave + (house.roof == Roof::Flat ? 0.0 : evenly(random, 0.5, 3));
  if (oneIn(3, random)) house.overhang = evenly(random, 0.2, 1.0);
  return house;
}

double randomOpenness(std::mt19937_64& random) {
  return whole(random, 0, 1) * evenly(random, 0.1, 0.9);
}

// Up to three stretches, each turned by less than a right angle from the one before.
RayFence randomFence(std::mt19937_64& random) {
  RayFence fence;
  fence.line = {{evenly(random, 0, 16), evenly(random, 0, 12)}};
  double heading = evenly(random, 0, 6.2);
  for (int i = whole(random, 1, 3); i > 0; --i) {
    const double length = evenly(random, 2, 6);
    fence.line.push_back(fence.line.back() + Point{std::cos(heading), std::sin(heading)} * length);
    heading += evenly(random, -1.5, 1.5);
  }
  fence.halfWidth = evenly(random, 0.05, 0.4);
  fence.height = evenly(random, 0.8, 2.5);
  fence.openness = randomOpenness(random);
  return fence;
}

std::vector<RayBlock::Corner> randomRing(std::mt19937_64& random, double near, double far) {
  std::vector<RayBlock::Corner> ring;
  const int corners = whole(random, 6, 9);
  for (int i = 0; i < corners; ++i)
    ring.push_back({evenly(random, near, far),
                    (i + evenly(random, -0.3, 0.3)) * 2.0 * std::numbers::pi / corners});
  return ring;
}

RayBlock randomBlock(std::mt19937_64& random) {
  RayBlock block;
  block.middle = {evenly(random, 0, 16), evenly(random, 0, 12)};
  block.outline = randomRing(random, 1.6, 4.0);
  if (oneIn(2, random)) block.court = randomRing(random, 0.3, 0.8);
  block.hedge = oneIn(2, random);
  block.height = block.hedge ? evenly(random, 0.8, 2.5) : evenly(random, 2.5, 5.0);
  if (block.hedge) block.openness = randomOpenness(random);
  return block;
}

RayTree randomTree(std::mt19937_64& random) {
  RayTree tree;
  tree.at = {evenly(random, -4, 20), evenly(random, -4, 16)};
  tree.shape = static_cast<CrownShape>(whole(random, 0, 2));
  tree.radius = evenly(random, 0.6, 3.5);
  tree.base = evenly(random, 0.3, 3);
  tree.top = tree.base + evenly(random, 1, 8);
  tree.trunkRadius = evenly(random, 0.05, 0.3);
  tree.opennessLeaf = whole(random, 0, 1) * evenly(random, 0.05, 0.4);
  tree.opennessBare = evenly(random, 0.4, 0.9);
  if (whole(random, 0, 3) == 0) tree.leafOn = 280, tree.leafOff = 160;
  return tree;
}

MonthDay monthDay(int dayOfYear) {  // of a common year, 0 for 1 January
  const std::chrono::sys_days day =
      std::chrono::sys_days(
          Date(std::chrono::year(2026), std::chrono::January, std::chrono::day(1))) +
      std::chrono::days(dayOfYear);
  const Date date(day);
  return MonthDay(date.month(), date.day());
}

Ring ringOf(const RayBlock& block, const std::vector<RayBlock::Corner>& corners) {
  Ring ring;
  for (const RayBlock::Corner& c : corners)
    ring.push_back(block.middle + Point{std::cos(c.angle), std::sin(c.angle)} * c.far);
  return ring;
}

Polygon footprintOf(const RayHouse& house) {
  const double l = house.length, w = house.width, l2 = house.otherLength, w2 = house.otherWidth;
  Ring ring = w2 > 0.0 ? Ring{{0, 0}, {l2, 0}, {l2, w2}, {w, w2}, {w, l}, {0, l}}
                       : Ring{{0, 0}, {w, 0}, {w, l}, {0, l}};
  for (Point& p : ring) p = rotated(house.at + p, Angle::radians(house.turn), house.at);
  return {ring, {}};
}

// Over a rectangle given from corner to corner in the house's own frame, the ridge northward there
// or eastward.
RayBox boxOver(const RayHouse& house, Point low, Point high, bool northward) {
  RayBox box;
  const Point half = (high - low) * 0.5;
  box.centre = rotated(house.at + low + half, Angle::radians(house.turn), house.at);
  box.turn = house.turn + (northward ? std::numbers::pi / 2.0 : 0.0);
  box.halfLength = northward ? half.y : half.x;
  box.halfWidth = northward ? half.x : half.y;
  box.hip = house.roof == Roof::Hip;
  box.middle = centroidOf(footprintOf(house));
  return box;
}

// Each leg under its roof; `out` metres beyond the walls.
std::vector<RayBox> legsOf(const RayHouse& house, double out) {
  const Point o{out, out};
  std::vector<RayBox> legs{boxOver(house, o * -1.0, Point{house.width, house.length} + o, true)};
  legs[0].eave = house.eave, legs[0].ridge = house.ridge;
  if (house.otherWidth <= 0.0) return legs;
  // The narrow leg's gable starts under the wide leg's ridge. Both have one pitch.
  const double start = house.roof == Roof::Gable ? house.width / 2.0 : -out;
  legs.push_back(
      boxOver(house, {start, -out}, Point{house.otherLength, house.otherWidth} + o, false));
  const double pitch = (house.ridge - house.eave) / legs[0].halfWidth;
  legs[1].eave = house.eave, legs[1].ridge = house.eave + pitch * legs[1].halfWidth;
  return legs;
}

void addSlopeAndSkyline(std::mt19937_64& random, RayScene& scene) {
  if (oneIn(2, random)) {
    scene.slope = evenly(random, 1, 10);
    scene.aspect = evenly(random, 0, 360);
  }
  if (!oneIn(3, random)) return;
  for (int i = whole(random, 1, 6); i > 0; --i)
    scene.skyline.push_back(
        {Angle::degrees(evenly(random, 0, 360)), Angle::degrees(evenly(random, -2, 25))});
}

void setGround(const RayScene& scene, Settings& settings) {
  settings.slope = Angle::degrees(scene.slope);
  settings.aspect = Angle::degrees(scene.aspect);
  settings.skyline = scene.skyline;
}

Building buildingOf(const RayHouse& from) {
  Building building;
  building.footprint = footprintOf(from);
  building.roof = from.roof;
  building.base = Length::metres(from.base);
  building.eave = Length::metres(from.eave);
  building.ridge = Length::metres(from.ridge);
  building.overhang = Length::metres(from.overhang);
  return building;
}

}  // namespace

std::vector<RayBox> boxesOf(const RayHouse& house) {
  std::vector<RayBox> boxes = legsOf(house, house.overhang);
  for (RayBox& box : boxes) box.bottom = house.overhang > 0.0 ? house.eave : house.base;
  if (house.overhang <= 0.0) return boxes;
  for (RayBox& wall : legsOf(house, 0.0)) {
    wall.bottom = house.base, wall.ridge = wall.eave;
    boxes.push_back(wall);
  }
  return boxes;
}

std::vector<RayBox> boxesOf(const RayFence& fence) {
  std::vector<RayBox> boxes;
  const auto heading = [&](std::size_t i) {
    const Point step = fence.line[i + 1] - fence.line[i];
    return std::atan2(step.y, step.x);
  };
  // How far the outer corner of a bend lies past where the middle lines meet.
  const auto past = [&](std::size_t i) {
    const double turn = std::remainder(heading(i + 1) - heading(i), 2.0 * std::numbers::pi);
    return fence.halfWidth * std::min(1.0, std::tan(std::abs(turn) / 2.0));
  };
  const std::size_t stretches = fence.line.size() - 1;
  for (std::size_t i = 0; i < stretches; ++i) {
    const double before = i > 0 ? past(i - 1) : 0.0, after = i + 1 < stretches ? past(i) : 0.0;
    RayBox box;
    box.turn = heading(i);
    const Point along{std::cos(box.turn), std::sin(box.turn)};
    box.centre = (fence.line[i] + fence.line[i + 1]) * 0.5 + along * ((after - before) / 2.0);
    box.halfLength = (distance(fence.line[i], fence.line[i + 1]) + before + after) / 2.0;
    box.halfWidth = fence.halfWidth;
    box.eave = box.ridge = fence.height;
    box.followsGround = true;
    boxes.push_back(box);
  }
  return boxes;
}

Polygon groundOf(const RayBlock& block) {
  Polygon ground{ringOf(block, block.outline), {}};
  if (!block.court.empty()) ground.holes.push_back(ringOf(block, block.court));
  return ground;
}

RayScene randomScene(std::mt19937_64& random) {
  RayScene scene;
  for (int i = whole(random, 0, 2); i > 0; --i) scene.houses.push_back(randomHouse(random));
  for (int i = whole(random, 0, 3); i > 0; --i) scene.fences.push_back(randomFence(random));
  for (int i = whole(random, 0, 1); i > 0; --i) scene.blocks.push_back(randomBlock(random));
  for (int i = whole(random, 0, 4); i > 0; --i) scene.trees.push_back(randomTree(random));
  addSlopeAndSkyline(random, scene);
  return scene;
}

Yard yardOf(const RayScene& scene) {
  Yard yard;
  IdSource ids(2);
  setGround(scene, yard.settings);
  for (const RayHouse& house : scene.houses) {
    Building building = buildingOf(house);
    building.id = ids.take<Building>();
    yard.buildings = yard.buildings.with(building);
  }
  const auto addBarrier = [&](Barrier barrier, double height, double openness) {
    barrier.id = ids.take<Barrier>();
    barrier.height = Length::metres(height);
    barrier.openness = openness;
    yard.barriers = yard.barriers.with(barrier);
  };
  for (const RayFence& fence : scene.fences) {
    Barrier barrier;
    barrier.line = fence.line;
    barrier.thickness = Length::metres(2.0 * fence.halfWidth);
    addBarrier(barrier, fence.height, fence.openness);
  }
  for (const RayBlock& block : scene.blocks) {
    if (block.hedge) {
      Barrier barrier;
      barrier.kind = BarrierKind::Hedge;
      barrier.footprint = groundOf(block);
      addBarrier(barrier, block.height, block.openness);
      continue;
    }
    Building building;
    building.id = ids.take<Building>();
    building.footprint = groundOf(block);
    building.eave = Length::metres(block.height);
    yard.buildings = yard.buildings.with(building);
  }
  for (const RayTree& from : scene.trees) {
    Tree tree;
    tree.id = ids.take<Tree>();
    tree.at = from.at, tree.crown = from.shape;
    tree.crownRadius = Length::metres(from.radius), tree.crownBase = Length::metres(from.base);
    tree.height = Length::metres(from.top),
    tree.trunkDiameter = Length::metres(2.0 * from.trunkRadius);
    tree.opennessLeaf = from.opennessLeaf, tree.opennessBare = from.opennessBare;
    tree.leafOn = monthDay(from.leafOn), tree.leafOff = monthDay(from.leafOff);
    yard.trees = yard.trees.with(tree);
  }
  return yard;
}

}  // namespace tussock::test
