// SPDX-License-Identifier: MIT
#include "core/sun/solids.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/sun/convex_pieces.h"
#include "core/sun/roof.h"

namespace tussock {

namespace {

bool isPositive(double value) {
  return std::isfinite(value) && value > 0.0;
}

double usableOpenness(double openness) {
  return std::isfinite(openness) ? std::clamp(openness, 0.0, 1.0) : 0.0;
}

ConvexSolid wallOver(const Ring& ground, double height) {
  ConvexSolid body;
  for (const Point p : ground) {
    body.corners.push_back({p, 0.0});
    body.corners.push_back({p, height});
  }
  return body;
}

// How far a stretch of wall reaches past its end so that the outer corner with the next is filled:
// half its thickness times the tangent of half the turn, and no more than half its thickness.
double reach(Point in, Point out, double half) {
  const double turn = std::abs(std::atan2(cross(in, out), dot(in, out)));
  return half * std::min(1.0, std::tan(std::min(turn, 3.0) / 2.0));
}

std::vector<Ring> stretchesOf(Polyline line, double half) {
  std::erase_if(line, [](Point p) { return !isFinite(p); });
  line.erase(std::unique(line.begin(), line.end()), line.end());
  const std::size_t n = line.size();
  const bool closed = n > 3 && line.front() == line.back();
  std::vector<Ring> result;
  for (std::size_t i = 0; i + 1 < n; ++i) {
    const Point step = line[i + 1] - line[i];
    const Point along = step * (1.0 / std::hypot(step.x, step.y));
    const Point across = Point{-along.y, along.x} * half;
    double before = 0.0;
    double after = 0.0;
    if (i > 0 || closed) before = reach(line[i] - line[i > 0 ? i - 1 : n - 2], step, half);
    if (i + 2 < n || closed) after = reach(step, line[i + 2 < n ? i + 2 : 1] - line[i + 1], half);
    const Point a = line[i] - along * before;
    const Point b = line[i + 1] + along * after;
    result.push_back({a - across, b - across, b + across, a + across});
  }
  return result;
}

std::vector<Ring> groundOf(const Barrier& barrier) {
  if (!barrier.footprint.empty()) return convexPieces(barrier.footprint);
  const double thickness = barrier.thickness.metres();
  return stretchesOf(barrier.line, isPositive(thickness) ? thickness / 2.0 : 0.0);
}

std::vector<ConvexSolid> bodiesOf(const Barrier& barrier) {
  const double height = barrier.height.metres();
  const double openness = usableOpenness(barrier.openness);
  std::vector<ConvexSolid> result;
  if (!isPositive(height) || openness == 1.0) return result;
  for (const Ring& ground : groundOf(barrier)) {
    result.push_back(wallOver(ground, height));
    result.back().openness = openness;
  }
  return result;
}

double radiusAt(const Crown& crown, double share) {  // of the height from base to top
  switch (crown.shape) {
    case CrownShape::Ellipsoid:
      return crown.radius * 2.0 * std::sqrt(std::max(0.0, share * (1.0 - share)));
    case CrownShape::Cone:
      return crown.radius * (1.0 - share);
    case CrownShape::Column:
      return crown.radius;
  }
  return 0.0;
}

// The crown as rings of corners, those under ground left out, and the line where it enters it.
std::vector<SitePoint> cornersAbove(const Crown& crown, Point rise) {
  constexpr int kRings = 24;
  constexpr int kSides = 64;
  std::vector<SitePoint> corners;
  for (int side = 0; side < kSides; ++side) {
    const double angle = 2.0 * std::numbers::pi * side / kSides;
    const Point out{std::cos(angle), std::sin(angle)};
    SitePoint below;
    for (int ring = kRings; ring >= 0; --ring) {
      const double share = (1.0 - std::cos(std::numbers::pi * ring / kRings)) / 2.0;
      const Point step = out * radiusAt(crown, share);
      const double up = crown.base + (crown.top - crown.base) * share - dot(rise, step);
      const SitePoint corner{crown.at + step, up};
      if (up >= 0.0) corners.push_back(corner);
      if (ring < kRings && (up < 0.0) != (below.up < 0.0)) {
        const double part = below.up / (below.up - up);
        corners.push_back({below.at + (corner.at - below.at) * part, 0.0});
      }
      below = corner;
    }
  }
  return corners;
}

bool isPartlyBuried(const Crown& crown, Point rise) {
  return crown.radius > 0.0 && crown.base < crown.radius * std::hypot(rise.x, rise.y);
}

Crown crownOf(const Tree& tree, Point rise) {
  Crown crown;
  const double height = tree.height.metres();
  const double base = tree.crownBase.metres();
  const double trunk = tree.trunkDiameter.metres() / 2.0;
  crown.at = tree.at;
  crown.shape = tree.crown;
  crown.top = height;
  crown.base = isPositive(base) ? std::min(base, height) : 0.0;
  if (isPositive(tree.crownRadius.metres()) && crown.base < crown.top)
    crown.radius = tree.crownRadius.metres();
  if (isPositive(trunk) && crown.base > 0.0) crown.trunkRadius = trunk;
  crown.opennessLeaf = usableOpenness(tree.opennessLeaf);
  crown.opennessBare = usableOpenness(tree.opennessBare);
  crown.leafOn = tree.leafOn;
  crown.leafOff = tree.leafOff;
  crown.evergreen = tree.evergreen;
  if (isPartlyBuried(crown, rise)) {
    crown.corners = cornersAbove(crown, rise);
    if (crown.corners.empty()) crown.radius = 0.0;
  }
  return crown;
}

void addGroup(std::vector<ConvexSolid> bodies, int& group, Solids& solids) {
  if (bodies.empty()) return;
  for (ConvexSolid& body : bodies) {
    body.group = group;
    solids.bodies.push_back(std::move(body));
  }
  ++group;
}

}  // namespace

bool inLeaf(const Crown& crown, MonthDay day) {
  if (crown.evergreen || crown.leafOn == crown.leafOff) return true;
  if (crown.leafOn < crown.leafOff) return crown.leafOn <= day && day < crown.leafOff;
  return crown.leafOn <= day || day < crown.leafOff;
}

double opennessOn(const Crown& crown, MonthDay day) {
  return inLeaf(crown, day) ? crown.opennessLeaf : crown.opennessBare;
}

Solids solidsOf(const Yard& yard) {
  Solids solids;
  solids.horizon = Horizon(yard.settings);
  const Point rise = solids.horizon.rise();
  int group = 0;
  for (const Building& building : yard.buildings) addGroup(bodiesOf(building, rise), group, solids);
  for (const Barrier& barrier : yard.barriers) addGroup(bodiesOf(barrier), group, solids);
  for (const Tree& tree : yard.trees) {
    if (!isPositive(tree.height.metres()) || !isFinite(tree.at)) continue;
    const Crown crown = crownOf(tree, rise);
    if (crown.radius > 0.0 || crown.trunkRadius > 0.0) solids.crowns.push_back(crown);
  }
  return solids;
}

}  // namespace tussock
