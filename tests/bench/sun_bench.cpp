// SPDX-License-Identifier: MIT
// The season's sun map of a yard 40 m by 25 m with eleven solids, before and after noon kept, on
// one core. Baselines: a plain ray (sun_rays_bench.cpp) and, where Embree 3 is installed, its
// packets of eight (embree/sun_embree_bench.cpp). Compare `per_cell_and_step`.
#include <benchmark/benchmark.h>

#include "core/sun/live_map.h"
#include "core/sun/map.h"
#include "tests/bench/sun_scene.h"
#include "tests/support/insolation_scene.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

void computeMap(benchmark::State& state, const Yard& yard, const SunMapRequest& request) {
  const bench::OneCore oneCore;
  for (auto _ : state) benchmark::DoNotOptimize(computeSunMap(yard, request));
  state.counters["per_cell_and_step"] = benchmark::Counter(
      bench::cellsAndSteps(yard, request),
      benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  state.counters["per_cell_and_step_computed"] = benchmark::Counter(
      bench::cellsAndStepsComputed(yard, request),
      benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void SunMapSeason(benchmark::State& state) {
  computeMap(state, bench::referenceYard(), bench::requestOf(40, 25, 0.1, 5));
}
// A hundred solids on the same ground: at most five times the season's map.
void SunMapHundredSolids(benchmark::State& state) {
  computeMap(state, bench::crowdedYard(), bench::requestOf(40, 25, 0.1, 5));
}
// Larger ground: per cell and step no more than the season's map. Eleven solids, and as many to
// the hectare as there.
void SunMapLarge(benchmark::State& state) {
  computeMap(state, bench::referenceYard(), bench::requestOf(100, 100, 0.1, 5));
}
void SunMapLargeAsDense(benchmark::State& state) {
  computeMap(state, bench::tenYards(), bench::requestOf(100, 100, 0.1, 5));
}

// As a drag begins: what the following steps need is kept as well. To be at most a tenth of the
// season's map, like those steps.
void SunMapFirstFollowed(benchmark::State& state) {
  const Yard yard = bench::referenceYard();
  const bench::OneCore oneCore;
  for (auto _ : state) {
    LiveSunMap live(bench::requestOf(40, 25, 0.25, 15));
    benchmark::DoNotOptimize(live.update(yard));
  }
}
// A tree carried a hand's breadth at a time, the map following.
void dragATree(benchmark::State& state, const SunMapRequest& request) {
  Yard yard = bench::referenceYard();
  const bench::OneCore oneCore;
  LiveSunMap live(request);
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
void SunMapDrag(benchmark::State& state) {
  dragATree(state, bench::requestOf(40, 25, 0.25, 15));
}
// While one month, or the worst, is looked at.
void SunMapDragMonths(benchmark::State& state) {
  SunMapRequest request = bench::requestOf(40, 25, 0.25, 15);
  request.detail = SunDetail::Months;
  dragATree(state, request);
}
// The window's shared map: months kept.
void SunMapMonths(benchmark::State& state) {
  const Yard yard = bench::referenceYard();
  SunMapRequest request = bench::requestOf(40, 25, 0.25, 10);
  request.detail = SunDetail::Months;
  const bench::OneCore oneCore;
  for (auto _ : state) benchmark::DoNotOptimize(computeSunMap(yard, request));
}

// Four single days of a yard of opaque blocks, in cells of 0.25 m and steps of a quarter of an
// hour: what GRASS GIS r.sun is timed on by tests/data/insolation/insolation.sh.
void SunMapFourDays(benchmark::State& state) {
  const Yard yard = test::insolationYard(std::string(TUSSOCK_TEST_DATA) + "/insolation");
  SunMapRequest request = bench::requestOf(40, 25, 0.25, 15);
  const bench::OneCore oneCore;
  for (auto _ : state)
    for (const Date day : {2026y / 3 / 21, 2026y / 6 / 21, 2026y / 9 / 23, 2026y / 12 / 21}) {
      request.day = day;
      benchmark::DoNotOptimize(computeSunMap(yard, request));
    }
}

BENCHMARK(SunMapSeason)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapHundredSolids)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapLarge)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapLargeAsDense)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapFourDays)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapFirstFollowed)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapDrag)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapDragMonths)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(SunMapMonths)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();

}  // namespace
}  // namespace tussock
