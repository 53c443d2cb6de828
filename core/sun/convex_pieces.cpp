// SPDX-License-Identifier: MIT
#include "core/sun/convex_pieces.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/overlay.h"

namespace tussock {

namespace {

constexpr double kLevel = 1e-6;  // metres within which two corners are on one level

struct Edge {
  Point low, high;
  [[nodiscard]] double xAt(double y) const {
    return low.x + (high.x - low.x) * (y - low.y) / (high.y - low.y);
  }
};

// Ground between two edges, from one level to another.
struct Trapezoid {
  std::size_t left, right;
  double bottom, top;
};

bool isUsable(const Polygon& polygon) {
  const auto finite = [](const Ring& ring) {
    return std::all_of(ring.begin(), ring.end(), [](Point p) { return isFinite(p); });
  };
  return finite(polygon.outer) && std::all_of(polygon.holes.begin(), polygon.holes.end(), finite) &&
         signedArea(convexHull(polygon.outer)) > 1e-6;
}

// Total turning tells a convex ring from one that winds twice.
bool isConvex(const Ring& ring) {
  double turning = 0.0;
  for (std::size_t i = 0, n = ring.size(); i < n; ++i) {
    const Point in = ring[(i + 1) % n] - ring[i];
    const Point out = ring[(i + 2) % n] - ring[(i + 1) % n];
    const double turn = std::atan2(cross(in, out), dot(in, out));
    if (turn < -1e-9) return false;
    turning += turn;
  }
  return turning < 7.0;
}

double longestEdgeAngle(const Ring& ring) {
  Point longest;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point edge = ring[(i + 1) % ring.size()] - ring[i];
    if (dot(edge, edge) > dot(longest, longest)) longest = edge;
  }
  return std::atan2(longest.y, longest.x);
}

void addEdges(const Ring& ring, std::vector<Edge>& edges) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    Point a = ring[i];
    Point b = ring[(i + 1) % ring.size()];
    if (a.y > b.y) std::swap(a, b);
    if (b.y - a.y > kLevel) edges.push_back({a, b});
  }
}

// Where two edges cross, as they do in an outline that crosses itself.
void addCrossings(const std::vector<Edge>& edges, std::vector<double>& levels) {
  for (std::size_t i = 0; i < edges.size(); ++i)
    for (std::size_t k = i + 1; k < edges.size(); ++k) {
      const double bottom = std::max(edges[i].low.y, edges[k].low.y);
      const double top = std::min(edges[i].high.y, edges[k].high.y);
      if (top - bottom < kLevel) continue;
      const double below = edges[i].xAt(bottom) - edges[k].xAt(bottom);
      const double above = edges[i].xAt(top) - edges[k].xAt(top);
      if (below * above < 0.0) levels.push_back(bottom + (top - bottom) * below / (below - above));
    }
}

std::vector<double> levelsOf(const std::vector<Edge>& edges) {
  std::vector<double> levels;
  for (const Edge& edge : edges) levels.push_back(edge.low.y), levels.push_back(edge.high.y);
  addCrossings(edges, levels);
  std::sort(levels.begin(), levels.end());
  levels.erase(std::unique(levels.begin(), levels.end(),
                           [](double a, double b) { return b - a < 2.0 * kLevel; }),
               levels.end());
  return levels;
}

// Edges that cross the middle of a slab, from left to right; every second gap is inside.
std::vector<std::size_t> edgesAcross(const std::vector<Edge>& edges, double middle) {
  std::vector<std::size_t> across;
  for (std::size_t i = 0; i < edges.size(); ++i)
    if (edges[i].low.y < middle && edges[i].high.y > middle) across.push_back(i);
  std::sort(across.begin(), across.end(), [&](std::size_t a, std::size_t b) {
    return edges[a].xAt(middle) < edges[b].xAt(middle);
  });
  return across;
}

// A trapezoid that goes on above an earlier one between the same edges makes it taller.
void addTrapezoid(const Trapezoid& next, std::vector<Trapezoid>& pieces) {
  for (Trapezoid& piece : pieces)
    if (piece.left == next.left && piece.right == next.right && piece.top == next.bottom) {
      piece.top = next.top;
      return;
    }
  pieces.push_back(next);
}

std::vector<Trapezoid> trapezoidsOf(const std::vector<Edge>& edges) {
  const std::vector<double> levels = levelsOf(edges);
  std::vector<Trapezoid> pieces;
  for (std::size_t i = 0; i + 1 < levels.size(); ++i) {
    const auto across = edgesAcross(edges, (levels[i] + levels[i + 1]) / 2.0);
    for (std::size_t k = 0; k + 1 < across.size(); k += 2)
      addTrapezoid({across[k], across[k + 1], levels[i], levels[i + 1]}, pieces);
  }
  return pieces;
}

Ring ringOf(const Trapezoid& piece, const std::vector<Edge>& edges) {
  const Edge& left = edges[piece.left];
  const Edge& right = edges[piece.right];
  return {{left.xAt(piece.bottom), piece.bottom},
          {right.xAt(piece.bottom), piece.bottom},
          {right.xAt(piece.top), piece.top},
          {left.xAt(piece.top), piece.top}};
}

}  // namespace

std::vector<Ring> convexPieces(const Polygon& polygon) {
  if (!isUsable(polygon)) return {};
  const Polygon whole = normalised(polygon);
  if (whole.holes.empty() && isConvex(whole.outer)) return {whole.outer};
  const Angle turn = Angle::radians(longestEdgeAngle(whole.outer));
  const Polygon level = rotated(whole, -turn, {});
  std::vector<Edge> edges;
  addEdges(level.outer, edges);
  for (const Ring& hole : level.holes) addEdges(hole, edges);
  std::vector<Ring> result;
  for (const Trapezoid& piece : trapezoidsOf(edges)) {
    Ring ring = ringOf(piece, edges);
    if (signedArea(ring) < 1e-8) continue;
    for (Point& p : ring) p = rotated(p, turn);
    result.push_back(std::move(ring));
  }
  return result;
}

std::vector<Point> clippedTo(const Ring& convex, Point a, Point b) {
  double from = 0.0;
  double to = 1.0;
  for (std::size_t i = 0; i < convex.size(); ++i) {
    const Point edge = convex[(i + 1) % convex.size()] - convex[i];
    const double start = cross(edge, a - convex[i]);  // inside is positive
    const double change = cross(edge, b - a);
    if (std::abs(change) < 1e-12) {
      if (start < -1e-9) return {};
      continue;
    }
    const double at = -start / change;
    change > 0.0 ? from = std::max(from, at) : to = std::min(to, at);
  }
  if (from > to) return {};
  return {a + (b - a) * from, a + (b - a) * to};
}

}  // namespace tussock
