// SPDX-License-Identifier: MIT
#include "core/sun/roof.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/geometry/overlay.h"
#include "core/sun/convex_pieces.h"

namespace tussock {

namespace {

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

Frame frameOf(const Building& building) {
  const Ring& ring = building.footprint.outer;
  if (building.ridgeAzimuth && std::isfinite(building.ridgeAzimuth->radians()))
    return frameAlong(ring, directionOf(*building.ridgeAzimuth));
  const double axis = smallestRectangle(ring, Length()).axis.radians();
  return frameAlong(ring, {std::cos(axis), std::sin(axis)});
}

// Height is a concave function over the rectangle, so what lies under it over a convex piece of the
// footprint is convex.
class PitchedRoof {
 public:
  explicit PitchedRoof(const Building& building)
      : frame_(frameOf(building)),
        hip_(building.roof == Roof::Hip),
        eave_(building.eave.metres()),
        rise_(building.ridge.metres() - eave_) {}

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

ConvexSolid bodyUnder(const PitchedRoof& roof, const Ring& piece) {
  ConvexSolid body;
  const auto addTop = [&](Point p) { body.corners.push_back({p, roof.heightAt(p)}); };
  for (const Point p : piece) body.corners.push_back({p, 0.0}), addTop(p);
  for (const auto& [a, b] : roof.creases())
    for (const Point p : clippedTo(piece, a, b)) addTop(p);
  return body;
}

ConvexSolid prism(const Ring& piece, double height) {
  ConvexSolid body;
  for (const Point p : piece) {
    body.corners.push_back({p, 0.0});
    body.corners.push_back({p, height});
  }
  return body;
}

}  // namespace

std::vector<ConvexSolid> bodiesOf(const Building& building) {
  const double eave = building.eave.metres();
  const double ridge = building.ridge.metres();
  if (!std::isfinite(eave) || eave < 0.0) return {};
  const bool pitched = building.roof != Roof::Flat && std::isfinite(ridge) && ridge > eave;
  if (!pitched && eave == 0.0) return {};
  std::vector<ConvexSolid> result;
  const std::vector<Ring> pieces = convexPieces(building.footprint);
  if (pieces.empty()) return {};
  if (!pitched) {
    for (const Ring& piece : pieces) result.push_back(prism(piece, eave));
    return result;
  }
  const PitchedRoof roof(building);
  for (const Ring& piece : pieces) result.push_back(bodyUnder(roof, piece));
  return result;
}

}  // namespace tussock
