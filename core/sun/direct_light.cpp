// SPDX-License-Identifier: MIT
#include "core/sun/direct_light.h"

#include <algorithm>

#include "core/sun/horizon.h"
#include "core/sun/position.h"

namespace tussock {

namespace {
constexpr std::chrono::seconds kStep{180}, kFine{30};
}

std::vector<LightSpan> directLight(UtcTime from, UtcTime to, const Settings& settings) {
  const Horizon horizon(settings);
  const auto lit = [&](UtcTime time) {
    return horizon.clears(sunPosition(time, settings.latitude, settings.longitude));
  };
  const auto change = [&](UtcTime before, UtcTime after) {
    const bool was = lit(before);
    while (after - before > kFine) {
      const UtcTime middle = before + (after - before) / 2;
      (lit(middle) == was ? before : after) = middle;
    }
    return after;
  };
  std::vector<LightSpan> spans;
  bool was = false;
  for (UtcTime time = from; time <= to; time += kStep) {
    const bool now = lit(time);
    if (now && !was) spans.push_back({time == from ? from : change(time - kStep, time), to});
    if (!now && was) spans.back().to = change(time - kStep, time);
    was = now;
  }
  return spans;
}

}  // namespace tussock
