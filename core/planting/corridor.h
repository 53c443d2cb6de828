// SPDX-License-Identifier: MIT
// The ground beside a line, for a drift that follows it.
#pragma once

#include "core/geometry/point.h"

namespace tussock {

class Corridor {
 public:
  // `half` metres to each side of the line are inside.
  Corridor(Polyline line, double half);

  [[nodiscard]] bool holds(Point p) const { return nearestTo(p).away <= half_; }
  // Metres along the line to the point of it nearest to p.
  [[nodiscard]] double along(Point p) const { return nearestTo(p).along; }
  [[nodiscard]] double half() const { return half_; }
  [[nodiscard]] Corridor widened(double metres) const { return {line_, half_ + metres}; }
  [[nodiscard]] double length() const { return starts_.empty() ? 0.0 : starts_.back(); }
  [[nodiscard]] Point at(double along) const;

 private:
  struct Nearest {
    double along = 0.0;
    double away = 0.0;
  };
  [[nodiscard]] Nearest nearestTo(Point p) const;

  Polyline line_;
  std::vector<double> starts_;  // metres along the line to each of its points
  double half_;
};

}  // namespace tussock
