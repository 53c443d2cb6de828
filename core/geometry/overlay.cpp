// SPDX-License-Identifier: MIT
#include "core/geometry/overlay.h"

#include "core/geometry/boost_adapt.h"

namespace tussock {

using namespace boosted;

std::vector<Polygon> intersection(const Polygon& a, const Polygon& b) {
  BoostMultiPolygon result;
  bg::intersection(toBoost(a), toBoost(b), result);
  return fromBoost(result);
}

std::vector<Polygon> difference(const Polygon& a, const Polygon& b) {
  BoostMultiPolygon result;
  bg::difference(toBoost(a), toBoost(b), result);
  return fromBoost(result);
}

std::vector<Polygon> unionOf(const std::vector<Polygon>& parts) {
  BoostMultiPolygon result;
  for (const Polygon& part : parts) {
    BoostMultiPolygon next;
    bg::union_(result, toBoost(part), next);
    result = std::move(next);
  }
  return fromBoost(result);
}

bool intersects(const Polygon& a, const Polygon& b) {
  return boundsOf(a).overlaps(boundsOf(b)) && bg::intersects(toBoost(a), toBoost(b));
}

bool crosses(const Polyline& line, const Polygon& polygon) {
  BoostLine boostLine;
  for (const Point p : line) boostLine.push_back({p.x, p.y});
  return bg::intersects(boostLine, toBoost(polygon));
}

}  // namespace tussock
