// SPDX-License-Identifier: MIT
// Growing one drift while it is dragged: to feel immediate it may take 4 ms among 2,000 plants.
// There is no baseline; the time itself is what a user feels. Filling beds of 40 and 1,000 square
// metres with twelve listed species: from the first to the second the time may not grow by more
// than the counter `n_log_n`, plants times their logarithm, does.
#include <algorithm>
#include <cmath>

#include <benchmark/benchmark.h>

#include "core/checks/checked_fill.h"
#include "core/planting/grow.h"

namespace tussock {
namespace {

GrowRequest requestAt(Point at, int count) {
  GrowRequest request;
  request.bed = Id<Bed>(2);
  request.spacing = Length::metres(0.4);
  request.count = count;
  request.at = at;
  return request;
}

// A bed of 2,000 plants in drifts of 13, with a clearing of some 3 m in the middle.
Yard plantedYard() {
  Yard yard;
  Bed bed;
  bed.id = Id<Bed>(2);
  bed.outline = rectangle({0, 0}, {20, 16});
  bed.viewing.from = {Angle::degrees(180)};
  yard.beds = yard.beds.with(bed);
  IdSource ids(10);
  int planted = 0;
  for (double x = 0.5; x < 20 && planted < 2000; x += 0.7)
    for (double y = 0.5; y < 16; y += 0.5) {
      if (distance({x, y}, {10, 8}) < 2.5) continue;
      Drift drift;
      drift.id = ids.take<Drift>();
      drift.bed = bed.id;
      drift.spacing = Length::metres(0.4);
      for (const Point p : growDrift(yard, requestAt({x, y}, 13)).places)
        drift.plants.push_back({ids.take<Plant>(), p});
      planted += static_cast<int>(drift.plants.size());
      if (!drift.plants.empty()) yard.drifts = yard.drifts.with(drift);
    }
  return yard;
}

void growOneDrift(benchmark::State& state) {
  const Yard yard = plantedYard();
  const int count = static_cast<int>(state.range(0));
  double step = 0.0;
  for (auto _ : state) {
    step = step < 1.0 ? step + 0.013 : 0.0;  // dragged along
    benchmark::DoNotOptimize(growDrift(yard, requestAt({9.5 + step, 8.0}, count)));
  }
}
BENCHMARK(growOneDrift)->Arg(7)->Arg(13)->Arg(31)->Unit(benchmark::kMillisecond);

void fillABedWithOneSpecies(benchmark::State& state) {
  const double side = static_cast<double>(state.range(0));
  Yard yard;
  Bed bed;
  bed.id = Id<Bed>(2);
  bed.outline = rectangle({0, 0}, {side, side});
  yard.beds = yard.beds.with(bed);
  const GrowRequest request = requestAt({side / 2.0, side / 2.0}, 1'000'001);
  for (auto _ : state) benchmark::DoNotOptimize(growDrift(yard, request));
}
BENCHMARK(fillABedWithOneSpecies)->Arg(6)->Arg(38)->Unit(benchmark::kMillisecond);

// Twelve species of the main layer with the spacing that gives some ten plants a square metre.
std::vector<ListedSpecies> twelveSpecies(const Catalogue& catalogue) {
  std::vector<ListedSpecies> list;
  for (const Species& species : catalogue.species())
    if (list.size() < 12 && species.usualLayer() == Layer::Main && species.habit != Habit::Vine &&
        species.spacing <= Length::centimetres(36) &&
        std::ranges::find(species.moisture, Moisture::Medium) != species.moisture.end())
      list.push_back({species.botanicalName, 0.0});
  return list;
}

void fillABed(benchmark::State& state) {
  const Catalogue catalogue = readShippedCatalogue().catalogue;
  const double area = static_cast<double>(state.range(0));
  Yard yard;
  Bed bed;
  bed.id = Id<Bed>(2);
  bed.outline = rectangle({0, 0}, {std::sqrt(1.6 * area), std::sqrt(area / 1.6)});
  bed.viewing.from = {Angle::degrees(180)};
  yard.beds = yard.beds.with(bed);
  FillRequest request;
  request.bed = bed.id;
  request.plants = twelveSpecies(catalogue);
  request.timeLimit = std::chrono::minutes(5);
  double plants = 0.0;
  for (auto _ : state) {
    IdSource ids(10);
    const auto result = fillChecked(yard, catalogue, nullptr, request, ids);
    plants = static_cast<double>(result->planted);
  }
  state.counters["plants"] = plants;
  state.counters["n_log_n"] = plants * std::log(plants);
}
BENCHMARK(fillABed)->Arg(40)->Arg(1000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tussock
