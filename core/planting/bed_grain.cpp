// SPDX-License-Identifier: MIT
#include "core/planting/bed_grain.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/overlay.h"
#include "core/planting/grow.h"

namespace tussock {

BedGrain::BedGrain(const Bed& bed)
    : straight_(usualAxis(bed) - Angle::degrees(30)), arms_(bed.outline) {
  const OrientedRectangle box = smallestRectangle(bed.outline.outer, Length());
  const double width = areaOf(bed.outline).squareMetres() / std::max(box.length, 0.1);
  narrow_ = (arms_.empty() ? width : arms_.width()) < kNarrowBed;
  const bool island = bed.viewing.allRound || bed.viewing.from.empty();
  outer_ = {bed.outline.outer, {}};
  const Point middle = centroidOf(outer_);
  for (const Ring& hole : bed.outline.holes)
    if (island && contains(hole, middle)) inner_ = {hole, {}};
  if (narrow_) straight_ = box.axis;
}

// Across to the slope of a height that rises evenly from the inner edge to the outer one.
Angle BedGrain::at(Point p) const {
  if (inner_.empty()) return arms_.empty() ? straight_ : arms_.at(p);
  const Point fromInner = p - nearestOnEdge(inner_, p), fromOuter = p - nearestOnEdge(outer_, p);
  const double inner = std::hypot(fromInner.x, fromInner.y);
  const double outer = std::hypot(fromOuter.x, fromOuter.y);
  if (inner < 1e-6 || outer < 1e-6) return straight_;
  const Point rise = fromInner * (outer / inner) - fromOuter * (inner / outer);
  return Angle::radians(std::atan2(rise.x, -rise.y));
}

}  // namespace tussock
