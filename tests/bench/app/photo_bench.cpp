// SPDX-License-Identifier: MIT
// Frames over a photo of 12 megapixels. Baseline: the screen, 60 frames a second. A frame while
// panning takes at most 16 ms.
#include <QBuffer>
#include <QImage>

#include <benchmark/benchmark.h>

#include "core/edit/draft.h"
#include "tests/bench/app/many_plants.h"

namespace tussock {
namespace {

using bench::ShownYard;

constexpr QSize kPhoto{4000, 3000};

// Grain that does not compress away.
QByteArray pictureBytes() {
  QImage image(kPhoto, QImage::Format_RGB32);
  unsigned grain = 1;
  for (int y = 0; y < image.height(); ++y) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
    for (int x = 0; x < image.width(); ++x) {
      grain = grain * 1664525u + 1013904223u;
      line[x] = qRgb(x * 255 / image.width(), y * 255 / image.height(), int(grain >> 25));
    }
  }
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "JPG", 90);
  return bytes;
}

// 80 x 60 m of ground, a little turned, with four planted beds on it.
void layPhoto(ShownYard& shown) {
  shown.take(bench::bedsOfPlants(4, readShippedCatalogue().catalogue));
  Photo photo;
  photo.id = shown.document().ids().take<Photo>();
  photo.contentHash = shown.document().keepPicture(pictureBytes());
  photo.widthPixels = kPhoto.width();
  photo.heightPixels = kPhoto.height();
  photo.metresPerPixel = 0.02;
  photo.turn = Angle::degrees(7.0);
  photo.corner = {-24.0, 32.0};
  Draft draft(shown.document().yard());
  draft.put(photo);
  shown.document().commit(draft.finish("Lay photo"));
  shown.settle();
}

Box around(Point middle, double half) {
  Box box;
  box.include(middle - Point{half, half});
  box.include(middle + Point{half, half});
  return box;
}

// Metres from the middle to the edge of what is shown.
void panOverPhoto(benchmark::State& state) {
  ShownYard shown;
  layPhoto(shown);
  shown.canvas().showBox(around({15.0, 2.5}, double(state.range(0))));
  shown.frame();
  shown.startPan();
  int step = 0;
  for (auto _ : state) {
    shown.pan(step++ % 40 < 20 ? QPointF(9, 5) : QPointF(-9, -5));
    shown.frame();
  }
}
BENCHMARK(panOverPhoto)->Arg(25)->Arg(3)->Unit(benchmark::kMillisecond);

void zoomOverPhoto(benchmark::State& state) {
  ShownYard shown;
  layPhoto(shown);
  int step = 0;
  for (auto _ : state) {
    shown.wheel(step++ % 8 < 4 ? 1 : -1);
    shown.frame();
  }
}
BENCHMARK(zoomOverPhoto)->Unit(benchmark::kMillisecond);

void repaintPhoto(benchmark::State& state) {
  ShownYard shown;
  layPhoto(shown);
  shown.canvas().showBox(around({15.0, 2.5}, double(state.range(0))));
  for (auto _ : state) {
    shown.canvas().setAllNames(false);  // has everything painted again
    shown.frame();
  }
}
BENCHMARK(repaintPhoto)->Arg(25)->Arg(3)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tussock
