// SPDX-License-Identifier: MIT
// The yards and requests that the sun's benchmarks share.
#pragma once

#include <sched.h>

#include "core/sun/map.h"

namespace tussock::bench {

// Keeps to one core while it lives. The map's two threads then take turns on it, so that its time
// is that of one core's work, with what two threads cost.
class OneCore {
 public:
  OneCore();
  ~OneCore();
  OneCore(const OneCore&) = delete;
  OneCore& operator=(const OneCore&) = delete;

 private:
  cpu_set_t before_{};
};

// 40 m by 25 m: three houses, two fences, six trees.
[[nodiscard]] Yard referenceYard();
// The same ground with a hundred solids in all, smaller and spread over it.
[[nodiscard]] Yard crowdedYard();
// Ten reference yards, two abreast to the east and five to the north, on 80 m by 125 m.
[[nodiscard]] Yard tenYards();
[[nodiscard]] SunMapRequest requestOf(double width, double height, double cell, int step);
// Cells times the steps of all the season's days.
[[nodiscard]] double cellsAndSteps(const Yard& yard, const SunMapRequest& request);
// Cells times the steps of one day of each class, which are those that are computed: days of nearly
// the same declination and the same leaves are counted once and weighted.
[[nodiscard]] double cellsAndStepsComputed(const Yard& yard, const SunMapRequest& request);

}  // namespace tussock::bench
