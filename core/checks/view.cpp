// SPDX-License-Identifier: MIT
#include "core/checks/view.h"

#include <algorithm>

namespace tussock {

namespace {

Standing standing(const SurveyedDrift& drift, const Plant& plant) {
  const Species& species = *drift.species;
  const Length spread = species.spread > Length() ? species.spread : drift.drift->spacing;
  return {
      plant.at, {species.height().metres(), spread.metres() / 2.0, isSeeThrough(species)}, &drift};
}

}  // namespace

SightLimits sightLimits(const Survey& survey) {
  return {survey.limit("eye_height"), survey.limit("viewing_distance"), survey.limit("taller_by"),
          survey.limit("hides_within"), survey.limit("see_through")};
}

Lineup::Lineup(const SurveyedBed& bed) {
  constexpr double kCell = 0.5;  // metres
  std::vector<Standing> plants;
  std::vector<Point> points;
  for (const SurveyedDrift& drift : bed.drifts) {
    if (!drift.seen()) continue;
    for (const Plant& plant : drift.drift->plants) {
      plants.push_back(standing(drift, plant));
      points.push_back(plant.at);
      tallest_ = std::max(tallest_, plants.back().seen.height);
      widest_ = std::max(widest_, plants.back().seen.halfSpread);
    }
  }
  grid_ = PointGrid(points, kCell);
  plants_.reserve(plants.size());
  for (const std::size_t i : grid_.order()) plants_.push_back(plants[i]);
}

}  // namespace tussock
