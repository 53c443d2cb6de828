// SPDX-License-Identifier: MIT
#include "core/geometry/boost_adapt.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

constexpr double kLeastGround = 1e-6;  // m²

bool finite(const Ring& ring) {
  return std::all_of(ring.begin(), ring.end(), isFinite);
}

Invalidity reasonFrom(boost::geometry::validity_failure_type failure) {
  using namespace boost::geometry;
  switch (failure) {
    case failure_few_points:
      return Invalidity::TooFewPoints;
    case failure_interior_rings_outside:
      return Invalidity::HoleOutside;
    case failure_nested_interior_rings:
      return Invalidity::HoleInHole;
    case failure_duplicate_points:
      return Invalidity::RepeatedPoint;
    case failure_invalid_coordinate:
      return Invalidity::NotFinite;
    case failure_wrong_topological_dimension:
      return Invalidity::NoArea;
    default:
      return Invalidity::CrossesItself;
  }
}

}  // namespace

std::optional<Invalidity> invalidityOf(const Polygon& polygon) {
  if (!finite(polygon.outer)) return Invalidity::NotFinite;
  for (const Ring& hole : polygon.holes)
    if (!finite(hole)) return Invalidity::NotFinite;
  if (polygon.outer.size() < 3) return Invalidity::TooFewPoints;
  // The hull, since a figure of eight has no net area either but another fault.
  if (std::abs(signedArea(convexHull(polygon.outer))) < kLeastGround) return Invalidity::NoArea;
  boost::geometry::validity_failure_type failure{};
  if (boost::geometry::is_valid(boosted::toBoost(polygon), failure)) return std::nullopt;
  return reasonFrom(failure);
}

}  // namespace tussock
