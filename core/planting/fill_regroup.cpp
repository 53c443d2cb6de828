// SPDX-License-Identifier: MIT
#include "core/planting/fill_regroup.h"

#include <cmath>
#include <numeric>
#include <set>

#include "core/planting/fill_anneal.h"
#include "core/planting/fill_layer.h"
#include "core/planting/planted_kinds.h"

namespace tussock {

namespace {

constexpr double kRegroupWarmth = 0.6;  // they stand well already

class Trades {
 public:
  Trades(const PlantedKinds& planted, const Assignment& kinds, const RegroupTask& task)
      : planted_(planted), kinds_(kinds), limits_(task.limits) {
    const std::set<Id<Drift>> mine(task.mine.begin(), task.mine.end());
    for (const Drift* drift : planted.drifts) mine_.push_back(mine.contains(drift->id));
  }
  [[nodiscard]] bool mayTrade(std::size_t a, std::size_t b) const {
    constexpr int kMostMore = 2;  // plants, so that shares stay about as they are
    const Drift& one = *planted_.drifts[a];
    const Drift& other = *planted_.drifts[b];
    return mine_[a] && mine_[b] && std::abs(one.spacing.metres() - other.spacing.metres()) < 1e-6 &&
           std::abs(countOf(a) - countOf(b)) <= kMostMore && mayHold(a, kinds_[b]) &&
           mayHold(b, kinds_[a]);
  }

 private:
  [[nodiscard]] int countOf(std::size_t drift) const {
    return static_cast<int>(planted_.drifts[drift]->plants.size());
  }
  [[nodiscard]] bool mayHold(std::size_t drift, std::size_t kind) const {
    const FillKind& held = planted_.kinds[kind];
    return !held.diseaseProne ||
           countOf(drift) < held.species->massThatMatters(limits_.diseaseMass);
  }

  const PlantedKinds& planted_;
  const Assignment& kinds_;
  const FillLimits& limits_;
  std::vector<bool> mine_;
};

}  // namespace

Yard regrouped(const RegroupTask& task, const Yard& yard, Chance& chance, const WorkWatch& watch) {
  const PlantedKinds planted = plantedKinds(yard, task.catalogue, task.bed);
  if (planted.drifts.size() != task.layout.spots.size()) return yard;
  FillCosts costs(task.layout, planted.kinds, seasonOf(yard.settings), task.limits, task.wildness);
  Assignment kinds = planted.assignment;
  costs.rankHeights(kinds);
  const Trades trades(planted, kinds, task);
  std::vector<std::size_t> drifts(kinds.size());
  std::iota(drifts.begin(), drifts.end(), std::size_t{0});
  const auto mayTrade = [&](std::size_t a, std::size_t b) { return trades.mayTrade(a, b); };
  anneal(costs, kinds.size(), {kRegroupWarmth, annealingSteps(kinds.size()), mayTrade}, chance,
         drifts, kinds, watch);
  Yard next = yard;
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    if (kinds[i] == planted.assignment[i]) continue;
    Drift drift = *planted.drifts[i];
    drift.species = planted.kinds[kinds[i]].species->botanicalName;
    next.drifts = next.drifts.with(drift);
  }
  return next;
}

}  // namespace tussock
