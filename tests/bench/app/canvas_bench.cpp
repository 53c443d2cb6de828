// SPDX-License-Identifier: MIT
// Frames of the canvas, painted by the processor at 1920 x 1080. Baseline, in the same run: blit
// 10,000 cached symbols, at the places and in the size of the yard's plants, into a picture of the
// same size. A repaint of 10,000 plants takes at most 3 times the baseline.
#include <QImage>

#include <benchmark/benchmark.h>

#include "app/look/glyphs.h"
#include "app/tools/drift_in_hand.h"
#include "core/exchange/example.h"
#include "tests/bench/app/many_plants.h"

namespace tussock {
namespace {

using bench::ShownYard;

constexpr int kBeds = 40;

void baselineBlitSymbols(benchmark::State& state) {
  const Catalogue facts = readShippedCatalogue().catalogue;
  ShownYard shown(bench::bedsOfPlants(kBeds, facts));
  QImage image(1920, 1080, QImage::Format_ARGB32_Premultiplied);
  const SceneMapping& mapping = shown.canvas().mapping();
  const int radius = int(mapping.pixels(0.35 / 2.0));
  std::vector<std::pair<QPoint, QPixmap>> symbols;
  for (const Drift& drift : shown.document().yard().drifts) {
    const GlyphLook look = glyphLook(*facts.find(drift.species), {}, false);
    for (const Plant& plant : drift.plants)
      symbols.emplace_back(mapping.toPixels(plant.at).toPoint(), glyphSprite(look, radius, 1.0));
  }
  for (auto _ : state) {
    QPainter painter(&image);
    for (const auto& [at, symbol] : symbols) painter.drawPixmap(at, symbol);
  }
  state.counters["symbols"] = double(symbols.size());
}
BENCHMARK(baselineBlitSymbols)->Unit(benchmark::kMillisecond);

void repaintPlants(benchmark::State& state) {
  ShownYard shown(bench::bedsOfPlants(kBeds, readShippedCatalogue().catalogue));
  for (auto _ : state) {
    shown.canvas().setAllNames(false);  // has everything painted again
    shown.frame();
  }
}
BENCHMARK(repaintPlants)->Unit(benchmark::kMillisecond);

// The same at a scale at which nothing has been painted yet.
void paintPlantsAtNewScale(benchmark::State& state) {
  ShownYard shown(bench::bedsOfPlants(kBeds, readShippedCatalogue().catalogue));
  double size = 60.0;
  for (auto _ : state) {
    size = size < 70.0 ? size + 0.01 : 60.0;
    Box box;
    box.include(Point{32.0 - size / 2.0, 15.0});
    box.include(Point{32.0 + size / 2.0, 15.0});
    shown.canvas().showBox(box);
    shown.frame();
  }
}
BENCHMARK(paintPlantsAtNewScale)->Unit(benchmark::kMillisecond);

void zoomFrame(benchmark::State& state, const Yard& yard) {
  ShownYard shown(yard);
  int step = 0;
  for (auto _ : state) {
    shown.wheel(step++ % 8 < 4 ? 1 : -1);
    shown.frame();
  }
}

void panFrame(benchmark::State& state, const Yard& yard) {
  ShownYard shown(yard);
  shown.startPan();
  int step = 0;
  for (auto _ : state) {
    shown.pan(step++ % 40 < 20 ? QPointF(9, 5) : QPointF(-9, -5));
    shown.frame();
  }
}

void zoomOverPlants(benchmark::State& state) {
  zoomFrame(state, bench::bedsOfPlants(kBeds, readShippedCatalogue().catalogue));
}
BENCHMARK(zoomOverPlants)->Unit(benchmark::kMillisecond);
void panOverPlants(benchmark::State& state) {
  panFrame(state, bench::bedsOfPlants(kBeds, readShippedCatalogue().catalogue));
}
BENCHMARK(panOverPlants)->Unit(benchmark::kMillisecond);
// Without its photo, which photo_bench measures.
Yard bareExample() {
  Yard yard = buildExample(readShippedCatalogue().catalogue).yard;
  yard.photos = {};
  return yard;
}

void zoomOverExample(benchmark::State& state) {
  zoomFrame(state, bareExample());
}
BENCHMARK(zoomOverExample)->Unit(benchmark::kMillisecond);
void panOverExample(benchmark::State& state) {
  panFrame(state, bareExample());
}
BENCHMARK(panOverExample)->Unit(benchmark::kMillisecond);

// A frame while a drift is carried over a bed with 2,000 plants: at most 16 ms, one frame at
// 60 frames a second. No baseline but the screen's.
void carryOverFullBed(benchmark::State& state) {
  ShownYard shown(bench::bedWithDrifts(200, readShippedCatalogue().catalogue));
  DriftInHand hand(shown.canvas());
  hand.lift(QString::fromStdString(shown.document().yard().drifts.begin()->species));
  int step = 0;
  for (auto _ : state) {
    const double share = (step++ % 50) / 50.0;
    hand.carry(QPointF(200.0 + 1500.0 * share, 400.0 + 200.0 * share));
    shown.frame();
  }
}
BENCHMARK(carryOverFullBed)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tussock
