// SPDX-License-Identifier: MIT
#include "core/planting/fill_anneal.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

class Annealing {
 public:
  Annealing(const FillCosts& costs, std::vector<std::size_t>& drifts, Assignment& kinds)
      : costs_(costs), drifts_(drifts), kinds_(kinds), parts_(costs.layout().parts) {
    for (auto& part : parts_) part.fill(0);
    for (std::size_t i = 0; i < kinds.size(); ++i) costs_.addWeeks(parts_[partOf(i)], kinds[i], 1);
  }

  // The change in cost when the drifts of two spots change places; they have when it returns.
  double swap(std::size_t a, std::size_t b) {
    const double before = cost(a, b);
    const std::size_t partA = partOf(a), partB = partOf(b);
    if (partA != partB) {
      costs_.addWeeks(parts_[partA], kinds_[a], -1), costs_.addWeeks(parts_[partA], kinds_[b], 1);
      costs_.addWeeks(parts_[partB], kinds_[b], -1), costs_.addWeeks(parts_[partB], kinds_[a], 1);
    }
    std::swap(kinds_[a], kinds_[b]);
    std::swap(drifts_[a], drifts_[b]);
    return cost(a, b) - before;
  }

 private:
  [[nodiscard]] std::size_t partOf(std::size_t spot) const {
    return costs_.layout().spots[spot].part;
  }
  [[nodiscard]] double cost(std::size_t a, std::size_t b) const {
    double sum = costs_.around(a, kinds_) + costs_.around(b, kinds_);
    if (partOf(a) != partOf(b))
      sum += costs_.bloomCost(parts_[partOf(a)]) + costs_.bloomCost(parts_[partOf(b)]);
    return sum;
  }

  const FillCosts& costs_;
  std::vector<std::size_t>& drifts_;
  Assignment& kinds_;
  std::vector<FillCosts::Weeks> parts_;
};

}  // namespace

int annealingSteps(std::size_t drifts) {
  constexpr std::size_t kEach = 220, kLeast = 4'000, kMost = 600'000;
  return static_cast<int>(std::clamp(kEach * drifts, kLeast, kMost));
}

void anneal(const FillCosts& costs, std::size_t fixed, const AnnealRequest& request, Chance& chance,
            std::vector<std::size_t>& drifts, Assignment& kinds, const WorkWatch& watch) {
  constexpr double kCold = 0.02;
  if (fixed < 2) return;
  Annealing annealing(costs, drifts, kinds);
  const double cooling =
      std::pow(kCold / request.warmth, 1.0 / static_cast<double>(std::max(1, request.steps)));
  double warmth = request.warmth;
  for (int step = 0; step < request.steps; ++step, warmth *= cooling) {
    if (step % 256 == 0 && watch.halt()) return;
    const std::size_t a = chance.below(fixed), b = chance.below(fixed);
    const double luck = chance.share();
    if (kinds[a] == kinds[b] || !request.mayTrade(a, b)) continue;
    const double rise = annealing.swap(a, b);
    if (rise > 0.0 && luck >= std::exp(-rise / warmth)) annealing.swap(a, b);
  }
}

}  // namespace tussock
