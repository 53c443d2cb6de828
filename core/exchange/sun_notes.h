// SPDX-License-Identifier: MIT
// What a sun map was computed from, as short lines for a reader.
#pragma once

#include <string>
#include <vector>

#include "core/sun/month_map.h"

namespace tussock {

struct SunNote {
  std::string name, value;  // "Cell", "0.25 m"
};

// Of which days the hours are the mean, and by how many years the yard's trees have been grown.
struct SunMean {
  SunSpan span = SunSpan::Season;
  std::chrono::month month = std::chrono::June;  // where the span is a month
  double years = 0.0;
};
// What the hours are: "Hours of direct sun on 20 June 2027", or the mean of which days.
[[nodiscard]] std::string sunHeading(const Yard& yard, const SunMapRequest& request,
                                     const SunMean& mean);
// Days, place, ground, skyline, cells, steps, trees and their leaf dates, the source of the sun
// classes, and where shade is missing or doubtful; figures in the yard's units.
[[nodiscard]] std::vector<SunNote> sunNotes(const Yard& yard, const SunMapRequest& request,
                                            const SunMean& mean);

}  // namespace tussock
