// SPDX-License-Identifier: MIT
#include "tests/core/planting/kept_ground.h"

#include <algorithm>

#include "core/geometry/polygon.h"

namespace tussock::test {

Species named(std::string name, double spacing) {
  Species species;
  species.botanicalName = std::move(name);
  species.commonName = "a plant";
  species.spacing = Length::metres(spacing);
  return species;
}

double outside(const std::vector<Polygon>& outline, Point p) {
  double least = 1e9;
  for (const Polygon& piece : outline)
    least = std::min(least, contains(piece, p) ? 0.0 : distanceToEdge(piece, p));
  return least;
}

double shareOnGround(const Drift& before, const Drift& after) {
  const auto outline = outlineOf(before);
  const auto on = std::count_if(after.plants.begin(), after.plants.end(), [&](const Plant& plant) {
    return outside(outline, plant.at) <= before.spacing.metres() / 2.0;
  });
  return static_cast<double>(on) / static_cast<double>(after.plants.size());
}

double shareTaken(const Slope& slope, const Drift& before, const Drift& after) {
  constexpr double kStep = 0.1;
  double all = 0.0, taken = 0.0;
  for (const Polygon& piece : outlineOf(before)) {
    const Box box = boundsOf(piece);
    for (double y = box.low.y; y < box.high.y; y += kStep)
      for (double x = box.low.x; x < box.high.x; x += kStep) {
        if (!contains(piece, {x, y})) continue;
        all += 1.0;
        taken += std::any_of(after.plants.begin(), after.plants.end(), [&](const Plant& plant) {
          return slope.distance(plant.at, {x, y}) <= after.spacing.metres();
        });
      }
  }
  return taken / all;
}

}  // namespace tussock::test
