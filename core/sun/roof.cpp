// SPDX-License-Identifier: MIT
#include "core/sun/roof.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/geometry/overlay.h"
#include "core/sun/convex_pieces.h"
#include "core/sun/legs.h"

namespace tussock {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

// The rectangle a pitched roof stands on: u along the ridge, v across it, from the centre.
struct Frame {
  Point centre, along;
  double halfLength = 0.0, halfWidth = 0.0;

  [[nodiscard]] Point across() const { return {-along.y, along.x}; }
  [[nodiscard]] Point at(double u, double v) const { return centre + along * u + across() * v; }
};

Frame frameAlong(const Ring& ring, Point along) {
  double low[2]{1e300, 1e300};
  double high[2]{-1e300, -1e300};
  for (const Point p : ring) {
    const double at[2]{dot(p, along), cross(along, p)};
    for (int k = 0; k < 2; ++k)
      low[k] = std::min(low[k], at[k]), high[k] = std::max(high[k], at[k]);
  }
  Frame frame{{}, along, (high[0] - low[0]) / 2.0, (high[1] - low[1]) / 2.0};
  frame.centre = frame.at((low[0] + high[0]) / 2.0, (low[1] + high[1]) / 2.0);
  return frame;
}

Frame frameOf(const Ring& ground, const Building& building) {
  if (building.ridgeAzimuth && std::isfinite(building.ridgeAzimuth->radians()))
    return frameAlong(ground, directionOf(*building.ridgeAzimuth));
  const double axis = smallestRectangle(ground, Length()).axis.radians();
  return frameAlong(ground, {std::cos(axis), std::sin(axis)});
}

// Height is a concave function over the rectangle, so what lies under it over a convex piece of the
// footprint is convex.
class PitchedRoof {
 public:
  PitchedRoof(const Frame& frame, Roof kind, double eave, double rise)
      : frame_(frame), hip_(kind == Roof::Hip), eave_(eave), rise_(rise) {}

  [[nodiscard]] double heightAt(Point p) const {
    const Point d = p - frame_.centre;
    double share = 1.0 - std::abs(dot(d, frame_.across())) / frame_.halfWidth;
    if (hip_)
      share = std::min(share, (frame_.halfLength - std::abs(dot(d, frame_.along))) / hipRun());
    return eave_ + rise_ * std::clamp(share, 0.0, 1.0);
  }
  // Lines along which the roof changes its slope: the ridge and the hips.
  [[nodiscard]] std::vector<std::array<Point, 2>> creases() const {
    const double end = hip_ ? frame_.halfLength - hipRun() : frame_.halfLength;
    std::vector<std::array<Point, 2>> result{{frame_.at(-end, 0.0), frame_.at(end, 0.0)}};
    if (!hip_) return result;
    for (const double side : {-1.0, 1.0})
      for (const double u : {-1.0, 1.0})
        result.push_back(
            {frame_.at(u * end, 0.0), frame_.at(u * frame_.halfLength, side * frame_.halfWidth)});
    return result;
  }

 private:
  // Hip ends slope as steeply as the sides where the house is long enough.
  [[nodiscard]] double hipRun() const { return std::min(frame_.halfLength, frame_.halfWidth); }

  Frame frame_;
  bool hip_;
  double eave_, rise_;
};

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

struct Heights {
  double base = 0.0, eave = 0.0, ridge = 0.0;
};

// Nothing when they leave no body.
std::optional<Heights> heightsOf(const Building& building) {
  Heights heights{building.base.metres(), building.eave.metres(), building.ridge.metres()};
  if (!std::isfinite(heights.eave) || heights.eave < 0.0) return std::nullopt;
  if (!std::isfinite(heights.base) || heights.base < 0.0) heights.base = 0.0;
  const bool pitched = building.roof != Roof::Flat && std::isfinite(heights.ridge);
  if (!pitched || heights.ridge < heights.eave) heights.ridge = heights.eave;
  if (heights.base > heights.eave || heights.base >= heights.ridge) return std::nullopt;
  return heights;
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
std::vector<ConvexSolid> roofsOn(const Legs& legs, Roof kind, const Heights& heights,
                                 double bottom) {
  const double rise = heights.ridge - heights.eave;
  const Frame wide = frameAlong(legs.wide.ground, legs.wide.along);
  const Frame narrow = frameAlong(legs.narrow.ground, legs.narrow.along);
  const double lower = rise * narrow.halfWidth / wide.halfWidth;
  return {bodyUnder(PitchedRoof(wide, kind, heights.eave, rise), legs.wide.ground, bottom),
          bodyUnder(PitchedRoof(narrow, kind, heights.eave, lower), groundOfNarrow(legs, kind),
                    bottom)};
}

// Ridges run along the legs unless the ridge was given another direction.
bool ridgesRunAlong(const Legs& legs, const Building& building) {
  if (!building.ridgeAzimuth || !std::isfinite(building.ridgeAzimuth->radians())) return true;
  const double off = std::abs(cross(legs.wide.along, directionOf(*building.ridgeAzimuth)));
  return std::min(off, std::sqrt(std::max(0.0, 1.0 - off * off))) < std::sin(10.0 * kDegree);
}

// What lies under the roof over `plan`, from `bottom` up.
std::vector<ConvexSolid> bodiesOver(const Polygon& plan, const Building& building,
                                    const Heights& heights, double bottom) {
  std::vector<ConvexSolid> result;
  const std::vector<Ring> pieces = convexPieces(plan);
  if (heights.ridge <= heights.eave) {
    for (const Ring& piece : pieces) result.push_back(prism(piece, bottom, heights.eave));
    return result;
  }
  if (pieces.empty()) return {};
  const auto legs = legsOf(plan);
  if (legs && ridgesRunAlong(*legs, building))
    return roofsOn(*legs, building.roof, heights, bottom);
  const PitchedRoof roof(frameOf(plan.outer, building), building.roof, heights.eave,
                         heights.ridge - heights.eave);
  for (const Ring& piece : pieces) result.push_back(bodyUnder(roof, piece, bottom));
  return result;
}

// Eaves that reach past the walls are boxed in: level underneath, at the height of the eave.
std::vector<ConvexSolid> bodiesWithEaves(const Building& building, const Heights& heights) {
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
  const auto heights = heightsOf(building);
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
