// SPDX-License-Identifier: MIT
// The leaves, stems and flower heads that silhouettes are put together from. All are drawn with the
// foot at the painter's origin, metres, y up.
#pragma once

#include "app/look/silhouette.h"

namespace tussock {

struct SideBrush {
  QPainter& painter;
  const Silhouette& plant;
  double hairline = 0.004;  // thinnest line that shows, metres

  [[nodiscard]] const GlyphLook& look() const { return plant.look; }
  [[nodiscard]] double leafTop() const { return plant.foliage.metres(); }
  [[nodiscard]] double top() const { return plant.flower.metres(); }
  [[nodiscard]] double half() const { return plant.spread.metres() * 0.5; }
  // -1 to 1, the species' own: the n-th stem or leaf does not stand where the next one does.
  [[nodiscard]] double scatter(int n) const {
    return (((n * 37 + look().variety * 11) % 101) / 50.0) - 1.0;
  }
};

// Where a stem ends and a flower head sits; `size` is the room for it in metres.
struct StemTip {
  QPointF at;
  double size = 0.0;
};

void paintSideFoliage(const SideBrush& brush);
// The tips of the flowering stems, which it draws, back to front.
[[nodiscard]] std::vector<StemTip> paintStems(const SideBrush& brush);
void paintSideFlower(const SideBrush& brush, const StemTip& tip);

}  // namespace tussock
