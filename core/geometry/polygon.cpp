// SPDX-License-Identifier: MIT
#include "core/geometry/polygon.h"

#include <algorithm>
#include <limits>
#include <numbers>
#include <queue>

namespace tussock {

namespace {

template <class F>
void forEachEdge(const Ring& ring, F&& f) {
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) f(ring[j], ring[i]);
}

template <class F>
void forEachEdge(const Polygon& polygon, F&& f) {
  if (!polygon.outer.empty()) forEachEdge(polygon.outer, f);
  for (const Ring& hole : polygon.holes)
    if (!hole.empty()) forEachEdge(hole, f);
}

void dropRepeated(Ring& ring) {
  ring.erase(std::unique(ring.begin(), ring.end()), ring.end());
  while (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
}

Area ringArea(const Ring& ring) {
  return Area::squareMetres(std::abs(signedArea(ring)));
}

// A square cell in the search for the label point, ranked by the best distance it can hold.
struct Cell {
  Point centre;
  double half;
  double distance;  // signed: negative outside
  [[nodiscard]] double best() const { return distance + half * std::numbers::sqrt2; }
  bool operator<(const Cell& other) const { return best() < other.best(); }
};

Cell cellAt(const Polygon& polygon, Point centre, double half) {
  const double d = distanceToEdge(polygon, centre);
  return {centre, half, contains(polygon, centre) ? d : -d};
}

}  // namespace

std::string_view explain(Invalidity reason) {
  switch (reason) {
    case Invalidity::TooFewPoints:
      return "it needs at least three corners";
    case Invalidity::NotFinite:
      return "a corner has no finite position";
    case Invalidity::NoArea:
      return "it encloses no ground";
    case Invalidity::CrossesItself:
      return "its outline crosses or touches itself";
    case Invalidity::HoleOutside:
      return "a hole lies outside it or across its edge";
    case Invalidity::HoleInHole:
      return "a hole lies within another hole";
    case Invalidity::RepeatedPoint:
      return "a corner follows itself";
  }
  return {};
}

Polygon normalised(Polygon polygon) {
  dropRepeated(polygon.outer);
  if (signedArea(polygon.outer) < 0.0) std::reverse(polygon.outer.begin(), polygon.outer.end());
  for (Ring& hole : polygon.holes) {
    dropRepeated(hole);
    if (signedArea(hole) > 0.0) std::reverse(hole.begin(), hole.end());
  }
  std::erase_if(polygon.holes, [](const Ring& hole) { return hole.size() < 3; });
  return polygon;
}

double signedArea(const Ring& ring) {
  if (ring.size() < 3) return 0.0;
  double twice = 0.0;
  const Point base = ring.front();  // near the ring, so that far-off sites lose no digits
  forEachEdge(ring, [&](Point a, Point b) { twice += cross(a - base, b - base); });
  return twice / 2.0;
}

Area areaOf(const Polygon& polygon) {
  Area area = ringArea(polygon.outer);
  for (const Ring& hole : polygon.holes) area = area - ringArea(hole);
  return area;
}

Length perimeterOf(const Polygon& polygon) {
  double sum = 0.0;
  forEachEdge(polygon, [&](Point a, Point b) { sum += distance(a, b); });
  return Length::metres(sum);
}

Point centroidOf(const Polygon& polygon) {
  if (polygon.outer.empty()) return {};
  const Point base = polygon.outer.front();
  double twice = 0.0;
  Point sum;
  forEachEdge(normalised(polygon), [&](Point a, Point b) {
    const double c = cross(a - base, b - base);
    twice += c;
    sum += ((a - base) + (b - base)) * c;
  });
  if (std::abs(twice) < 1e-12) return boundsOf(polygon.outer).centre();
  return base + sum * (1.0 / (3.0 * twice));
}

Box boundsOf(const Polygon& polygon) {
  return boundsOf(polygon.outer);
}

// The grid refinement known as the pole of inaccessibility (Garcia-Castellanos and Lombardo 2007),
// to a fiftieth of the shorter side: close enough for a label.
Point labelPoint(const Polygon& polygon) {
  const Box box = boundsOf(polygon);
  const double shorter = std::min(box.width(), box.height());
  if (box.empty() || shorter <= 0.0) return box.empty() ? Point{} : box.centre();
  const double half = shorter / 2.0;
  std::priority_queue<Cell> cells;
  for (double x = box.low.x; x < box.high.x; x += shorter)
    for (double y = box.low.y; y < box.high.y; y += shorter)
      cells.push(cellAt(polygon, {x + half, y + half}, half));
  Cell best = cellAt(polygon, centroidOf(polygon), 0.0);
  while (!cells.empty()) {
    const Cell cell = cells.top();
    cells.pop();
    if (cell.distance > best.distance) best = cell;
    if (cell.best() - best.distance <= shorter / 50.0) continue;
    const double quarter = cell.half / 2.0;
    for (const double dx : {-quarter, quarter})
      for (const double dy : {-quarter, quarter})
        cells.push(cellAt(polygon, cell.centre + Point{dx, dy}, quarter));
  }
  return best.centre;
}

bool contains(const Ring& ring, Point p) {
  if (ring.size() < 3) return false;
  bool inside = false;
  bool onEdge = false;
  forEachEdge(ring, [&](Point a, Point b) {
    const double side = cross(b - a, p - a);
    if (side == 0.0 && dot(p - a, p - b) <= 0.0) onEdge = true;
    if ((a.y > p.y) != (b.y > p.y) && (side > 0.0) == (b.y > a.y)) inside = !inside;
  });
  return inside || onEdge;
}

bool contains(const Polygon& polygon, Point p) {
  if (!contains(polygon.outer, p)) return false;
  return std::none_of(polygon.holes.begin(), polygon.holes.end(), [&](const Ring& hole) {
    return contains(hole, p) && distanceToEdge({hole, {}}, p) > 0.0;
  });
}

Point nearestOnSegment(Point p, Point a, Point b) {
  const Point along = b - a;
  const double squared = dot(along, along);
  if (squared == 0.0) return a;
  return a + along * std::clamp(dot(p - a, along) / squared, 0.0, 1.0);
}

double distanceToSegment(Point p, Point a, Point b) {
  return distance(p, nearestOnSegment(p, a, b));
}

double distanceToEdge(const Polygon& polygon, Point p) {
  double nearest = std::numeric_limits<double>::infinity();
  forEachEdge(polygon, [&](Point a, Point b) {
    nearest = std::min(nearest, squaredDistance(p, nearestOnSegment(p, a, b)));
  });
  return std::sqrt(nearest);
}

Point nearestOnEdge(const Polygon& polygon, Point p) {
  double nearest = std::numeric_limits<double>::infinity();
  Point result = p;
  forEachEdge(polygon, [&](Point a, Point b) {
    const Point candidate = nearestOnSegment(p, a, b);
    const double d = squaredDistance(p, candidate);
    if (d < nearest) nearest = d, result = candidate;
  });
  return result;
}

Polygon moved(Polygon polygon, Point step) {
  for (Point& p : polygon.outer) p += step;
  for (Ring& hole : polygon.holes)
    for (Point& p : hole) p += step;
  return polygon;
}

Polygon rotated(Polygon polygon, Angle turn, Point centre) {
  for (Point& p : polygon.outer) p = rotated(p, turn, centre);
  for (Ring& hole : polygon.holes)
    for (Point& p : hole) p = rotated(p, turn, centre);
  return polygon;
}

Polygon rectangle(Point low, Point high) {
  return {{low, {high.x, low.y}, high, {low.x, high.y}}, {}};
}

Polygon disc(Point centre, Length radius, int sides) {
  Polygon result;
  for (int i = 0; i < sides; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / sides;
    result.outer.push_back(centre + Point{std::cos(angle), std::sin(angle)} * radius.metres());
  }
  return result;
}

}  // namespace tussock
