// SPDX-License-Identifier: MIT
#include "tests/core/sun/ray_scene.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tussock::test {

namespace {

struct Ray {
  double x, y, dx, dy, dz;  // from the ground at (x, y)
};

struct Interval {
  double from = 0.0, to = 1e9;
  void cut(double start, double change) {  // keeps start + change t >= 0
    if (std::abs(change) < 1e-15) {
      if (start < 0.0) to = -1.0;
    } else if (change > 0.0) {
      from = std::max(from, -start / change);
    } else {
      to = std::min(to, -start / change);
    }
  }
  [[nodiscard]] bool any() const { return from <= to; }
};

// The same ray seen from a frame turned and moved.
Ray inFrame(const Ray& ray, Point centre, double turn) {
  const double c = std::cos(turn), s = std::sin(turn);
  const double x = ray.x - centre.x, y = ray.y - centre.y;
  return {c * x + s * y, c * y - s * x, c * ray.dx + s * ray.dy, c * ray.dy - s * ray.dx, ray.dz};
}

bool hitsBox(const RayBox& box, const Ray& world, double growth) {
  const Ray ray = inFrame(world, box.centre, box.turn);
  const double length = box.halfLength + growth, width = box.halfWidth + growth;
  const double rise = box.ridge - box.eave;
  Interval inside;
  inside.cut(length - ray.x, -ray.dx), inside.cut(length + ray.x, ray.dx);
  inside.cut(width - ray.y, -ray.dy), inside.cut(width + ray.y, ray.dy);
  if (rise <= 0.0) {
    inside.cut(box.eave + growth, -ray.dz);
    return inside.any();
  }
  // Under each roof plane: eave + rise (half - |offset|) / run - z >= 0.
  const double run = box.halfWidth;
  const double level = box.eave + growth * (1.0 + rise / run);
  for (const double side : {-1.0, 1.0})
    inside.cut(level + rise * (box.halfWidth - side * ray.y) / run,
               -rise * side * ray.dy / run - ray.dz);
  if (box.hip)
    for (const double side : {-1.0, 1.0}) {
      const double hipRun = std::min(box.halfLength, box.halfWidth);
      inside.cut(level + rise * (box.halfLength - side * ray.x) / hipRun,
                 -rise * side * ray.dx / hipRun - ray.dz);
    }
  return inside.any();
}

// Whether a t² + b t + c <= 0 somewhere in the interval: at an end, or at the lowest point between.
bool reachesBelowZero(double a, double b, double c, const Interval& where) {
  if (!where.any()) return false;
  const auto below = [&](double t) { return a * t * t + b * t + c <= 0.0; };
  if (below(where.from) || below(where.to)) return true;
  return a > 0.0 && below(std::clamp(-b / (2.0 * a), where.from, where.to));
}

bool hitsColumn(Point at, double radius, double base, double top, const Ray& ray) {
  const double x = ray.x - at.x, y = ray.y - at.y;
  Interval heights;
  heights.cut(-base, ray.dz), heights.cut(top, -ray.dz);
  return reachesBelowZero(ray.dx * ray.dx + ray.dy * ray.dy, 2.0 * (x * ray.dx + y * ray.dy),
                          x * x + y * y - radius * radius, heights);
}

bool hitsEllipsoid(const RayTree& tree, double growth, const Ray& ray) {
  const double r = tree.radius * (1.0 + growth), h = (tree.top - tree.base) / 2.0 * (1.0 + growth);
  const double x = (ray.x - tree.at.x) / r, y = (ray.y - tree.at.y) / r;
  const double z = -(tree.base + tree.top) / 2.0 / h;
  const double dx = ray.dx / r, dy = ray.dy / r, dz = ray.dz / h;
  return reachesBelowZero(dx * dx + dy * dy + dz * dz, 2.0 * (x * dx + y * dy + z * dz),
                          x * x + y * y + z * z - 1.0, {});
}

// x² + y² <= (k (top - z))² between base and tip, k the radius lost per metre of height.
bool hitsCone(const RayTree& tree, double growth, const Ray& ray) {
  const double k = tree.radius * (1.0 + growth) / (tree.top - tree.base);
  const double x = ray.x - tree.at.x, y = ray.y - tree.at.y;
  Interval heights;
  heights.cut(-tree.base, ray.dz), heights.cut(tree.top, -ray.dz);
  return reachesBelowZero(ray.dx * ray.dx + ray.dy * ray.dy - k * k * ray.dz * ray.dz,
                          2.0 * (x * ray.dx + y * ray.dy + k * k * tree.top * ray.dz),
                          x * x + y * y - k * k * tree.top * tree.top, heights);
}

bool hitsCrown(const RayTree& tree, double growth, const Ray& ray) {
  switch (tree.shape) {
    case CrownShape::Ellipsoid:
      return hitsEllipsoid(tree, growth, ray);
    case CrownShape::Cone:
      return hitsCone(tree, growth, ray);
    case CrownShape::Column:
      return hitsColumn(tree.at, tree.radius * (1.0 + growth), tree.base, tree.top, ray);
  }
  return false;
}

bool inLeafOn(const RayTree& tree, int day) {
  if (tree.leafOn <= tree.leafOff) return day >= tree.leafOn && day < tree.leafOff;
  return day >= tree.leafOn || day < tree.leafOff;
}

double uniform(std::mt19937_64& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

int whole(std::mt19937_64& random, int low, int high) {
  return std::uniform_int_distribution<int>(low, high)(random);
}

RayBox randomHouse(std::mt19937_64& random) {
  RayBox box;
  box.centre = {uniform(random, 0, 16), uniform(random, 0, 12)};
  box.halfWidth = uniform(random, 1, 3);
  box.halfLength = box.halfWidth * uniform(random, 1.1, 2.0);
  box.turn = uniform(random, 0, 3.1);
  box.eave = uniform(random, 2, 5);
  box.ridge = box.eave + (whole(random, 0, 2) == 0 ? 0.0 : uniform(random, 0.5, 3));
  box.hip = whole(random, 0, 1) == 1;
  return box;
}

RayBox randomFence(std::mt19937_64& random) {
  RayBox box;
  box.centre = {uniform(random, 0, 16), uniform(random, 0, 12)};
  box.halfLength = uniform(random, 1, 6);
  box.halfWidth = uniform(random, 0.05, 0.4);
  box.turn = uniform(random, 0, 3.1);
  box.eave = box.ridge = uniform(random, 0.8, 2.5);
  box.openness = whole(random, 0, 1) * uniform(random, 0.1, 0.9);
  return box;
}

RayTree randomTree(std::mt19937_64& random) {
  RayTree tree;
  tree.at = {uniform(random, -4, 20), uniform(random, -4, 16)};
  tree.shape = static_cast<CrownShape>(whole(random, 0, 2));
  tree.radius = uniform(random, 0.6, 3.5);
  tree.base = uniform(random, 0.3, 3);
  tree.top = tree.base + uniform(random, 1, 8);
  tree.trunkRadius = uniform(random, 0.05, 0.3);
  tree.opennessLeaf = whole(random, 0, 1) * uniform(random, 0.05, 0.4);
  tree.opennessBare = uniform(random, 0.4, 0.9);
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

Point corner(const RayBox& box, double u, double v) {
  const Point p{box.centre.x + u, box.centre.y + v};
  return rotated(p, Angle::radians(box.turn), box.centre);
}

}  // namespace

RayScene randomScene(std::mt19937_64& random) {
  RayScene scene;
  for (int i = whole(random, 0, 2); i > 0; --i) scene.houses.push_back(randomHouse(random));
  for (int i = whole(random, 0, 3); i > 0; --i) scene.fences.push_back(randomFence(random));
  for (int i = whole(random, 0, 4); i > 0; --i) scene.trees.push_back(randomTree(random));
  return scene;
}

Yard yardOf(const RayScene& scene) {
  Yard yard;
  IdSource ids(2);
  for (const RayBox& box : scene.houses) {
    Building building;
    building.id = ids.take<Building>();
    const double l = box.halfLength, w = box.halfWidth;
    building.footprint = {
        {corner(box, -l, -w), corner(box, l, -w), corner(box, l, w), corner(box, -l, w)}, {}};
    building.eave = Length::metres(box.eave), building.ridge = Length::metres(box.ridge);
    building.roof = box.ridge <= box.eave ? Roof::Flat : box.hip ? Roof::Hip : Roof::Gable;
    yard.buildings = yard.buildings.with(building);
  }
  for (const RayBox& box : scene.fences) {
    Barrier barrier;
    barrier.id = ids.take<Barrier>();
    barrier.line = {corner(box, -box.halfLength, 0), corner(box, 0.1, 0),
                    corner(box, box.halfLength, 0)};
    barrier.thickness = Length::metres(2.0 * box.halfWidth),
    barrier.height = Length::metres(box.eave);
    barrier.openness = box.openness;
    yard.barriers = yard.barriers.with(barrier);
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

double rayShare(const RayScene& scene, Point p, const SunPosition& sun, int dayOfYear,
                double growth) {
  const double azimuth = sun.azimuth.radians(), altitude = sun.altitude.radians();
  const Ray ray{p.x, p.y, std::sin(azimuth) * std::cos(altitude),
                std::cos(azimuth) * std::cos(altitude), std::sin(altitude)};
  double share = 1.0;
  for (const RayBox& box : scene.houses)
    if (hitsBox(box, ray, growth)) return 0.0;
  for (const RayBox& box : scene.fences)
    if (hitsBox(box, ray, growth)) share *= box.openness;
  for (const RayTree& tree : scene.trees) {
    if (hitsColumn(tree.at, tree.trunkRadius * (1.0 + 10.0 * growth), 0.0, tree.base, ray))
      return 0.0;
    if (hitsCrown(tree, growth, ray))
      share *= inLeafOn(tree, dayOfYear) ? tree.opennessLeaf : tree.opennessBare;
  }
  return share;
}

}  // namespace tussock::test
