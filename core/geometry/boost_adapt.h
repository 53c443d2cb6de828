// SPDX-License-Identifier: MIT
// Boost.Geometry's view of our shapes. Included by .cpp files of this folder only: it is heavy, and
// nothing else should know which library does the work.
#pragma once

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include "core/geometry/polygon.h"

namespace tussock::boosted {

namespace bg = boost::geometry;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostLine = bg::model::linestring<BoostPoint>;
using BoostPolygon = bg::model::polygon<BoostPoint, false, true>;  // anticlockwise, closed
using BoostMultiPolygon = bg::model::multi_polygon<BoostPolygon>;

inline BoostPolygon toBoost(const Polygon& polygon) {
  BoostPolygon result;
  auto copy = [](const Ring& ring, auto& target) {
    for (const Point p : ring) target.push_back({p.x, p.y});
    if (!ring.empty()) target.push_back({ring.front().x, ring.front().y});
  };
  copy(polygon.outer, result.outer());
  for (const Ring& hole : polygon.holes) {
    result.inners().emplace_back();
    copy(hole, result.inners().back());
  }
  bg::correct(result);
  return result;
}

inline Polygon fromBoost(const BoostPolygon& polygon) {
  auto copy = [](const auto& ring) {
    Ring result;
    for (const BoostPoint& p : ring) result.push_back({p.x(), p.y()});
    if (result.size() > 1 && result.front() == result.back()) result.pop_back();
    return result;
  };
  Polygon result{copy(polygon.outer()), {}};
  for (const auto& hole : polygon.inners()) result.holes.push_back(copy(hole));
  return normalised(std::move(result));
}

inline std::vector<Polygon> fromBoost(const BoostMultiPolygon& polygons) {
  constexpr double kSliver = 1e-8;  // m²
  std::vector<Polygon> result;
  for (const BoostPolygon& polygon : polygons)
    if (bg::area(polygon) > kSliver) result.push_back(fromBoost(polygon));
  return result;
}

}  // namespace tussock::boosted
