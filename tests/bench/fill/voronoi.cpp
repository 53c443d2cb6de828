// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/planting/fill_quota.h"
#include "core/planting/fill_random.h"
#include "tests/bench/fill/baseline_ground.h"

namespace tussock::bench {

namespace {

struct Cell {
  Point middle;
  double weight = 0.0;  // square metres
  std::size_t species = 0;
};

std::size_t cellOf(Point p, const std::vector<Cell>& cells) {
  std::size_t best = 0;
  double least = 1e300;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const double away = squaredDistance(p, cells[i].middle) - cells[i].weight;
    if (away < least) least = away, best = i;
  }
  return best;
}

}  // namespace

Yard plantedByVoronoi(const PlantingJob& job) {
  BaselineGround ground(job);
  Chance chance(job.seed * 131U + 5U);
  const Bed& bed = *job.yard.beds.find(job.bed);
  const double area = areaOf(bed.outline).squareMetres();
  const double plants = area / (std::pow(ground.meanSpacing(), 2) * std::numbers::sqrt3 / 2.0);
  const auto count =
      static_cast<std::size_t>(std::max(1.0, std::round(plants / usualDriftSize(plants, 0.5))));
  std::vector<Cell> cells;
  while (cells.size() < count) {
    const Point p{chance.between(ground.box().low.x, ground.box().high.x),
                  chance.between(ground.box().low.y, ground.box().high.y)};
    if (!contains(bed.outline, p)) continue;
    const double fair = area / static_cast<double>(count) / std::numbers::pi;
    cells.push_back({p, fair * chance.between(0.5, 1.5), chance.below(job.species.size())});
  }
  const double reach = std::hypot(ground.box().width(), ground.box().height());
  const Point centre = ground.box().centre();
  for (std::size_t cell = 0; cell < cells.size(); ++cell) {
    const double s = ground.spacing(cells[cell].species);
    const int rows = static_cast<int>(reach / s) + 2;
    for (int j = -rows; j <= rows; ++j)
      for (int i = -rows; i <= rows; ++i) {
        const Point p =
            centre + Point{(i + (j % 2 == 0 ? 0.0 : 0.5)) * s, j * s * std::numbers::sqrt3 / 2.0};
        if (cellOf(p, cells) == cell && ground.takes(p, cells[cell].species))
          ground.plant(p, cells[cell].species);
      }
  }
  return ground.planted();
}

}  // namespace tussock::bench
