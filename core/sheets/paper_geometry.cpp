// SPDX-License-Identifier: MIT
#include "core/sheets/paper_geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tussock {

namespace {

constexpr int kCircleSides = 32;

double turnOf(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

}  // namespace

std::vector<PaperPoint> circleAround(PaperPoint centre, double radius) {
  std::vector<PaperPoint> points;
  for (int i = 0; i < kCircleSides; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / kCircleSides;
    points.push_back({centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
  }
  return points;
}

PaperBox grown(PaperBox box, double by) {
  return {box.left - by, box.top - by, box.right + by, box.bottom + by};
}

bool inside(const PaperBox& inner, const PaperBox& outer) {
  return inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top &&
         inner.bottom <= outer.bottom;
}

double distanceToSegment(PaperPoint p, PaperPoint a, PaperPoint b) {
  const double dx = b.x - a.x, dy = b.y - a.y, square = dx * dx + dy * dy;
  const double share =
      square > 0.0 ? std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / square, 0.0, 1.0) : 0.0;
  return std::hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}

bool meet(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return turnOf(a, b, c) * turnOf(a, b, d) <= 0.0 && turnOf(c, d, a) * turnOf(c, d, b) <= 0.0;
}

bool overlap(const PaperBox& a, const PaperBox& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

// Clips the segment against the box's four sides (Liang and Barsky 1984).
bool crosses(PaperPoint from, PaperPoint to, const PaperBox& box) {
  double low = 0.0, high = 1.0;
  const auto clip = [&](double step, double room) {
    if (step == 0.0) return room >= 0.0;
    const double at = room / step;
    if (step < 0.0) low = std::max(low, at);
    if (step > 0.0) high = std::min(high, at);
    return low <= high;
  };
  const double dx = to.x - from.x, dy = to.y - from.y;
  return clip(-dx, from.x - box.left) && clip(dx, box.right - from.x) &&
         clip(-dy, from.y - box.top) && clip(dy, box.bottom - from.y);
}

}  // namespace tussock
