// SPDX-License-Identifier: MIT
#include "core/checks/shown_place.h"

#include <algorithm>

#include "core/geometry/overlay.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

// These are about where single plants stand, the others about whole drifts.
bool isOfPlants(CheckId check) {
  return check == CheckId::Spacing || check == CheckId::SetBack || check == CheckId::Obstructed ||
         check == CheckId::Pieces;
}

bool concerns(const Finding& finding, const Plant& plant) {
  return std::find(finding.plants.begin(), finding.plants.end(), plant.id) != finding.plants.end();
}

bool concerns(const Finding& finding, const Drift& drift) {
  const auto& subjects = finding.subjects;
  if (!subjects.empty())
    return std::find(subjects.begin(), subjects.end(), refTo(drift.id)) != subjects.end();
  return std::any_of(drift.plants.begin(), drift.plants.end(),
                     [&](const Plant& plant) { return concerns(finding, plant); });
}

std::vector<Polygon> plantsOf(const Finding& finding, const Drift& drift) {
  std::vector<Point> points;
  for (const Plant& plant : drift.plants)
    if (concerns(finding, plant)) points.push_back(plant.at);
  return points.empty() ? std::vector<Polygon>()
                        : wrapAround(points, drift.spacing / 2.0, Length());
}

}  // namespace

std::vector<Polygon> shownPlace(const Finding& finding, const Yard& yard) {
  const bool single = isOfPlants(finding.check) && !finding.plants.empty();
  std::vector<Polygon> place;
  for (const Drift& drift : yard.drifts) {
    if (!concerns(finding, drift)) continue;
    const auto own = single ? plantsOf(finding, drift) : outlineOf(drift);
    place.insert(place.end(), own.begin(), own.end());
  }
  return place.empty() ? finding.place : place;
}

}  // namespace tussock
