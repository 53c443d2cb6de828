// SPDX-License-Identifier: MIT
#include "core/sheets/fixed_points.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/sheets/text_width.h"

namespace tussock {

namespace {

constexpr double kFace = 0.005;  // metres that a tape along a face may cut into it
constexpr double kHeld = 0.35;   // metres of a tape that may lie in what it is held at

std::string_view compassWord(Point step) {
  static constexpr std::array<std::string_view, 8> kWords{
      "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"};
  const double degrees = azimuthOf(step).degrees();
  const auto eighth = static_cast<int>(std::floor(degrees / 45.0 + 0.5));
  return kWords[static_cast<std::size_t>((eighth % 8 + 8) % 8)];
}

std::string orElse(const std::string& name, std::string_view word) {
  return name.empty() ? std::string(word) : printable(name);
}

std::string_view barrierWord(BarrierKind kind) {
  switch (kind) {
    case BarrierKind::Wall:
      return "Wall";
    case BarrierKind::Fence:
      return "Fence";
    case BarrierKind::Hedge:
      return "Hedge";
  }
  return "Wall";
}

// As seen from the middle of the building drawn out to a square, so that the four corners of a long
// one lie in four directions too.
void addCorners(std::vector<FixedPoint>& points, const Building& building) {
  const std::string name = orElse(building.name, "Building");
  const OrientedRectangle around = smallestRectangle(building.footprint.outer, Length());
  for (const Point at : building.footprint.outer) {
    const Point step = rotated(at - around.centre, -around.axis);
    const Point square{step.x / around.length, step.y / around.width};
    points.push_back(
        {fmt::format("{}, {} corner", name, compassWord(rotated(square, around.axis))), at});
  }
}

void addEnds(std::vector<FixedPoint>& points, const Barrier& barrier) {
  if (barrier.kind == BarrierKind::Hedge || barrier.line.size() < 2) return;
  const std::string name = orElse(barrier.name, barrierWord(barrier.kind));
  const Point a = barrier.line.front(), b = barrier.line.back();
  points.push_back({fmt::format("{}, {} end", name, compassWord(a - b)), a});
  points.push_back({fmt::format("{}, {} end", name, compassWord(b - a)), b});
}

void dropAlike(std::vector<FixedPoint>& points) {
  std::vector<FixedPoint> kept;
  for (const FixedPoint& point : points)
    if (std::count_if(points.begin(), points.end(),
                      [&](const FixedPoint& other) { return other.name == point.name; }) == 1)
      kept.push_back(point);
  points = std::move(kept);
}

}  // namespace

std::vector<FixedPoint> fixedPoints(const Yard& yard) {
  std::vector<FixedPoint> points;
  for (const Building& building : yard.buildings) addCorners(points, building);
  for (const Barrier& barrier : yard.barriers) addEnds(points, barrier);
  for (const WaterPoint& water : yard.waterPoints)
    points.push_back({orElse(water.name, "Water point"), water.at});
  dropAlike(points);
  return points;
}

TapeObstacles::TapeObstacles(const Yard& yard) {
  const auto add = [&](const Polygon& ground) {
    for (Polygon& part : inset(ground, Length::metres(kFace)))
      obstacles_.push_back({part, boundsOf(part)});
  };
  for (const Building& building : yard.buildings) add(building.footprint);
  for (const Tree& tree : yard.trees)
    if (tree.trunkDiameter > Length()) add(disc(tree.at, tree.trunkDiameter * 0.5));
  for (const Barrier& barrier : yard.barriers) {
    if (!barrier.footprint.empty()) add(barrier.footprint);
    for (const Polygon& part : strip(barrier.line, barrier.thickness)) add(part);
  }
}

bool TapeObstacles::free(const FixedPoint& from, Point to) const {
  const double length = distance(from.at, to);
  if (length <= kHeld) return true;
  const Polyline tape{from.at + (to - from.at) * (kHeld / length), to};
  const Box box = boundsOf(tape);
  return std::none_of(obstacles_.begin(), obstacles_.end(), [&](const Obstacle& obstacle) {
    return box.overlaps(obstacle.box) && crosses(tape, obstacle.ground);
  });
}

}  // namespace tussock
