// SPDX-License-Identifier: MIT
// Where the drifts of a bed are set out on the ground: along and square off the baseline A-B, and
// by two tapes held at fixed points of the site.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sheets/fixed_points.h"
#include "core/sheets/stake_out.h"

namespace tussock {

// The error of a crossing grows as one over the sine of the angle between the tapes: for equal
// errors of the tapes 1.4 times one of them at 90°, 2.8 times at 30° (geometry). Where to stop
// trusting it is common practice.
inline constexpr double kWeakCrossingDegrees = 30.0;
inline constexpr double kLongestTape = 30.48;  // metres; 100 ft, as crews carry (common practice)

// Angle at `at` between the lines to the two points, 0 to 90 degrees.
[[nodiscard]] double crossingDegrees(Point at, Point first, Point second);

// The plant of a drift that its stake-out measures: the one nearest its middle. The drift has some.
[[nodiscard]] Point measuredPlant(const Drift& drift);

struct SetOutRow {
  std::string code;
  int plants = 0;
  Point at;           // of the measured plant, site metres
  Length along, out;  // from A along the baseline, and square off it
  Length first, second;
  double crossingDegrees = 0.0;  // between the tapes, 0 to 90

  [[nodiscard]] bool weak() const { return crossingDegrees < kWeakCrossingDegrees; }
};
// How the ends of the baseline are found; no crossing is weak.
struct BaselineTapes {
  FixedPoint first, second;
  Length firstToA, secondToA, firstToB, secondToB;
};
struct SetOut {
  FixedPoint first, second;     // where the tapes to the plants are held
  std::vector<SetOutRow> rows;  // drifts to be planted, from left to right along the baseline
  std::optional<BaselineTapes> baseline;
};
// `turn` is the sheet's; the baseline lies in the turned frame. The tapes are held at those two
// fixed points from which every drift is within a tape's length with nothing in between, that have
// the fewest weak crossings and then the best worst one; at A and B where there are no such two or
// A and B cross weakly less often.
[[nodiscard]] SetOut setOut(const Yard& yard, const Bed& bed, Angle turn, const Baseline& baseline);

}  // namespace tussock
