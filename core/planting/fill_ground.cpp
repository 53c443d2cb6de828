// SPDX-License-Identifier: MIT
#include "core/planting/fill_ground.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

#include "core/planting/disc_grid.h"
#include "core/planting/ground.h"

namespace tussock {

namespace {

// What keeps plants off, asked cell by cell.
class Obstacles {
 public:
  Obstacles(const Yard& yard, const Bed& bed, Layer layer, double cell)
      : bed_(bed), plants_(boundsOf(bed.outline).grown(1.0), std::max(cell * 4.0, 0.5)) {
    const Box box = boundsOf(bed.outline);
    auto solid = [&](const Polygon& polygon) {
      if (boundsOf(polygon).overlaps(box)) solids_.push_back(&polygon);
    };
    for (const Paving& paving : yard.pavings) solid(paving.outline);
    for (const Building& building : yard.buildings) solid(building.footprint);
    for (const Barrier& barrier : yard.barriers) addBarrier(barrier, box);
    for (const Tree& tree : yard.trees) addRound(tree.at, tree.trunkDiameter.metres() / 2.0, box);
    for (const SteppingPlace& step : yard.steppingPlaces)
      addRound(step.at, step.radius.metres(), box);
    for (const Drift& drift : yard.drifts)
      if (drift.layer == layer)
        for (const Plant& plant : drift.plants) addPlant(plant.at, drift.spacing, box);
  }

  // Metres to the nearest edge, wall or round thing; below 0 inside one or outside the bed.
  [[nodiscard]] double distanceTo(Point p) const {
    if (!contains(bed_.outline, p) || underPlant(p)) return -1.0;
    double nearest = distanceToEdge(bed_.outline, p);
    for (const Polygon* solid : solids_) {
      if (contains(*solid, p)) return -1.0;
      nearest = std::min(nearest, distanceToEdge(*solid, p));
    }
    for (const auto& [from, to, half] : lines_)
      nearest = std::min(nearest, distanceToSegment(p, from, to) - half);
    for (const auto& [at, radius] : rounds_) nearest = std::min(nearest, distance(p, at) - radius);
    return nearest;
  }

 private:
  struct Line {
    Point from, to;
    double half;
  };
  struct Round {
    Point at;
    double radius;
  };
  void addBarrier(const Barrier& barrier, const Box& box) {
    if (!barrier.footprint.empty() && boundsOf(barrier.footprint).overlaps(box))
      solids_.push_back(&barrier.footprint);
    for (std::size_t i = 1; i < barrier.line.size(); ++i)
      if (boundsOf({barrier.line[i - 1], barrier.line[i]}).grown(1.0).overlaps(box))
        lines_.push_back({barrier.line[i - 1], barrier.line[i], barrier.thickness.metres() / 2.0});
  }
  void addRound(Point at, double radius, const Box& box) {
    if (box.grown(radius).contains(at)) rounds_.push_back({at, radius});
  }
  void addPlant(Point at, Length spacing, const Box& box) {
    const double radius = spacing.metres() / 2.0;
    if (!box.grown(radius).contains(at)) return;
    plants_.add(at);
    radii_.push_back(radius);
    widest_ = std::max(widest_, radius);
  }
  [[nodiscard]] bool underPlant(Point p) const {
    return !plants_.near(p, widest_, [&](std::size_t i) {
      return squaredDistance(p, plants_.at(i)) >= radii_[i] * radii_[i];
    });
  }

