// SPDX-License-Identifier: MIT
#include "core/sun/outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tussock {

namespace {

// Radians from one end to the other, anticlockwise.
double sweepOf(const Arc& arc) {
  if (arc.isWhole()) return kFullTurn;
  const double sweep = std::atan2(cross(arc.from, arc.to), dot(arc.from, arc.to));
  return sweep > 0.0 ? sweep : sweep + kFullTurn;
}

// What the arcs bulge out from.
bool isWithinChords(const Outline& outline, Point p) {
  Point first, last;
  int corners = 0;
  bool left = true;
  const auto go = [&](Point next) {
    if (corners++ == 0)
      first = next;
    else
      left = left && cross(next - last, p - last) >= 0.0;
    last = next;
  };
  for (const Arc& arc : outline.arcs) go(arc.start()), go(arc.end());
  for (const Point corner : outline.corners) go(corner);
  return corners > 2 && left && cross(first - last, p - last) >= 0.0;
}

bool isInBulge(const Arc& arc, Point p) {
  const Point step = p - arc.centre;
  if (std::hypot(cross(step, arc.v), cross(arc.u, step)) > cross(arc.u, arc.v)) return false;
  return arc.isWhole() || cross(arc.end() - arc.start(), p - arc.start()) <= 0.0;
}

void addCorners(const Arc& arc, int sides, Ring& ring) {
  const double sweep = sweepOf(arc);
  const double first = std::atan2(arc.from.y, arc.from.x);
  const int steps = std::max(1, static_cast<int>(std::ceil(sides * sweep / kFullTurn - 1e-9)));
  for (int i = 0; i < steps; ++i) {
    const double t = first + sweep * i / steps;
    ring.push_back(arc.at({std::cos(t), std::sin(t)}));
  }
  if (!arc.isWhole()) ring.push_back(arc.end());
}

}  // namespace

bool contains(const Outline& outline, Point p) {
  return isWithinChords(outline, p) ||
         std::any_of(outline.arcs.begin(), outline.arcs.end(),
                     [p](const Arc& arc) { return isInBulge(arc, p); });
}

Ring ringOf(const Outline& outline, int sides) {
  Ring ring;
  for (const Arc& arc : outline.arcs) addCorners(arc, sides, ring);
  ring.insert(ring.end(), outline.corners.begin(), outline.corners.end());
  return ring;
}

}  // namespace tussock
