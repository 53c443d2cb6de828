// SPDX-License-Identifier: MIT
// Which species of many a bed takes: those that suit it, flower one after another, reach from the
// low edge to the height of its back, and keep genera, families and grasses in proportion.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/planting/fill_ground.h"
#include "core/planting/fill_kinds.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_terms.h"

namespace tussock {

// The share of the ground whose sun and moisture suit the kind.
[[nodiscard]] double suitableShare(const FillKind& kind, const std::vector<FillCell>& cells);
// The share of the ground that a band so many spacings wide takes at most of plants that keep half
// a spacing from its edges and stand 0.9 spacings apart at the nearest; 1 in a broad one.
[[nodiscard]] double takenInBand(double width);
// Hours of sun missing or too many at the best place; 0 where one suits or none is known.
[[nodiscard]] double leastHoursOff(const FillKind& kind, const std::vector<FillCell>& cells);

struct ChooseRequest {
  std::size_t count = 12;
  WeekSet season = 0;
  WeekSet lacking = 0;  // weeks for which something in flower is looked for above all
  double depth = 3.0;   // metres from the viewers to the back of the bed
  double width = 3.0;   // metres of its widest place
  double area = 10.0;   // square metres
  double wildness = 0.5;
  FillLimits limits;
  std::set<std::string> standing = {};  // species that grow beside them already, and go before
};
// Numbers of the chosen kinds, ascending.
[[nodiscard]] std::vector<std::size_t> chooseKinds(const std::vector<FillKind>& kinds,
                                                   const std::vector<FillCell>& cells,
                                                   const ChooseRequest& request, Chance& chance);

}  // namespace tussock
