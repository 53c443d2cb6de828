// SPDX-License-Identifier: MIT
// The plain baseline of the sun map: one ray from a cell towards the sun, tried against the solids
// of the reference yard, taken as opaque, until one is hit. Compare `per_cell_and_step`.
#include <algorithm>
#include <cmath>

#include <benchmark/benchmark.h>

#include "core/sun/solids.h"
#include "core/sun/sun_days.h"
#include "tests/bench/sun_scene.h"

namespace tussock {
namespace {

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
  const Yard yard = bench::referenceYard();
  const Solids solids = solidsOf(yard);
  std::vector<Box3> boxes;
  for (const ConvexSolid& body : solids.bodies) boxes.push_back(boxAround(body));
  const auto steps = stepsOf(Date(std::chrono::year(2026), std::chrono::July, std::chrono::day(15)),
                             yard.settings.latitude, yard.settings.longitude, 60);
  const bench::OneCore oneCore;
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

BENCHMARK(traceOneDay)
    ->Name("SunRaysBaseline")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();

}  // namespace
}  // namespace tussock
