// SPDX-License-Identifier: MIT
#include "core/sun/pitched_roof.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/overlay.h"
#include "core/sun/convex_pieces.h"
#include "core/sun/legs.h"

namespace tussock {

namespace {

RoofFrame frameAlong(const Ring& ring, Point along) {
  double low[2]{1e300, 1e300};
  double high[2]{-1e300, -1e300};
  for (const Point p : ring) {
    const double at[2]{dot(p, along), cross(along, p)};
    for (int k = 0; k < 2; ++k)
      low[k] = std::min(low[k], at[k]), high[k] = std::max(high[k], at[k]);
  }
  RoofFrame frame{{}, along, (high[0] - low[0]) / 2.0, (high[1] - low[1]) / 2.0};
  frame.centre = frame.at((low[0] + high[0]) / 2.0, (low[1] + high[1]) / 2.0);
  return frame;
}

RoofFrame frameOf(const Ring& ground, const Building& building) {
  if (building.ridgeAzimuth && std::isfinite(building.ridgeAzimuth->radians()))
    return frameAlong(ground, directionOf(*building.ridgeAzimuth));
  const double axis = smallestRectangle(ground, Length()).axis.radians();
  return frameAlong(ground, {std::cos(axis), std::sin(axis)});
}

// The gable of the narrow leg ends under the ridge of the wide one; a hip runs on to the corner,
// where its slopes and those of the other meet in a hip and a valley.
Ring groundOfNarrow(const Legs& legs, Roof kind) {
  Ring ground = legs.narrow.ground;
  if (kind == Roof::Hip) return ground;
  const Point step = legs.narrow.along * (legs.wide.width / 2.0);
  ground[0] += step;
  ground[3] += step;
  return ground;
}

// Both legs slope alike, so that the narrow one has the lower ridge.
std::vector<RoofPart> partsOn(const Legs& legs, Roof kind, const RoofHeights& heights) {
  const double rise = heights.ridge - heights.eave;
  const RoofFrame wide = frameAlong(legs.wide.ground, legs.wide.along);
  const RoofFrame narrow = frameAlong(legs.narrow.ground, legs.narrow.along);
  const double lower = rise * narrow.halfWidth / wide.halfWidth;
  return {{PitchedRoof(wide, kind, heights.eave, rise), {legs.wide.ground}},
          {PitchedRoof(narrow, kind, heights.eave, lower), {groundOfNarrow(legs, kind)}}};
}

// Ridges run along the legs unless the ridge was given another direction.
bool ridgesRunAlong(const Legs& legs, const Building& building) {
  if (!building.ridgeAzimuth || !std::isfinite(building.ridgeAzimuth->radians())) return true;
  const double off = std::abs(cross(legs.wide.along, directionOf(*building.ridgeAzimuth)));
  return std::min(off, std::sqrt(std::max(0.0, 1.0 - off * off))) < std::sin(10.0 * kDegree);
}

}  // namespace

double PitchedRoof::heightAt(Point p) const {
  const Point d = p - frame_.centre;
  double share = 1.0 - std::abs(dot(d, frame_.across())) / frame_.halfWidth;
  if (hip_)
    share = std::min(share, (frame_.halfLength - std::abs(dot(d, frame_.along))) / hipRun());
  return eave_ + rise_ * std::clamp(share, 0.0, 1.0);
}

std::vector<RoofLine> PitchedRoof::creases() const {
  const double end = hip_ ? frame_.halfLength - hipRun() : frame_.halfLength;
  std::vector<RoofLine> result{{frame_.at(-end, 0.0), frame_.at(end, 0.0)}};
  if (!hip_) return result;
  for (const double side : {-1.0, 1.0})
    for (const double u : {-1.0, 1.0})
      result.push_back(
          {frame_.at(u * end, 0.0), frame_.at(u * frame_.halfLength, side * frame_.halfWidth)});
  return result;
}

std::optional<RoofHeights> roofHeightsOf(const Building& building) {
  RoofHeights heights{building.base.metres(), building.eave.metres(), building.ridge.metres()};
  if (!std::isfinite(heights.eave) || heights.eave < 0.0) return std::nullopt;
  if (!std::isfinite(heights.base) || heights.base < 0.0) heights.base = 0.0;
  const bool pitched = building.roof != Roof::Flat && std::isfinite(heights.ridge);
  if (!pitched || heights.ridge < heights.eave) heights.ridge = heights.eave;
  if (heights.base > heights.eave || heights.base >= heights.ridge) return std::nullopt;
  return heights;
}

std::vector<RoofPart> roofPartsOver(const Polygon& plan, const Building& building,
                                    const RoofHeights& heights) {
  if (heights.ridge <= heights.eave) return {};
  const std::vector<Ring> pieces = convexPieces(plan);
  if (pieces.empty()) return {};
  const auto legs = legsOf(plan);
  if (legs && ridgesRunAlong(*legs, building)) return partsOn(*legs, building.roof, heights);
  return {{PitchedRoof(frameOf(plan.outer, building), building.roof, heights.eave,
                       heights.ridge - heights.eave),
           pieces}};
}

}  // namespace tussock
