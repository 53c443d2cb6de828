// SPDX-License-Identifier: MIT
// Which way a bed runs at a place: round what an island bed surrounds, along the arms of a bent
// bed, along a narrow bed, else along its viewing side. Drifts lie at a slant to it.
#pragma once

#include "core/model/bed.h"
#include "core/planting/bed_arms.h"

namespace tussock {

// Metres; in a narrower bed a drift at the usual slant to a viewing side would be cut short.
inline constexpr double kNarrowBed = 2.2;

class BedGrain {
 public:
  explicit BedGrain(const Bed& bed);

  // Anticlockwise from east; its sense means nothing.
  [[nodiscard]] Angle at(Point p) const;
  // Whether it is not the same everywhere.
  [[nodiscard]] bool bends() const { return !inner_.empty() || !arms_.empty(); }
  [[nodiscard]] bool narrow() const { return narrow_; }

 private:
  Angle straight_;
  bool narrow_ = false;
  Polygon inner_, outer_;  // the two edges it runs between, round what it surrounds
  BedArms arms_;           // where it has some
};

}  // namespace tussock
