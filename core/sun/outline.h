// SPDX-License-Identifier: MIT
// Convex outlines of shadows: straight edges and arcs of ellipses.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

// centre + u cos t + v sin t, anticlockwise from one t to another: u and v are conjugate half
// diameters, v to the left of u. The ends are given as (cos t, sin t), so that nothing need be
// turned into angles; where both are the same, the arc is the whole ellipse.
struct Arc {
  Point centre, u, v;
  Point from{1.0, 0.0}, to{1.0, 0.0};

  [[nodiscard]] Point at(Point turn) const { return centre + u * turn.x + v * turn.y; }
  [[nodiscard]] Point start() const { return at(from); }
  [[nodiscard]] Point end() const { return at(to); }
  [[nodiscard]] bool isWhole() const { return from == to; }
};

// Anticlockwise: the arcs one after another, then the corners; straight edges join the end of each
// to the start of the next.
struct Outline {
  std::vector<Arc> arcs;
  Ring corners;

  void clear() { arcs.clear(), corners.clear(); }
  [[nodiscard]] bool empty() const { return arcs.empty() && corners.empty(); }
};

[[nodiscard]] bool contains(const Outline& outline, Point p);  // the edge counts as inside
// Corners on the outline, `sides` to a whole ellipse: with 64 their chords run within 0.0013 of its
// half axis.
[[nodiscard]] Ring ringOf(const Outline& outline, int sides = 64);

}  // namespace tussock
