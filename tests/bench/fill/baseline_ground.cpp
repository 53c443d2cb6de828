// SPDX-License-Identifier: MIT
#include "tests/bench/fill/baseline_ground.h"

#include <algorithm>

#include "core/planting/ground.h"

namespace tussock::bench {

BaselineGround::BaselineGround(const PlantingJob& job)
    : job_(job), bed_(*job.yard.beds.find(job.bed)), box_(boundsOf(bed_.outline)) {}

double BaselineGround::spacing(std::size_t species) const {
  return job_.species[species]->spacing.metres();
}

double BaselineGround::meanSpacing() const {
  double sum = 0.0;
  for (std::size_t i = 0; i < job_.species.size(); ++i) sum += spacing(i);
  return sum / static_cast<double>(job_.species.size());
}

bool BaselineGround::takes(Point p, std::size_t species) const {
  const double setBack = setBackFor(bed_, Length::metres(spacing(species))).metres();
  if (!contains(bed_.outline, p) || distanceToEdge(bed_.outline, p) < setBack) return false;
  for (const Tree& tree : job_.yard.trees)
    if (distance(tree.at, p) < tree.trunkDiameter.metres() / 2.0 + setBack) return false;
  return std::none_of(plantings_.begin(), plantings_.end(), [&](const Planting& other) {
    const double least = kLooseSpacing * 0.5 * (spacing(species) + spacing(other.species));
    return squaredDistance(p, other.at) < least * least;
  });
}

std::vector<std::vector<std::size_t>> BaselineGround::groups() const {
  std::vector<std::vector<std::size_t>> groups;
  std::vector<char> seen(plantings_.size(), 0);
  for (std::size_t first = 0; first < plantings_.size(); ++first) {
    if (seen[first] != 0) continue;
    std::vector<std::size_t> group{first};
    seen[first] = 1;
    const double reach = kTouch * spacing(plantings_[first].species);
    for (std::size_t i = 0; i < group.size(); ++i)
      for (std::size_t j = 0; j < plantings_.size(); ++j) {
        const Planting &a = plantings_[group[i]], &b = plantings_[j];
        if (seen[j] != 0 || a.species != b.species || distance(a.at, b.at) >= reach) continue;
        seen[j] = 1;
        group.push_back(j);
      }
    groups.push_back(std::move(group));
  }
  return groups;
}

Yard BaselineGround::planted() const {
  Yard yard = job_.yard;
  IdSource ids(largestId(yard) + 1);
  for (const auto& group : groups()) {
    const Species& species = *job_.species[plantings_[group.front()].species];
    Drift drift;
    drift.id = ids.take<Drift>();
    drift.bed = job_.bed;
    drift.species = species.botanicalName;
    drift.spacing = species.spacing;
    for (const std::size_t i : group) drift.plants.push_back({ids.take<Plant>(), plantings_[i].at});
    yard.drifts = yard.drifts.with(drift);
  }
  return yard;
}

}  // namespace tussock::bench
