// SPDX-License-Identifier: MIT
#include "core/sun/shade.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <span>

namespace tussock {

namespace {

constexpr int kCrownSides = 64;
constexpr int kTrunkSides = 16;

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
  // Takes an outline from the level through a place on the ground along the light to the ground.
  void lower(Point through, std::span<Point> outline) const {
    if (rise == Point()) return;
    for (Point& p : outline) p = ground(p, -dot(rise, p - through));
  }
};

struct Turn {
  double cosine, sine;
};

template <int kSides>
const std::array<Turn, kSides>& turns() {
  static const std::array<Turn, kSides> table = [] {
    std::array<Turn, kSides> result{};
    for (int i = 0; i < kSides; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / kSides;
      result[static_cast<std::size_t>(i)] = {std::cos(angle), std::sin(angle)};
    }
    return result;
  }();
  return table;
}

// Radius of the regular polygon that has the area of a circle of radius 1.
double sameArea(int sides) {
  const double step = 2.0 * std::numbers::pi / sides;
  return std::sqrt(step / std::sin(step));
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
void castEllipsoid(const Crown& crown, const Cast& cast, Ring& outline) {
  const double size = sameArea(kCrownSides);
  const double half = (crown.top - crown.base) / 2.0 * cast.reach;
  const Point centre = cast.level(crown.at, (crown.base + crown.top) / 2.0);
  const Point u = cast.away * (size * std::hypot(crown.radius, half));
  const Point v = cast.across() * (size * crown.radius);
  for (const Turn& turn : turns<kCrownSides>())
    outline.push_back(centre + u * turn.cosine + v * turn.sine);
}

// The discs at both ends and what lies between: far half from one, near half from the other.
template <int kSides>
void castColumn(Point at, double radius, double base, double top, const Cast& cast, Ring& outline) {
  const Point u = cast.away * (radius * sameArea(kSides));
  const Point v = cast.across() * (radius * sameArea(kSides));
  const Point far = cast.level(at, top);
  const Point near = cast.level(at, base);
  const auto& table = turns<kSides>();
  const auto point = [&](Point centre, int i) {
    const Turn& turn = table[static_cast<std::size_t>(i % kSides)];
    outline.push_back(centre + u * turn.cosine + v * turn.sine);
  };
  for (int i = -kSides / 4; i <= kSides / 4; ++i) point(far, i + kSides);
  for (int i = kSides / 4; i <= kSides * 3 / 4; ++i) point(near, i);
}

// The disc at the base and the tangents to it from the tip's shadow.
void castCone(const Crown& crown, const Cast& cast, Ring& outline) {
  const double radius = crown.radius * sameArea(kCrownSides);
  const Point centre = cast.level(crown.at, crown.base);
  const double tip = (crown.top - crown.base) * cast.reach;
  const Point u = cast.away * radius;
  const Point v = cast.across() * radius;
  const double cosine = tip > radius ? radius / tip : 2.0;  // of the tangent points' angle
  if (tip > radius) {
    const double sine = std::sqrt(1.0 - cosine * cosine);
    outline.push_back(centre + u * cosine - v * sine);
    outline.push_back(centre + cast.away * tip);
    outline.push_back(centre + u * cosine + v * sine);
  }
  for (const Turn& turn : turns<kCrownSides>())
    if (turn.cosine < cosine) outline.push_back(centre + u * turn.cosine + v * turn.sine);
}

void castOnLevel(const Crown& crown, const Cast& cast, Ring& outline) {
  switch (crown.shape) {
    case CrownShape::Ellipsoid:
      return castEllipsoid(crown, cast, outline);
    case CrownShape::Cone:
      return castCone(crown, cast, outline);
    case CrownShape::Column:
      return castColumn<kCrownSides>(crown.at, crown.radius, crown.base, crown.top, cast, outline);
  }
}

void castCrown(const Crown& crown, const Cast& cast, Ring& outline) {
  if (!crown.corners.empty()) return castCorners(crown.corners, cast, outline);
  castOnLevel(crown, cast, outline);
  cast.lower(crown.at, outline);
}

// The foot lies on the ground as it is; only the shadow of the trunk's far end is moved to it.
void castTrunk(const Crown& crown, const Cast& cast, Ring& outline) {
  castColumn<kTrunkSides>(crown.at, crown.trunkRadius, 0.0, crown.base, cast, outline);
  cast.lower(crown.at, std::span(outline).first(outline.size() / 2));
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
      castCorners(body.corners, cast, refill.next(body.openness, body.group).outline);
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
