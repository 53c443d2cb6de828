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

Lineup::Lineup(const SurveyedBed& bed, const Viewpoint& viewpoint) : axis_(viewpoint.axis()) {
  for (const SurveyedDrift& drift : bed.drifts)
    if (drift.seen())
      for (const Plant& plant : drift.drift->plants) plants_.push_back(standing(drift, plant));
  std::sort(plants_.begin(), plants_.end(), [this](const Standing& a, const Standing& b) {
    return dot(a.at, axis_) < dot(b.at, axis_);
  });
  for (const Standing& plant : plants_) {
    along_.push_back(dot(plant.at, axis_));
    tallest_ = std::max(tallest_, plant.seen.height);
    widest_ = std::max(widest_, plant.seen.halfSpread);
  }
}

std::span<const Standing> Lineup::between(const Standing& rear, const Sight& sight) const {
  const double here = dot(rear.at, axis_);
  const double there = here + dot(sight.towards, axis_) * sight.toEdge;
  const auto first =
      std::lower_bound(along_.begin(), along_.end(), std::min(here, there) - widest_);
  const auto last = std::upper_bound(first, along_.end(), std::max(here, there) + widest_);
  return {plants_.data() + (first - along_.begin()), static_cast<std::size_t>(last - first)};
}

}  // namespace tussock
