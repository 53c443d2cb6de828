// SPDX-License-Identifier: MIT
// A bed as somebody sees it who stands before it: its plants by their place along the bed and
// their depth in it.
#pragma once

#include <vector>

#include "core/model/yard.h"

namespace tussock {

struct StandingPlant {
  Id<Drift> drift;
  Id<Plant> plant;
  double across = 0.0;  // metres from the left end of the bed, as the viewer sees it
  double depth = 0.0;   // metres behind the bed's nearest point
};

struct StandingView {
  Angle from;                         // azimuth from the bed towards the viewer
  double width = 0.0, depth = 0.0;    // metres, of the bed's outline
  std::vector<StandingPlant> plants;  // farthest first, so that nearer ones are drawn over them
};

// From the bed's first viewing side; from the south when it has none or is seen all round.
[[nodiscard]] StandingView standingView(const Yard& yard, const Bed& bed);
[[nodiscard]] StandingView standingView(const Yard& yard, const Bed& bed, Angle from);

}  // namespace tussock
