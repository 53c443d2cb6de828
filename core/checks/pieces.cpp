// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/checks/checks.h"
#include "core/checks/plant_rules.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"
#include "core/planting/slope.h"

namespace tussock {

std::vector<const Plant*> plantsApart(const Settings& settings, const Drift& drift) {
  if (!isOnePiece(drift.pattern)) return {};
  const Slope slope(settings);
  std::vector<Point> places;
  for (const Plant& plant : drift.plants) places.push_back(slope.onGround(plant.at));
  std::vector<const Plant*> apart;
  for (const std::size_t i : apartFromMost(places, drift.spacing))
    apart.push_back(&drift.plants[i]);
  return apart;
}

std::optional<Finding> findingOfPieces(const Settings& settings, const Drift& drift) {
  const std::vector<const Plant*> apart = plantsApart(settings, drift);
  if (apart.empty()) return std::nullopt;
  Finding finding;
  finding.check = CheckId::Pieces;
  finding.severity = Severity::Hint;
  finding.subjects = {refTo(drift.id)};
  finding.measured = static_cast<double>(apart.size());
  finding.unit = Quantity::Count;
  for (const Plant* plant : apart) {
    finding.plants.push_back(plant->id);
    finding.place.push_back(placeAround(Box{plant->at, plant->at}, drift.spacing * 0.5));
  }
  return finding;
}

std::vector<Finding> checkPieces(const Survey& survey, const SurveyedBed& bed) {
  std::vector<Finding> findings;
  for (const SurveyedDrift& surveyed : bed.drifts) {
    if (surveyed.drift->existing()) continue;
    if (auto finding = findingOfPieces(survey.yard.settings, *surveyed.drift))
      findings.push_back(std::move(*finding));
  }
  return findings;
}

}  // namespace tussock
