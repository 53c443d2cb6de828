// SPDX-License-Identifier: MIT
#include "core/sun/roof.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/overlay.h"
#include "core/sun/convex_pieces.h"
#include "core/sun/pitched_roof.h"

namespace tussock {

namespace {

ConvexSolid bodyUnder(const PitchedRoof& roof, const Ring& piece, double bottom) {
  ConvexSolid body;
  const auto addTop = [&](Point p) { body.corners.push_back({p, roof.heightAt(p)}); };
  for (const Point p : piece) body.corners.push_back({p, bottom}), addTop(p);
  for (const auto& [a, b] : roof.creases())
    for (const Point p : clippedTo(piece, a, b)) addTop(p);
  return body;
}

ConvexSolid prism(const Ring& piece, double bottom, double top) {
  ConvexSolid body;
  for (const Point p : piece) {
    body.corners.push_back({p, bottom});
    body.corners.push_back({p, top});
  }
  return body;
}

// What lies under the roof over `plan`, from `bottom` up.
std::vector<ConvexSolid> bodiesOver(const Polygon& plan, const Building& building,
                                    const RoofHeights& heights, double bottom) {
  std::vector<ConvexSolid> result;
  if (heights.ridge <= heights.eave) {
    for (const Ring& piece : convexPieces(plan))
      result.push_back(prism(piece, bottom, heights.eave));
    return result;
  }
  for (const RoofPart& part : roofPartsOver(plan, building, heights))
    for (const Ring& piece : part.pieces) result.push_back(bodyUnder(part.roof, piece, bottom));
  return result;
}

// Eaves that reach past the walls are boxed in: level underneath, at the height of the eave.
std::vector<ConvexSolid> bodiesWithEaves(const Building& building, const RoofHeights& heights) {
  std::vector<ConvexSolid> result;
  for (const Ring& piece : convexPieces(building.footprint))
    result.push_back(prism(piece, heights.base, heights.eave));
  if (result.empty()) return {};
  for (const Polygon& plan : mitredOutset(building.footprint, building.overhang))
    for (ConvexSolid& body : bodiesOver(plan, building, heights, heights.eave))
      result.push_back(std::move(body));
  return result;
}

// From heights over the ground at `middle` to heights over the ground below.
void standOn(Point rise, Point middle, std::vector<ConvexSolid>& bodies) {
  if (rise == Point()) return;
  for (ConvexSolid& body : bodies)
    for (SitePoint& corner : body.corners)
      if (corner.up != 0.0) corner.up = std::max(0.0, corner.up - dot(rise, corner.at - middle));
}

}  // namespace

std::vector<ConvexSolid> bodiesOf(const Building& building, Point rise) {
  const auto heights = roofHeightsOf(building);
  if (!heights) return {};
  const double overhang = building.overhang.metres();
  const bool eaves = std::isfinite(overhang) && overhang > 0.0;
  std::vector<ConvexSolid> bodies =
      eaves ? bodiesWithEaves(building, *heights)
            : bodiesOver(building.footprint, building, *heights, heights->base);
  if (!bodies.empty()) standOn(rise, centroidOf(building.footprint), bodies);
  return bodies;
}

}  // namespace tussock
