// SPDX-License-Identifier: MIT
#include "core/planting/fill_caps.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {
constexpr double kRoom = 0.975;  // of the limit: some plants find no room in the end
}

std::size_t groupAt(const FillKind& kind, std::size_t number, std::size_t rank) {
  return rank == 0 ? number : rank == 1 ? kind.genus : kind.family;
}

ShareCaps::ShareCaps(const std::vector<FillKind>& kinds, const StandingPlants& standing,
                     const Quota& quota, const FillLimits& limits)
    : kinds_(kinds),
      hold_(quota.limited),
      standing_(standing.all),
      least_(limits.shareMinPlants),
      mostPlants_(quota.most),
      sums_{standing.ofKind, standing.ofGenus, standing.ofFamily} {
  const FillLimits wider = limitsWithin(kinds, limits);
  shares_ = {wider.speciesShare, wider.genusShare, wider.familyShare};
  for (std::size_t rank = 0; rank < shares_.size(); ++rank)
    most_[rank] = std::floor(kRoom * shares_[rank] * (quota.total + standing_) + 1e-9);
}

void ShareCaps::limitBy(double planted) {
  hold_ = hold_ && planted + standing_ >= least_;
  for (std::size_t rank = 0; rank < shares_.size(); ++rank)
    most_[rank] = std::floor(shares_[rank] * (planted + standing_) + 1e-9);
}

void ShareCaps::add(std::size_t kind, double count) {
  planted_ += count;
  for (std::size_t rank = 0; rank < sums_.size(); ++rank)
    sums_[rank][groupAt(kinds_[kind], kind, rank)] += count;
}

double ShareCaps::room(std::size_t kind) const {
  double room = roomForAny();
  for (std::size_t rank = 0; hold_ && rank < sums_.size(); ++rank)
    room = std::min(room, most_[rank] - sums_[rank][groupAt(kinds_[kind], kind, rank)]);
  return room;
}

}  // namespace tussock
