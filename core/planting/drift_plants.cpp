// SPDX-License-Identifier: MIT
#include "core/planting/drift_plants.h"

#include <algorithm>

#include "core/planting/edit_drift.h"
#include "core/planting/enlarge.h"

namespace tussock {

void sortById(std::vector<Plant>& plants) {
  std::sort(plants.begin(), plants.end(), [](auto& a, auto& b) { return a.id < b.id; });
}

GrowRequest requestFor(const Drift& drift, int count, CountAs as) {
  GrowRequest request;
  request.bed = drift.bed;
  request.layer = drift.layer;
  request.pattern = drift.pattern;
  request.spacing = drift.spacing;
  request.count = count;
  request.countAs = as;
  request.at = middleOf(drift);
  request.axis = drift.axis;
  request.stretch = drift.stretch;
  request.inPlaceOf = drift.id;
  return request;
}

std::vector<Plant> withIds(std::vector<Plant> old, const std::vector<Point>& places,
                           IdSource& ids) {
  std::vector<Plant> result;
  for (const Point place : places) {
    const auto nearest =
        std::min_element(old.begin(), old.end(), [&](const auto& a, const auto& b) {
          return squaredDistance(a.at, place) < squaredDistance(b.at, place);
        });
    if (nearest == old.end()) {
      result.push_back({ids.take<Plant>(), place});
    } else {
      result.push_back({nearest->id, place});
      old.erase(nearest);
    }
  }
  sortById(result);
  return result;
}

std::vector<Plant> fewerPlants(const Drift& drift, int count) {
  std::vector<Plant> result;
  for (const std::size_t i : shrunk(requestFor(drift, count), positionsOf(drift)))
    result.push_back(drift.plants[i]);
  sortById(result);
  return result;
}

std::vector<Plant> morePlants(const Yard& yard, const Drift& drift, int count, IdSource& ids) {
  std::vector<Plant> result = drift.plants;
  const auto places = enlarged(yard, requestFor(drift, count, CountAs::Asked), positionsOf(drift));
  for (std::size_t i = result.size(); i < places.size(); ++i)
    result.push_back({ids.take<Plant>(), places[i]});
  return result;
}

}  // namespace tussock
