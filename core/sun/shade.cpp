// SPDX-License-Identifier: MIT
#include "core/sun/shade.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

// Where light goes: away from the sun over the ground, so many metres for each metre of height; on
// a slope as many more or fewer as the ground falls or rises that way.
struct Cast {
  Point away;
  double reach = 0.0;       // over level ground
  Point rise;               // of the ground
  double slopeReach = 0.0;  // over it

  Cast(const SunPosition& sun, Point groundRise)
      : away(directionOf(sun.azimuth) * -1.0), rise(groundRise) {
    const double steepness = std::tan(sun.altitude.radians());
    reach = 1.0 / steepness;
    slopeReach = 1.0 / (steepness + dot(rise, away));
  }
  [[nodiscard]] Point across() const { return {-away.y, away.x}; }
  [[nodiscard]] Point level(Point at, double up) const { return at + away * (up * reach); }
  [[nodiscard]] Point ground(Point at, double up) const { return at + away * (up * slopeReach); }
  // From the level through a place on the ground along the light to the ground.
  [[nodiscard]] Arc lowered(Point through, Arc arc) const {
    if (rise == Point()) return arc;
    arc.centre = ground(arc.centre, -dot(rise, arc.centre - through));
    arc.u = ground(arc.u, -dot(rise, arc.u));
    arc.v = ground(arc.v, -dot(rise, arc.v));
    return arc;
  }
  [[nodiscard]] Point lowered(Point through, Point at) const {
    return ground(at, -dot(rise, at - through));
  }
  // The shadow of a level disc at a height above a place.
  [[nodiscard]] Arc disc(Point at, double radius, double up) const {
    return {level(at, up), away * radius, across() * radius};
  }
};

// Of an ellipse whose u points away from the sun.
Arc farHalf(Arc whole) {
  whole.from = {0.0, -1.0}, whole.to = {0.0, 1.0};
  return whole;
}
Arc nearHalf(Arc whole) {
  whole.from = {0.0, 1.0}, whole.to = {0.0, -1.0};
  return whole;
}

// Convex hull in place, anticlockwise (Andrew 1979).
void shrinkToHull(Ring& points, Ring& hull) {
  std::sort(points.begin(), points.end(),
            [](Point a, Point b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
  hull.clear();
  const auto add = [&](Point p, std::size_t kept) {
    while (hull.size() >= kept + 2 &&
           cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 0.0)
      hull.pop_back();
    hull.push_back(p);
  };
  for (const Point p : points) add(p, 0);
  const std::size_t lower = hull.size() - 1;
  for (std::size_t i = points.size() - 1; i-- > 0;) add(points[i], lower);
  hull.pop_back();
}

void castCorners(const std::vector<SitePoint>& corners, const Cast& cast, Ring& outline) {
  thread_local Ring points;
  points.clear();
  for (const SitePoint& corner : corners) points.push_back(cast.ground(corner.at, corner.up));
  shrinkToHull(points, outline);
}

// The outline of an ellipsoid in parallel light: an ellipse, wider along the light by the height.
void castEllipsoid(const Crown& crown, const Cast& cast, Outline& outline) {
  const double half = (crown.top - crown.base) / 2.0 * cast.reach;
  const Point along = cast.away * std::hypot(crown.radius, half);
  const Point centre = cast.level(crown.at, (crown.base + crown.top) / 2.0);
  outline.arcs.push_back(cast.lowered(crown.at, Arc{centre, along, cast.across() * crown.radius}));
}

// The discs at both ends and what lies between: far half from one, near half from the other.
void castColumn(const Crown& crown, const Cast& cast, Outline& outline) {
  const auto disc = [&](double up) {
    return cast.lowered(crown.at, cast.disc(crown.at, crown.radius, up));
  };
  outline.arcs.push_back(farHalf(disc(crown.top)));
  outline.arcs.push_back(nearHalf(disc(crown.base)));
}

// The disc at the base and the tangents to it from the tip's shadow.
void castCone(const Crown& crown, const Cast& cast, Outline& outline) {
  Arc disc = cast.lowered(crown.at, cast.disc(crown.at, crown.radius, crown.base));
  const double tip = (crown.top - crown.base) * cast.reach;
  if (tip > crown.radius) {
    const double cosine = crown.radius / tip;  // of the tangent points' turn
    const double sine = std::sqrt(1.0 - cosine * cosine);
    disc.from = {cosine, sine}, disc.to = {cosine, -sine};
    outline.corners.push_back(cast.lowered(crown.at, cast.level(crown.at, crown.top)));
  }
  outline.arcs.push_back(disc);
}

void castCrown(const Crown& crown, const Cast& cast, Outline& outline) {
  if (!crown.corners.empty()) return castCorners(crown.corners, cast, outline.corners);
  switch (crown.shape) {
    case CrownShape::Ellipsoid:
      return castEllipsoid(crown, cast, outline);
    case CrownShape::Cone:
      return castCone(crown, cast, outline);
    case CrownShape::Column:
      return castColumn(crown, cast, outline);
  }
}

// The foot lies on the ground as it is; only the shadow of the trunk's far end is moved to it.
void castTrunk(const Crown& crown, const Cast& cast, Outline& outline) {
  const auto disc = [&](double up) { return cast.disc(crown.at, crown.trunkRadius, up); };
  outline.arcs.push_back(farHalf(cast.lowered(crown.at, disc(crown.base))));
  outline.arcs.push_back(nearHalf(disc(0.0)));
}

// Hands out the shadows of a vector one by one, keeping the room their outlines already have.
class Refill {
 public:
  explicit Refill(std::vector<Shadow>& shadows) : shadows_(shadows) {}
  Shadow& next(double openness, int group) {
    if (used_ == shadows_.size()) shadows_.emplace_back();
    Shadow& shadow = shadows_[used_++];
    shadow.outline.clear();
    shadow.openness = openness;
    shadow.group = group;
    return shadow;
  }
  [[nodiscard]] std::size_t used() const { return used_; }

 private:
  std::vector<Shadow>& shadows_;
  std::size_t used_ = 0;
};

}  // namespace

bool sunlit(const Solids& solids, const SunPosition& sun) {
  return solids.horizon.clears(sun);
}

void castShadows(const Solids& solids, const SunPosition& sun, MonthDay day,
                 std::vector<Shadow>& shadows) {
  Refill refill(shadows);
  if (sunlit(solids, sun)) {
    const Cast cast(sun, solids.horizon.rise());
    int group = 0;
    for (const ConvexSolid& body : solids.bodies) {
      castCorners(body.corners, cast, refill.next(body.openness, body.group).outline.corners);
      group = body.group + 1;
    }
    for (const Crown& crown : solids.crowns) {
      const double openness = opennessOn(crown, day);
      if (crown.radius > 0.0 && openness < 1.0)
        castCrown(crown, cast, refill.next(openness, group).outline);
      if (crown.trunkRadius > 0.0) castTrunk(crown, cast, refill.next(0.0, group + 1).outline);
      group += 2;
    }
  }
  shadows.resize(refill.used());
}

std::vector<Shadow> shadowsOf(const Solids& solids, const SunPosition& sun, MonthDay day) {
  std::vector<Shadow> shadows;
  castShadows(solids, sun, day, shadows);
  return shadows;
}

double directShare(const std::vector<Shadow>& shadows, Point p) {
  double share = 1.0;
  int counted = -1;
  for (const Shadow& shadow : shadows) {
    if (shadow.group == counted || !contains(shadow.outline, p)) continue;
    share *= shadow.openness;
    counted = shadow.group;
  }
  return share;
}

}  // namespace tussock
