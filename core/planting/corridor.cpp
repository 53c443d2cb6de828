// SPDX-License-Identifier: MIT
#include "core/planting/corridor.h"

#include <algorithm>

#include "core/geometry/polygon.h"

namespace tussock {

Corridor::Corridor(Polyline line, double half) : line_(std::move(line)), half_(half) {
  double sum = 0.0;
  for (std::size_t i = 0; i < line_.size(); ++i) {
    if (i > 0) sum += distance(line_[i - 1], line_[i]);
    starts_.push_back(sum);
  }
}

Point Corridor::at(double along) const {
  if (line_.empty()) return {};
  for (std::size_t i = 1; i < line_.size(); ++i) {
    const double step = starts_[i] - starts_[i - 1];
    if (along <= starts_[i] && step > 0.0) {
      const double share = std::max(0.0, along - starts_[i - 1]) / step;
      return line_[i - 1] + (line_[i] - line_[i - 1]) * share;
    }
  }
  return line_.back();
}

Corridor::Nearest Corridor::nearestTo(Point p) const {
  if (line_.empty()) return {0.0, 1e300};
  Nearest best{0.0, distance(p, line_.front())};
  for (std::size_t i = 1; i < line_.size(); ++i) {
    const Point foot = nearestOnSegment(p, line_[i - 1], line_[i]);
    const double away = distance(p, foot);
    if (away < best.away) best = {starts_[i - 1] + distance(line_[i - 1], foot), away};
  }
  return best;
}

}  // namespace tussock
