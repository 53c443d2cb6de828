// SPDX-License-Identifier: MIT
#include "core/checks/survey.h"

#include <unordered_map>

#include "core/checks/thresholds.h"

namespace tussock {

namespace {

// Looks every species up once: a yard has far more drifts than species.
class FactsByName {
 public:
  explicit FactsByName(const Catalogue& facts) : facts_(facts) {}
  const Species* find(std::string_view name) {
    const auto [at, isNew] = known_.try_emplace(name, nullptr);
    if (isNew) at->second = facts_.find(name);
    return at->second;
  }

 private:
  const Catalogue& facts_;
  std::unordered_map<std::string_view, const Species*> known_;
};

Box boxOf(const Drift& drift) {
  Box box;
  for (const Plant& plant : drift.plants) box.include(plant.at);
  return box;
}

}  // namespace

double Survey::limit(std::string_view threshold) const {
  return thresholdFor(yard.settings, threshold);
}

Survey surveyOf(const CheckInput& input) {
  Survey survey{input.yard, input.facts, input.sun, {}};
  std::unordered_map<Id<Bed>, std::size_t> places;
  for (const Bed& bed : input.yard.beds) {
    places.emplace(bed.id, survey.beds.size());
    survey.beds.push_back({&bed, boundsOf(bed.outline), {}});
  }
  FactsByName facts(input.facts);
  for (const Drift& drift : input.yard.drifts) {
    const auto place = places.find(drift.bed);
    if (place == places.end() || drift.plants.empty()) continue;
    survey.beds[place->second].drifts.push_back({&drift, facts.find(drift.species), boxOf(drift)});
  }
  return survey;
}

Polygon placeAround(const Box& plants, Length margin) {
  const Box box = plants.grown(margin.metres());
  return rectangle(box.low, box.high);
}

Polygon placeAround(const SurveyedDrift& drift) {
  return placeAround(drift.box, drift.drift->spacing * 0.5);
}

}  // namespace tussock
