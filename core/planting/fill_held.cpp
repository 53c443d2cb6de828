// SPDX-License-Identifier: MIT
#include "core/planting/fill_held.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/geometry/lattice.h"
#include "core/planting/fill_quota.h"

namespace tussock {

HeldPlanting::HeldPlanting(const std::vector<FillKind>& kinds, const std::vector<Id<Drift>>& mine,
                           const Yard& yard, double spareGround, bool keepAll)
    : kinds_(kinds),
      mine_(mine),
      leastGround_(groundOf(yard) - spareGround),
      keepAll_(keepAll),
      counts_(countsIn(yard)),
      mostShares_(mostSharesOf(kinds)) {}

bool HeldPlanting::keptBy(const Yard& next) const {
  return keepsShares(next) && groundOf(next) >= leastGround_ - 1e-9;
}

double HeldPlanting::groundOf(const Yard& yard) const {
  double ground = 0.0;
  for (const Id<Drift> id : mine_)
    if (const Drift* drift = yard.drifts.find(id))
      ground += static_cast<double>(drift->plants.size()) *
                triangularGround(drift->spacing).squareMetres();
  return ground;
}

std::vector<double> HeldPlanting::countsIn(const Yard& yard) const {
  std::map<std::string, double> bySpecies;
  double all = 0.0;
  for (const Id<Drift> id : mine_)
    if (const Drift* drift = yard.drifts.find(id)) {
      bySpecies[drift->species] += static_cast<double>(drift->plants.size());
      all += static_cast<double>(drift->plants.size());
    }
  std::vector<double> counts;
  for (const FillKind& kind : kinds_) counts.push_back(bySpecies[kind.species->botanicalName]);
  counts.push_back(all);
  return counts;
}

bool HeldPlanting::keepsShares(const Yard& next) const {
  constexpr double kMostOff = 0.02;  // of all plants
  constexpr double kLeastOff = 2.0;  // plants, as drifts of one count or another change hands
  constexpr double kLeastKept = 0.5;
  const std::vector<double> counts = countsIn(next);
  const double most = std::max(kLeastOff, kMostOff * counts_.back());
  const auto kept = [&](std::size_t i) {
    if (kinds_[i].share > 0.0) return std::abs(counts[i] - counts_[i]) <= most;
    const bool many = counts[i] > std::max(counts_[i], mostShares_[i] * counts_.back() + kLeastOff);
    return !many && (!keepAll_ || counts[i] >= kLeastKept * counts_[i]);
  };
  for (std::size_t i = 0; i < kinds_.size(); ++i)
    if (!kept(i)) return false;
  return true;
}

}  // namespace tussock
