// SPDX-License-Identifier: MIT
// When open ground of the yard has direct sun, hills, far buildings and its own slope considered.
#pragma once

#include <vector>

#include "core/model/settings.h"
#include "core/units/date.h"

namespace tussock {

struct LightSpan {
  UtcTime from, to;
};
// In order, within a stretch of time: the sun's centre above 0 degrees true altitude, over the
// skyline and before the slope (see Horizon::clears). Ends within a minute; what is shorter than
// three minutes may be missed.
[[nodiscard]] std::vector<LightSpan> directLight(UtcTime from, UtcTime to,
                                                 const Settings& settings);

}  // namespace tussock
