// SPDX-License-Identifier: MIT
#include "core/planting/contacts.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tussock {

namespace {

struct Line {
  Point through;
  Point along;  // of unit length
};

// The two lines beside a border at its distance.
std::array<Line, 2> besides(const Border& border) {
  const double length = distance(border.from, border.to);
  const Point along = length > 0.0 ? (border.to - border.from) * (1.0 / length) : Point{1.0, 0.0};
  const Point off = Point{-along.y, along.x} * border.least;
  return {Line{border.from + off, along}, Line{border.from - off, along}};
}

void addContacts(const Circle& circle, const Line& line, std::vector<Point>& out) {
  const double t = dot(circle.centre - line.through, line.along);
  const Point foot = line.through + line.along * t;
  const double square = circle.radius * circle.radius - squaredDistance(foot, circle.centre);
  if (square < 0.0) return;
  const Point half = line.along * std::sqrt(square);
  out.push_back(foot + half);
  out.push_back(foot - half);
}

}  // namespace

void addContacts(const Circle& a, const Circle& b, std::vector<Point>& out) {
  const double d = distance(a.centre, b.centre);
  if (d >= a.radius + b.radius || d <= std::abs(a.radius - b.radius)) return;
  const double along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2.0 * d);
  const double across = std::sqrt(std::max(0.0, a.radius * a.radius - along * along));
  const Point unit = (b.centre - a.centre) * (1.0 / d);
  const Point foot = a.centre + unit * along;
  out.push_back(foot + Point{-unit.y, unit.x} * across);
  out.push_back(foot - Point{-unit.y, unit.x} * across);
}

void addContacts(const Circle& circle, const Border& border, std::vector<Point>& out) {
  for (const Line& line : besides(border)) addContacts(circle, line, out);
  addContacts(circle, Circle{border.from, border.least}, out);
}

void addContacts(const Border& a, const Border& b, std::vector<Point>& out) {
  for (const Line& one : besides(a))
    for (const Line& other : besides(b)) {
      const double turn = cross(one.along, other.along);
      if (std::abs(turn) < 1e-6) continue;
      const double t = cross(other.through - one.through, other.along) / turn;
      out.push_back(one.through + one.along * t);
    }
}

}  // namespace tussock
