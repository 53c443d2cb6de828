// SPDX-License-Identifier: MIT
#include "core/checks/mend_drift.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/checks/moved_plant.h"
#include "core/checks/plant_rules.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

bool breaksRules(const Yard& yard, const Catalogue& facts, Id<Drift> drift, const Plant& plant) {
  const CheckInput input{yard, facts};
  const auto findings = findingsAt(surveyOf(input), drift, plant.id, plant.at);
  return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
    return std::find(finding.plants.begin(), finding.plants.end(), plant.id) !=
           finding.plants.end();
  });
}

int countOfBroken(const Yard& yard, const Catalogue& facts, Id<Drift> id) {
  const auto& plants = yard.drifts.find(id)->plants;
  return static_cast<int>(std::count_if(plants.begin(), plants.end(), [&](const Plant& plant) {
    return breaksRules(yard, facts, id, plant);
  }));
}

int countApart(const Yard& yard, Id<Drift> id) {
  return static_cast<int>(plantsApart(yard.settings, *yard.drifts.find(id)).size());
}

// A plant that found no place may find one once others that were in its way have gone to theirs.
Yard settledOneByOne(Yard yard, const Catalogue& facts, Id<Drift> id) {
  constexpr int kRounds = 3;
  for (int round = 0; round < kRounds; ++round) {
    const Yard before = yard;
    for (const Plant& plant : before.drifts.find(id)->plants) {
      if (!breaksRules(yard, facts, id, plant)) continue;
      const ChangeSet edit = settlePlant(yard, id, plant.id).edit;
      if (!edit.empty()) yard = apply(yard, edit);
    }
    if (yard == before) break;
  }
  return yard;
}

// All its plants, where the drift stands; the yard as it is where not all of them fit.
Yard setOutWhole(const Yard& yard, Id<Drift> id) {
  IdSource none;  // as many places as plants at most: every one keeps an id that is there
  const DriftEdit edit = regrowDrift(yard, id, none);
  const std::size_t count = yard.drifts.find(id)->plants.size();
  return static_cast<std::size_t>(edit.fitted) == count ? apply(yard, edit.edit) : yard;
}

int countMoved(const Drift& before, const Drift& after) {
  int moved = 0;
  for (std::size_t i = 0; i < before.plants.size(); ++i)
    moved += before.plants[i].at == after.plants[i].at ? 0 : 1;
  return moved;
}

}  // namespace

MendedDrift mendDrift(const Yard& yard, const Catalogue& facts, Id<Drift> id) {
  const Drift* drift = yard.drifts.find(id);
  if (drift == nullptr || drift->existing() || drift->locked) return {};
  const auto faults = [&](const Yard& y) {
    return std::pair(countOfBroken(y, facts, id), countApart(y, id));
  };
  const auto before = faults(yard);
  if (before.first == 0) return {};
  Yard mended = settledOneByOne(yard, facts, id);
  auto left = faults(mended);
  if (left.first > 0 || left.second > before.second) {
    const Yard whole = setOutWhole(yard, id);
    if (const auto then = faults(whole); then < left) mended = whole, left = then;
  }
  const int moved = countMoved(*drift, *mended.drifts.find(id));
  return {difference(yard, mended,
                     moved == 1 ? "Settle 1 plant" : fmt::format("Settle {} plants", moved)),
          left.first, left.second};
}

}  // namespace tussock
