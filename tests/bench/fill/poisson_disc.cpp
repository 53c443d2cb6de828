// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include "core/planting/fill_random.h"
#include "tests/bench/fill/baseline_ground.h"

namespace tussock::bench {

Yard plantedByPoissonDisc(const PlantingJob& job) {
  constexpr int kTries = 30;  // Bridson's k
  BaselineGround ground(job);
  Chance chance(job.seed * 31U + 7U);
  std::vector<std::size_t> active;
  const auto start = [&] {
    for (int i = 0; i < 400; ++i) {
      const Point p{chance.between(ground.box().low.x, ground.box().high.x),
                    chance.between(ground.box().low.y, ground.box().high.y)};
      const std::size_t species = chance.below(job.species.size());
      if (!ground.takes(p, species)) continue;
      active.push_back(ground.plantings().size());
      ground.plant(p, species);
      return true;
    }
    return false;
  };
  while (start())  // again for parts that a narrow place cuts off
    while (!active.empty()) {
      const std::size_t pick = chance.below(active.size());
      const Planting from = ground.plantings()[active[pick]];
      bool found = false;
      for (int i = 0; i < kTries && !found; ++i) {
        const std::size_t species = chance.below(job.species.size());
        const double least =
            kLooseSpacing * 0.5 * (ground.spacing(species) + ground.spacing(from.species));
        const double turn = chance.between(0.0, 2.0 * std::numbers::pi);
        const double away = least * std::sqrt(chance.between(1.0, 4.0));
        const Point p = from.at + Point{std::cos(turn), std::sin(turn)} * away;
        found = ground.takes(p, species);
        if (!found) continue;
        active.push_back(ground.plantings().size());
        ground.plant(p, species);
      }
      if (!found) active.erase(active.begin() + static_cast<std::ptrdiff_t>(pick));
    }
  return ground.planted();
}

}  // namespace tussock::bench
