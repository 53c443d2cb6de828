// SPDX-License-Identifier: MIT
// The season's sun map of a yard 40 m by 25 m with eleven solids, before and after noon kept, on
// one core. Baseline: one ray from a cell towards the sun, tried against the same solids taken as
// opaque until one is hit. Compare `per_cell_and_step` of the two.
#include <cmath>

#include <benchmark/benchmark.h>
#include <sched.h>

#include "core/sun/live_map.h"
#include "core/sun/map.h"
#include "core/sun/sun_days.h"

namespace tussock {
namespace {

// Keeps to one core while it lives, so that the map is computed by one thread.
class OneCore {
 public:
  OneCore() {
    sched_getaffinity(0, sizeof before_, &before_);
    cpu_set_t one;
    CPU_ZERO(&one);
    CPU_SET(static_cast<std::size_t>(sched_getcpu()), &one);
    sched_setaffinity(0, sizeof one, &one);
  }
  ~OneCore() { sched_setaffinity(0, sizeof before_, &before_); }
  OneCore(const OneCore&) = delete;
  OneCore& operator=(const OneCore&) = delete;

 private:
  cpu_set_t before_{};
};

void addHouses(Yard& yard) {
  const auto add = [&](Point low, Point high, Roof roof, double eave, double ridge) {
    Building building;
    building.id = Id<Building>(largestId(yard) + 1);
    building.footprint = rectangle(low, high);
    building.roof = roof;
    building.eave = Length::metres(eave);
    building.ridge = Length::metres(ridge);
    yard.buildings = yard.buildings.with(building);
  };
  add({14, 8}, {26, 16}, Roof::Gable, 3.0, 6.0);
  add({28, 10}, {34, 16}, Roof::Hip, 2.6, 4.4);
  add({3, 20}, {6, 23}, Roof::Flat, 2.4, 2.4);
}

void addFences(Yard& yard) {
  const auto add = [&](Point from, Point to, double openness) {
    Barrier barrier;
    barrier.id = Id<Barrier>(largestId(yard) + 1);
    barrier.line = {from, to};
    barrier.height = Length::metres(1.8);
    barrier.openness = openness;
    yard.barriers = yard.barriers.with(barrier);
  };
  add({0.5, 24.5}, {39.5, 24.5}, 0.0);
  add({0.5, 0.5}, {0.5, 24.5}, 0.3);
}

void addTrees(Yard& yard) {
  const Point places[]{{5, 5}, {10, 18}, {33, 4}, {37, 19}, {20, 3}, {28, 21}};
  double height = 6.0;
  for (const Point at : places) {
    Tree tree;
    tree.id = Id<Tree>(largestId(yard) + 1);
    tree.at = at;
    tree.height = Length::metres(height);
    tree.crownRadius = Length::metres(height / 3.0);
    tree.crown = height > 9.5 ? CrownShape::Cone : CrownShape::Ellipsoid;
    yard.trees = yard.trees.with(tree);
    height += 1.0;
  }
}

Yard referenceYard() {
  Yard yard;
  yard.settings.latitude = Angle::degrees(39.1);
  yard.settings.longitude = Angle::degrees(-84.5);
  addHouses(yard);
  addFences(yard);
  addTrees(yard);
  return yard;
}

SunMapRequest requestOf(double cell, int step) {
  SunMapRequest request;
  request.area = {{0, 0}, {40, 25}};
  request.cell = Length::metres(cell);
  request.stepMinutes = step;
  return request;
}

// Cells times the steps of all the season's days.
double cellsAndSteps(const Yard& yard, const SunMapRequest& request) {
  double steps = 0.0;
  for (const Date day : daysOf(growingSeason(yard.settings), request.year))
    steps += static_cast<double>(
        stepsOf(day, yard.settings.latitude, yard.settings.longitude, request.stepMinutes).size());
  const double cell = request.cell.metres();
  return steps * request.area.width() * request.area.height() / (cell * cell);
}

void computeMap(benchmark::State& state, double cell, int step) {
  const Yard yard = referenceYard();
  const SunMapRequest request = requestOf(cell, step);
  const OneCore oneCore;
  for (auto _ : state) benchmark::DoNotOptimize(computeSunMap(yard, request));
  state.counters["per_cell_and_step"] = benchmark::Counter(
      cellsAndSteps(yard, request),
      benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

// The plainest tests of a ray that leaves the ground: three slabs for a box around a body, a
// quadratic for a crown.
struct Box3 {
  double low[3], high[3];
};
struct Ray {
  double from[3], to[3];
};

Box3 boxAround(const ConvexSolid& body) {
  Box3 box{{1e300, 1e300, 0.0}, {-1e300, -1e300, 0.0}};
  for (const SitePoint& corner : body.corners) {
    const double at[3]{corner.at.x, corner.at.y, corner.up};
    for (int k = 0; k < 3; ++k)
      box.low[k] = std::min(box.low[k], at[k]), box.high[k] = std::max(box.high[k], at[k]);
  }
  return box;
}

bool hits(const Box3& box, const Ray& ray) {
  double from = 0.0;
  double to = 1e300;
  for (int k = 0; k < 3; ++k) {
    const double a = (box.low[k] - ray.from[k]) / ray.to[k];
    const double b = (box.high[k] - ray.from[k]) / ray.to[k];
    from = std::max(from, std::min(a, b));
    to = std::min(to, std::max(a, b));
  }
  return from <= to;
}

bool hits(const Crown& crown, const Ray& ray) {
  const double half = (crown.top - crown.base) / 2.0;
  const double x = (ray.from[0] - crown.at.x) / crown.radius;
  const double y = (ray.from[1] - crown.at.y) / crown.radius;
  const double z = -(crown.top + crown.base) / 2.0 / half;
  const double dx = ray.to[0] / crown.radius;
  const double dy = ray.to[1] / crown.radius;
  const double dz = ray.to[2] / half;
  const double b = x * dx + y * dy + z * dz;
  return b * b >= (dx * dx + dy * dy + dz * dz) * (x * x + y * y + z * z - 1.0);
}

bool isShaded(const std::vector<Box3>& boxes, const std::vector<Crown>& crowns, const Ray& ray) {
  const auto hit = [&](const auto& solid) { return hits(solid, ray); };
  return std::any_of(boxes.begin(), boxes.end(), hit) ||
         std::any_of(crowns.begin(), crowns.end(), hit);
}

void traceOneDay(benchmark::State& state) {
  const Yard yard = referenceYard();
  const Solids solids = solidsOf(yard);
  std::vector<Box3> boxes;
  for (const ConvexSolid& body : solids.bodies) boxes.push_back(boxAround(body));
  const auto steps = stepsOf(Date(std::chrono::year(2026), std::chrono::July, std::chrono::day(15)),
                             yard.settings.latitude, yard.settings.longitude, 60);
  for (auto _ : state) {
    int shaded = 0;
    for (const SunStep& step : steps) {
      const Point away = directionOf(step.sun.azimuth) * std::cos(step.sun.altitude.radians());
      Ray ray{{0, 0, 0}, {away.x, away.y, std::sin(step.sun.altitude.radians())}};
      for (int row = 0; row < 250; ++row)
        for (int column = 0; column < 400; ++column) {
          ray.from[0] = (column + 0.5) * 0.1;
          ray.from[1] = (row + 0.5) * 0.1;
          shaded += isShaded(boxes, solids.crowns, ray);
        }
    }
    benchmark::DoNotOptimize(shaded);
  }
  state.counters["per_cell_and_step"] = benchmark::Counter(
      static_cast<double>(steps.size()) * 250 * 400,
      benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void SunMapSeason(benchmark::State& state) {
  computeMap(state, 0.1, 5);
}
// While a tree is dragged: to be at most a tenth of the season's map.
void SunMapPreview(benchmark::State& state) {
  computeMap(state, 0.25, 15);
}

// A tree carried a hand's breadth at a time, the map following.
void SunMapDrag(benchmark::State& state) {
  Yard yard = referenceYard();
  const OneCore oneCore;
  LiveSunMap live(requestOf(0.25, 15));
  benchmark::DoNotOptimize(live.update(yard));
  Tree tree = *yard.trees.begin();
  double step = 0.1;
  for (auto _ : state) {
    if (tree.at.x > 12.0 || tree.at.x < 4.0) step = -step;
    tree.at.x += step;
    yard.trees = yard.trees.with(tree);
    benchmark::DoNotOptimize(live.update(yard));
  }
}
// The window's shared map: months kept.
void SunMapMonths(benchmark::State& state) {
  const Yard yard = referenceYard();
  SunMapRequest request = requestOf(0.25, 10);
  request.detail = SunDetail::Months;
  const OneCore oneCore;
  for (auto _ : state) benchmark::DoNotOptimize(computeSunMap(yard, request));
}

BENCHMARK(SunMapSeason)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapPreview)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapDrag)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapMonths)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(traceOneDay)
    ->Name("SunRaysBaseline")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();

}  // namespace
}  // namespace tussock
