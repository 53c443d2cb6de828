// SPDX-License-Identifier: MIT
#include <map>

#include "core/checks/checks.h"
#include "core/checks/near_pairs.h"
#include "core/checks/plant_rules.h"
#include "core/geometry/tolerance.h"

namespace tussock {

namespace {

struct Spot {
  Point at;  // along the ground, see Slope
  const SurveyedDrift* drift;
  Id<Plant> plant;
};
using CrowdedPair = std::pair<const SurveyedDrift*, const SurveyedDrift*>;

// What one pair of drifts (or one drift with itself) has too near.
struct Crowding {
  Length measured = Length::metres(1e300);
  Length required;
  std::vector<Id<Plant>> plants;
  Box place;
};
using Crowdings = std::map<std::pair<Id<Drift>, Id<Drift>>, std::pair<CrowdedPair, Crowding>>;

struct Rules : SpacingLimits {
  explicit Rules(const Survey& survey) : SpacingLimits(survey), slope(survey.yard.settings) {}
  Slope slope;
};

void note(Crowdings& crowdings, const Rules& rules, const Spot& a, const Spot& b) {
  const Length required = rules.required(*a.drift->drift, *b.drift->drift);
  const double needed = required.metres();
  if (squaredDistance(a.at, b.at) >= needed * needed) return;
  const Length measured = Length::metres(distance(a.at, b.at));
  if (atLeast(measured, required)) return;
  const CrowdedPair pair =
      std::minmax(a.drift, b.drift, [](auto* x, auto* y) { return x->drift->id < y->drift->id; });
  auto& [drifts, crowding] = crowdings[{pair.first->drift->id, pair.second->drift->id}];
  drifts = pair;
  crowding.measured = std::min(crowding.measured, measured);
  crowding.required = required;
  for (const Spot& spot : {a, b}) {
    crowding.plants.push_back(spot.plant);
    crowding.place.include(rules.slope.onPlan(spot.at));
  }
}

Severity severityOf(const CrowdedPair& drifts, const Crowding& crowding) {
  if (drifts.first->drift->existing() && drifts.second->drift->existing()) return Severity::Hint;
  return crowding.measured < crowding.required * 0.5 ? Severity::Alert : Severity::Caution;
}

Finding findingFor(const CrowdedPair& drifts, Crowding crowding) {
  const auto& [a, b] = drifts;
  Finding finding;
  finding.check = CheckId::Spacing;
  finding.severity = severityOf(drifts, crowding);
  finding.subjects = {refTo(a->drift->id)};
  if (a != b) finding.subjects.push_back(refTo(b->drift->id));
  std::sort(crowding.plants.begin(), crowding.plants.end());
  crowding.plants.erase(std::unique(crowding.plants.begin(), crowding.plants.end()),
                        crowding.plants.end());
  finding.plants = std::move(crowding.plants);
  finding.place = {placeAround(crowding.place, crowding.required * 0.5)};
  finding.measured = crowding.measured.metres();
  finding.required = crowding.required.metres();
  finding.thresholdId = a->drift->layer == b->drift->layer ? "spacing_factor" : "between_layers";
  return finding;
}

std::vector<Finding> findingsOf(Crowdings crowdings) {
  std::vector<Finding> findings;
  for (auto& [ids, entry] : crowdings)
    findings.push_back(findingFor(entry.first, std::move(entry.second)));
  return findings;
}

Length largestSpacing(const SurveyedBed& bed) {
  Length largest;
  for (const SurveyedDrift& drift : bed.drifts) largest = std::max(largest, drift.drift->spacing);
  return largest;
}

Box plantsBox(const SurveyedBed& bed) {
  Box box;
  for (const SurveyedDrift& drift : bed.drifts) box.include(drift.box);
  return box;
}

void addSpots(std::vector<Spot>& spots, const Slope& slope, const SurveyedBed& bed,
              const Box& within) {
  for (const SurveyedDrift& drift : bed.drifts) {
    if (!drift.box.overlaps(within)) continue;
    for (const Plant& plant : drift.drift->plants)
      if (within.contains(plant.at)) spots.push_back({slope.onGround(plant.at), &drift, plant.id});
  }
}

void noteAcross(Crowdings& crowdings, const Rules& rules, const SurveyedBed& a,
                const SurveyedBed& b) {
  const double reach = rules.reach(std::max(largestSpacing(a), largestSpacing(b)));
  std::vector<Spot> spots;
  addSpots(spots, rules.slope, a, plantsBox(b).grown(reach));
  addSpots(spots, rules.slope, b, plantsBox(a).grown(reach));
  forEachNearPair(spots, reach, [&](const Spot& p, const Spot& q) {
    if (p.drift->drift->bed != q.drift->drift->bed) note(crowdings, rules, p, q);
  });
}

}  // namespace

std::vector<Finding> checkSpacing(const Survey& survey, const SurveyedBed& bed) {
  const Rules rules(survey);
  std::vector<Spot> spots;
  addSpots(spots, rules.slope, bed, plantsBox(bed));
  Crowdings crowdings;
  forEachNearPair(spots, rules.reach(largestSpacing(bed)),
                  [&](const Spot& a, const Spot& b) { note(crowdings, rules, a, b); });
  return findingsOf(std::move(crowdings));
}

std::vector<Finding> checkSpacingAcross(const Survey& survey) {
  const Rules rules(survey);
  Crowdings crowdings;
  for (auto a = survey.beds.begin(); a != survey.beds.end(); ++a) {
    const Box around = a->box.grown(kTolerance.metres());
    for (auto b = a + 1; b != survey.beds.end(); ++b)
      if (around.overlaps(b->box)) noteAcross(crowdings, rules, *a, *b);
  }
  return findingsOf(std::move(crowdings));
}

}  // namespace tussock
