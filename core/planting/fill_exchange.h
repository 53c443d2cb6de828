// SPDX-License-Identifier: MIT
// After planting: drifts about which something is found change their species with others of the
// same spacing. No plant moves.
#pragma once

#include <functional>
#include <set>
#include <string>
#include <vector>

#include "core/planting/fill_judge.h"
#include "core/planting/fill_kinds.h"
#include "core/planting/fill_watch.h"

namespace tussock {

struct ExchangeTask {
  const std::vector<FillKind>& kinds;  // what may be planted
  const FillJudge& judge;
  const std::function<double(const Yard&)>& score;  // 0 to 1
  int mostTries = 400;                              // verdicts asked for
  bool keepAll = false;      // no kind may lose its last drift, or more than half of its plants
  double spareGround = 0.0;  // square metres that may fall bare
  // The same with many species changed at once, to begin with when it is worth more.
  std::function<Yard(const Yard&)> regrouped{};
  std::function<void(double)> told = {};  // called with the share of the tries that are done
  // Changes for the worse, taken back where nothing better follows from them, once nothing else
  // helps: so many at most, drawn from the seed.
  int mostDetours = 0;
  unsigned seed = 0;
};

// What one of cost takes from the worth of a planting, beside its score.
inline constexpr double kVerdictWeight = 0.03;

struct PlantingWorth {
  double worth = 0.0;                 // the score less the weighted cost of what is still found
  double found = 0.0;                 // that cost
  bool untried = false;               // something is found, and not every exchange was tried
  std::set<std::string> takers = {};  // species that were given drifts of others
};
// Changes the species of the yard's drifts `mine`.
PlantingWorth exchangeSpecies(const ExchangeTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& yard, const WorkWatch& watch);

}  // namespace tussock
