// SPDX-License-Identifier: MIT
#include "core/model/settings.h"

namespace tussock {

GrowingSeason growingSeason(const Settings& settings) {
  using namespace std::chrono;
  if (settings.lastFrost && settings.firstFrost)
    return {*settings.lastFrost, *settings.firstFrost, false};
  const bool southern = settings.latitude < Angle();
  return southern ? GrowingSeason{October / 1, April / 30, true}
                  : GrowingSeason{April / 1, October / 31, true};
}

LeafDays usualLeafDays(const Settings& settings) {
  using namespace std::chrono;
  const bool southern = settings.latitude < Angle();
  return southern ? LeafDays{October / 20, May / 1} : LeafDays{April / 20, November / 1};
}

}  // namespace tussock