  const Bed& bed_;
  std::vector<const Polygon*> solids_;
  std::vector<Line> lines_;
  std::vector<Round> rounds_;
  DiscGrid plants_;
  std::vector<double> radii_;
  double widest_ = 0.0;
};

// Keeps the cells within `reach` of one where a plant may stand: tips too thin to plant fall away.
std::vector<FillCell> reachable(const std::vector<FillCell>& cells, const Box& box, double setBack,
                                double reach) {
  DiscGrid standing(box, std::max(reach, 0.05));
  for (const FillCell& cell : cells)
    if (cell.toEdge >= setBack) standing.add(cell.at);
  std::vector<FillCell> kept;
  for (const FillCell& cell : cells) {
    const auto none = [](std::size_t) { return false; };
    if (cell.toEdge >= setBack || !standing.near(cell.at, reach, none)) kept.push_back(cell);
  }
  return kept;
}

// From the middle of a cell to the place about it that lies farthest from everything.
double farthestFrom(const Obstacles& obstacles, Point from, double size) {
  constexpr double kFine = 1e-7;  // metres
  double most = obstacles.distanceTo(from);
  for (double step = size / 2.0; step > kFine; step /= 2.0)
    for (bool further = true; further;) {
      further = false;
      for (const Point way : {Point{1, 0}, Point{-1, 0}, Point{0, 1}, Point{0, -1}, Point{1, 1},
                              Point{-1, -1}, Point{1, -1}, Point{-1, 1}}) {
        const Point to = from + way * step;
        const double away = obstacles.distanceTo(to);
        if (away <= most + 1e-9) continue;
        most = away, from = to, further = true;
      }
    }
  return most;
}

// The middle of no cell need lie in the middle of the bed: the likeliest are looked at closely.
double widthOf(const std::vector<FillCell>& cells, const Obstacles& obstacles, double size) {
  constexpr std::size_t kLikely = 8;
  std::vector<const FillCell*> likely;
  for (const FillCell& cell : cells) likely.push_back(&cell);
  const std::size_t count = std::min(kLikely, likely.size());
  std::partial_sort(likely.begin(), likely.begin() + static_cast<std::ptrdiff_t>(count),
                    likely.end(),
                    [](const FillCell* a, const FillCell* b) { return a->toEdge > b->toEdge; });
  double widest = 0.0;
  for (std::size_t i = 0; i < count; ++i)
    widest = std::max(widest, farthestFrom(obstacles, likely[i]->at, size));
  return 2.0 * widest;
}

Moisture moistureAt(const Yard& yard, const Bed& bed, Point p) {
  for (const Patch& patch : yard.patches)
    if (contains(patch.outline, p)) return patch.moisture;
  return bed.moisture;
}

}  // namespace

void lookAround(std::vector<FillCell>& cells, const Yard& yard, const Bed& bed, const FillSun& sun,
                const SightLimits& limits) {
  const std::vector<Viewpoint> viewpoints = viewpointsOf(bed);
  for (FillCell& cell : cells) {
    cell.moisture = moistureAt(yard, bed, cell.at);
    if (const auto hours = sun.hoursAt(cell.at)) cell.hours = static_cast<float>(hours->total());
    double nearest = viewpoints.empty() ? 0.0 : 1e9;
    for (const Viewpoint& viewpoint : viewpoints)
      if (const auto sight = viewpoint.sightOf(cell.at, limits))
        nearest = std::min(nearest, sight->toEdge);
    cell.toViewers = static_cast<float>(nearest);
  }
}

double FillGround::across(int cell) const {
  const auto cellAt = [&](int number) -> const FillCell& {
    return cells_[static_cast<std::size_t>(number)];
  };
  const Point from = cellAt(cell).at;
  for (int best = cell;; cell = best) {
    for (int row = -1; row <= 1; ++row)
      for (int column = -1; column <= 1; ++column) {
        const Point p = cellAt(cell).at;
        const int other = at(columnOf(p.x) + column, rowOf(p.y) + row);
        if (other >= 0 && cellAt(other).toEdge > cellAt(best).toEdge &&
            distance(from, cellAt(other).at) <= static_cast<double>(cellAt(other).toEdge))
          best = other;
      }
    if (best == cell) return 2.0 * static_cast<double>(cellAt(cell).toEdge);
  }
}

double cellSizeFor(const Bed& bed, double spacing) {
  constexpr double kMostCells = 400'000.0;
  constexpr double kLarge = 500.0;  // square metres: a centimetre more of a cell is not seen there
  const double area = areaOf(bed.outline).squareMetres();
  const double across = area > kLarge ? 4.0 : 4.5;  // cells from plant to plant
  return std::max({spacing / across, std::sqrt(area / kMostCells), 0.02});
}

FillGround::FillGround(const Yard& yard, const Bed& bed, Layer layer, double spacing, double size)
    : yard_(yard), bed_(bed), size_(size), box_(boundsOf(bed.outline)) {
  columns_ = 1 + static_cast<int>(box_.width() / size_);
  rows_ = 1 + static_cast<int>(box_.height() / size_);
  const Obstacles obstacles(yard, bed, layer, size_);
  for (int row = 0; row < rows_; ++row)
    for (int column = 0; column < columns_; ++column) {
      const Point p = box_.low + Point{(column + 0.5) * size_, (row + 0.5) * size_};
      const double away = obstacles.distanceTo(p);
      if (away < 0.0) continue;
      cells_.push_back({p, static_cast<float>(away), 0.0F, -1.0F, bed.moisture});
    }
  width_ = widthOf(cells_, obstacles, size_);
  // A cell's centre may miss the middle of a bed just as wide as a plant asks for.
  const double setBack = std::max(0.0, setBackFor(bed, Length::metres(spacing)).metres() - size_);
  const double own = std::min(setBack, spacing / 2.0);  // what a plant takes of what lies beside it
  cells_ = reachable(cells_, box_, setBack, own + 0.35 * spacing);
  number();
}

void FillGround::keepOnly(const std::vector<bool>& keep) {
  std::vector<FillCell> kept;
  for (std::size_t i = 0; i < cells_.size(); ++i)
    if (keep[i]) kept.push_back(cells_[i]);
  cells_ = std::move(kept);
  fenced_ = true;
  toTake_ = 0.0;
  number();
}

void FillGround::number() {
  grid_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), -1);
  for (std::size_t i = 0; i < cells_.size(); ++i) {
    const auto row = static_cast<std::size_t>(rowOf(cells_[i].at.y));
    grid_[row * static_cast<std::size_t>(columns_) +
          static_cast<std::size_t>(columnOf(cells_[i].at.x))] = static_cast<std::int32_t>(i);
  }
}

}  // namespace tussock
