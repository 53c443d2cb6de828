// SPDX-License-Identifier: MIT
#include "core/model/settings.h"

namespace tussock {

Hemisphere hemisphereOf(const Settings& settings) {
  return settings.latitude < Angle() ? Hemisphere::South : Hemisphere::North;
}

GrowingSeason growingSeason(const Settings& settings) {
  using namespace std::chrono;
  if (settings.lastFrost && settings.firstFrost)
    return {*settings.lastFrost, *settings.firstFrost, false};
  const bool southern = hemisphereOf(settings) == Hemisphere::South;
  return southern ? GrowingSeason{October / 1, April / 30, true}
                  : GrowingSeason{April / 1, October / 31, true};
}

LeafDays usualLeafDays(const Settings& settings) {
  using namespace std::chrono;
  const bool southern = hemisphereOf(settings) == Hemisphere::South;
  return southern ? LeafDays{October / 20, May / 1} : LeafDays{April / 20, November / 1};
}

}  // namespace tussock
