// SPDX-License-Identifier: MIT
#include "core/checks/arrangement_facts.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/checks/checked_fill.h"
#include "core/planting/arrangements.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

// What is found of the yard's whole planting has no subjects, but plants.
bool liesIn(const Finding& finding, const Yard& yard, Id<Bed> bed, const std::set<Id<Plant>>& own) {
  if (!finding.subjects.empty()) return isAbout(finding, yard, bed);
  return std::any_of(finding.plants.begin(), finding.plants.end(),
                     [&](Id<Plant> plant) { return own.contains(plant); });
}

}  // namespace

ArrangementFacts arrangementFacts(const CheckInput& input, Id<Bed> id) {
  ArrangementFacts facts;
  const Bed* bed = input.yard.beds.find(id);
  if (bed == nullptr) return facts;
  std::set<std::string_view> species;
  std::set<Id<Plant>> own;
  for (const Drift* drift : driftsIn(input.yard, id)) {
    if (drift->plants.empty()) continue;
    facts.plants += static_cast<int>(drift->plants.size());
    ++facts.drifts;
    species.insert(drift->species);
    for (const Plant& plant : drift->plants) own.insert(plant.id);
  }
  facts.species = static_cast<int>(species.size());
  facts.taken = totalsOf(input.yard, *bed).share();
  facts.wildness = bed->wildness;
  facts.score = scoreBed(input.yard, input.facts, input.sun, id, facts.wildness,
                         fillLimits(input.yard.settings));
  for (const Finding& finding : runChecks(input).value_or(std::vector<Finding>()))
    if (acceptanceOf(input.yard, finding) == nullptr && liesIn(finding, input.yard, id, own))
      ++facts.findings;
  return facts;
}

Yard withArrangement(const Yard& yard, Id<Arrangement> arrangement) {
  IdSource ids(largestId(yard) + 1);
  return apply(yard, chooseArrangement(yard, arrangement, ids).edit);
}

bool isPlantedAs(const Yard& yard, Id<Arrangement> arrangement) {
  return yard.arrangements.find(arrangement) != nullptr &&
         withArrangement(yard, arrangement).drifts == yard.drifts;
}

std::vector<TermPair> differingTerms(const FillScore& first, const FillScore& second) {
  constexpr double kSeen = 0.005;  // half a hundredth, which is what is shown
  std::vector<TermPair> pairs;
  for (const TermScore& one : first.terms) {
    const auto other = second.of(one.term);
    if (other && std::abs(*other - one.score) >= kSeen)
      pairs.push_back({one.term, one.score, *other});
  }
  const auto weightOf = [](const TermPair& pair) {
    return factsOf(pair.term).weight * std::abs(pair.first - pair.second);
  };
  std::stable_sort(pairs.begin(), pairs.end(),
                   [&](const TermPair& a, const TermPair& b) { return weightOf(a) > weightOf(b); });
  return pairs;
}

}  // namespace tussock
