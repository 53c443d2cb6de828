// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/geometry/boost_adapt.h"
#include "core/geometry/overlay.h"

namespace tussock {

using namespace boosted;

namespace {

constexpr int kCircleSides = 32;

BoostMultiPolygon buffered(const auto& shape, double metres) {
  BoostMultiPolygon result;
  bg::buffer(shape, result, bg::strategy::buffer::distance_symmetric<double>(metres),
             bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_round(kCircleSides),
             bg::strategy::buffer::end_round(kCircleSides),
             bg::strategy::buffer::point_circle(kCircleSides));
  return result;
}

// The discs are united one by one: buffering all points at once loses some among close others.
std::vector<Polygon> closed(const std::vector<Point>& points, Length radius, Length bridge) {
  const Length half = bridge / 2.0;
  std::vector<Polygon> discs;
  discs.reserve(points.size());
  for (const Point p : points) discs.push_back(disc(p, radius + half, kCircleSides));
  const std::vector<Polygon> grown = unionOf(discs);
  if (half <= Length()) return grown;
  BoostMultiPolygon shape;
  for (const Polygon& part : grown) shape.push_back(toBoost(part));
  return fromBoost(buffered(shape, -half.metres()));
}

bool holdsAll(const std::vector<Polygon>& outline, const std::vector<Point>& points) {
  return std::all_of(points.begin(), points.end(), [&](Point p) {
    return std::any_of(outline.begin(), outline.end(),
                       [&](const Polygon& piece) { return contains(piece, p); });
  });
}

}  // namespace

std::vector<Polygon> inset(const Polygon& polygon, Length by) {
  if (by <= Length()) return {polygon};
  return fromBoost(buffered(toBoost(polygon), -by.metres()));
}

std::vector<Polygon> outset(const Polygon& polygon, Length by) {
  if (by <= Length()) return {polygon};
  return fromBoost(buffered(toBoost(polygon), by.metres()));
}

std::vector<Polygon> mitredOutset(const Polygon& polygon, Length by) {
  if (by <= Length()) return {polygon};
  BoostMultiPolygon result;
  bg::buffer(toBoost(polygon), result,
             bg::strategy::buffer::distance_symmetric<double>(by.metres()),
             bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(5.0),
             bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_circle(kCircleSides));
  return fromBoost(result);
}

std::vector<Polygon> strip(const Polyline& line, Length width) {
  BoostLine boostLine;
  for (const Point p : line) boostLine.push_back({p.x, p.y});
  BoostMultiPolygon result;
  bg::buffer(boostLine, result,
             bg::strategy::buffer::distance_symmetric<double>(width.metres() / 2.0),
             bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(3.0),
             bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_circle(kCircleSides));
  return fromBoost(result);
}

// Growing by half the bridge and shrinking again joins discs that lie within it (morphological
// closing). Where many circles pass through one point the library may lose a disc, so the result is
// looked over, and the circles are made a hair larger until none is lost.
std::vector<Polygon> wrapAround(const std::vector<Point>& points, Length radius, Length bridge) {
  std::vector<Polygon> outline;
  for (const double hair : {1.0, 1.003, 1.007, 1.013}) {
    outline = closed(points, radius * hair, bridge * hair);
    if (holdsAll(outline, points)) break;
  }
  return outline;
}

Ring convexHull(const std::vector<Point>& points) {
  bg::model::multi_point<BoostPoint> cloud;
  for (const Point p : points) cloud.push_back({p.x, p.y});
  BoostPolygon hull;
  bg::convex_hull(cloud, hull);
  return fromBoost(hull).outer;
}

}  // namespace tussock
