// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/core/sun/ray_scene.h"

namespace tussock::test {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

struct Ray {
  double x, y, z, dx, dy, dz;  // from the ground at (x, y)
  double climb;                // of the height above the ground below, for one step
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
  return {c * x + s * y,           c * y - s * x, ray.z,    c * ray.dx + s * ray.dy,
          c * ray.dy - s * ray.dx, ray.dz,        ray.climb};
}

// Height of the ray over what a box's heights count from, and its change.
struct Climb {
  double start, change;
};

// Between the bottom and the planes of the roof: eave + rise (half - |offset|) / run - z >= 0.
void cutHeights(const RayBox& box, const Ray& ray, const Climb& up, double growth,
                Interval& inside) {
  const double rise = box.ridge - box.eave;
  const double run = box.halfWidth;
  double level = box.eave + growth * (1.0 + rise / run);
  double bottom = box.bottom - growth;
  if (rise <= 0.0 && bottom > level) bottom = level = (bottom + level) / 2.0;  // a board
  if (box.bottom > 0.0) inside.cut(up.start - bottom, up.change);
  if (rise <= 0.0) return inside.cut(level - up.start, -up.change);
  for (const double side : {-1.0, 1.0})
    inside.cut(level + rise * (box.halfWidth - side * ray.y) / run - up.start,
               -rise * side * ray.dy / run - up.change);
  if (!box.hip) return;
  const double hipRun = std::min(box.halfLength, box.halfWidth);
  for (const double side : {-1.0, 1.0})
    inside.cut(level + rise * (box.halfLength - side * ray.x) / hipRun - up.start,
               -rise * side * ray.dx / hipRun - up.change);
}

bool hitsBox(const RayBox& box, const Ray& world, Point rise, double growth) {
  const Ray ray = inFrame(world, box.centre, box.turn);
  const double length = box.halfLength + growth, width = box.halfWidth + growth;
  const Climb up =
      box.followsGround ? Climb{0.0, ray.climb} : Climb{ray.z - dot(rise, box.middle), ray.dz};
  Interval inside;
  inside.cut(length - ray.x, -ray.dx), inside.cut(length + ray.x, ray.dx);
  inside.cut(width - ray.y, -ray.dy), inside.cut(width + ray.y, ray.dy);
  cutHeights(box, ray, up, growth, inside);
  return inside.any();
}

// By the number of edges that a line eastward crosses.
bool isInside(const Ring& ring, Point p) {
  bool inside = false;
  for (std::size_t i = 0, n = ring.size(); i < n; ++i) {
    const Point a = ring[i], b = ring[(i + 1) % n];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
      inside = !inside;
  }
  return inside;
}

bool crosses(const Ring& ring, Point from, Point to) {
  for (std::size_t i = 0, n = ring.size(); i < n; ++i) {
    const Point a = ring[i], b = ring[(i + 1) % n];
    if ((cross(to - from, a - from) > 0.0) != (cross(to - from, b - from) > 0.0) &&
        (cross(b - a, from - a) > 0.0) != (cross(b - a, to - a) > 0.0))
      return true;
  }
  return false;
}

Ring grownFrom(Point middle, Ring ring, double growth) {
  for (Point& p : ring) p = middle + (p - middle) * (1.0 + growth);
  return ring;
}

// The way of the ray over the ground below the block's top, against the outline and its court.
bool hitsBlock(const RayBlock& block, const Ray& ray, Point rise, double growth) {
  const Polygon ground = groundOf(block);
  const Climb up =
      block.hedge ? Climb{0.0, ray.climb} : Climb{ray.z - dot(rise, centroidOf(ground)), ray.dz};
  Interval low;
  low.cut(block.height + growth - up.start, -up.change);
  if (!low.any()) return false;
  const auto over = [&](double t) { return Point{ray.x + ray.dx * t, ray.y + ray.dy * t}; };
  const Point from = over(low.from), to = over(std::min(low.to, 1e3));
  const Ring outline = grownFrom(block.middle, ground.outer, growth);
  if (crosses(outline, from, to)) return true;
  if (!isInside(outline, from)) return false;
  if (ground.holes.empty()) return true;
  const Ring court = grownFrom(block.middle, ground.holes.front(), -growth);
  return !isInside(court, from) || crosses(court, from, to);
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
  heights.cut(ray.z - base, ray.dz), heights.cut(top - ray.z, -ray.dz);
  return reachesBelowZero(ray.dx * ray.dx + ray.dy * ray.dy, 2.0 * (x * ray.dx + y * ray.dy),
                          x * x + y * y - radius * radius, heights);
}

bool hitsEllipsoid(const RayTree& tree, double growth, const Ray& ray) {
  const double r = tree.radius * (1.0 + growth), h = (tree.top - tree.base) / 2.0 * (1.0 + growth);
  const double x = (ray.x - tree.at.x) / r, y = (ray.y - tree.at.y) / r;
  const double z = (ray.z - (tree.base + tree.top) / 2.0) / h;
  const double dx = ray.dx / r, dy = ray.dy / r, dz = ray.dz / h;
  return reachesBelowZero(dx * dx + dy * dy + dz * dz, 2.0 * (x * dx + y * dy + z * dz),
                          x * x + y * y + z * z - 1.0, {});
}

// x² + y² <= (k (top - z))² between base and tip, k the radius lost per metre of height.
bool hitsCone(const RayTree& tree, double growth, const Ray& ray) {
  const double k = tree.radius * (1.0 + growth) / (tree.top - tree.base);
  const double x = ray.x - tree.at.x, y = ray.y - tree.at.y, left = tree.top - ray.z;
  Interval heights;
  heights.cut(ray.z - tree.base, ray.dz), heights.cut(left, -ray.dz);
  return reachesBelowZero(ray.dx * ray.dx + ray.dy * ray.dy - k * k * ray.dz * ray.dz,
                          2.0 * (x * ray.dx + y * ray.dy + k * k * left * ray.dz),
                          x * x + y * y - k * k * left * left, heights);
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

bool hitsTrunk(const RayTree& tree, const Ray& ray, double growth) {
  constexpr double kUnderground = -1e3;
  return hitsColumn(tree.at, tree.trunkRadius * (1.0 + 10.0 * growth), kUnderground, tree.base,
                    ray);
}

double skylineAt(const std::vector<SkylinePoint>& skyline, double azimuth) {
  if (skyline.empty()) return 0.0;
  // The nearest points to the left and to the right, by turning.
  double left = 1e9, right = 1e9, low = 0.0, high = 0.0;
  for (const SkylinePoint& p : skyline) {
    const double past = std::fmod(azimuth - p.azimuth.degrees() + 720.0, 360.0);
    const double before = std::fmod(p.azimuth.degrees() - azimuth + 720.0, 360.0);
    if (past < left) left = past, low = p.elevation.degrees();
    if (before < right) right = before, high = p.elevation.degrees();
  }
  return std::max(0.0, left + right > 0.0 ? low + (high - low) * left / (left + right) : low);
}

}  // namespace

Point RayScene::rise() const {
  const double a = aspect * kDegree;
  return Point{std::sin(a), std::cos(a)} * -std::tan(slope * kDegree);
}

double rayShare(const RayScene& scene, Point p, const SunPosition& sun, int dayOfYear,
                double growth) {
  const double azimuth = sun.azimuth.radians(), altitude = sun.altitude.radians();
  const Point rise = scene.rise();
  Ray ray{p.x,
          p.y,
          dot(rise, p),
          std::sin(azimuth) * std::cos(altitude),
          std::cos(azimuth) * std::cos(altitude),
          std::sin(altitude),
          0.0};
  ray.climb = ray.dz - dot(rise, {ray.dx, ray.dy});
  double share = 1.0;
  for (const RayHouse& house : scene.houses)
    for (const RayBox& box : boxesOf(house))
      if (hitsBox(box, ray, rise, growth)) return 0.0;
  for (const RayFence& fence : scene.fences) {
    const auto hit = [&](const RayBox& box) { return hitsBox(box, ray, rise, growth); };
    const std::vector<RayBox> boxes = boxesOf(fence);
    if (std::any_of(boxes.begin(), boxes.end(), hit)) share *= fence.openness;
  }
  for (const RayBlock& block : scene.blocks)
    if (hitsBlock(block, ray, rise, growth)) share *= block.openness;
  for (const RayTree& tree : scene.trees) {
    Ray local = ray;
    local.z -= dot(rise, tree.at);
    if (hitsTrunk(tree, local, growth)) return 0.0;
    // A crown that the slope buries in part is told by corners, three times as coarsely.
    const bool buried = tree.base < tree.radius * std::hypot(rise.x, rise.y);
    if (hitsCrown(tree, buried ? 3.0 * growth : growth, local))
      share *= inLeafOn(tree, dayOfYear) ? tree.opennessLeaf : tree.opennessBare;
  }
  return share;
}

bool isUp(const RayScene& scene, const SunPosition& sun) {
  if (sun.altitude.degrees() <= skylineAt(scene.skyline, sun.azimuth.degrees())) return false;
  const double azimuth = sun.azimuth.radians();
  return std::tan(sun.altitude.radians()) >
         dot(scene.rise(), {std::sin(azimuth), std::cos(azimuth)});
}

}  // namespace tussock::test
