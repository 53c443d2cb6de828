// SPDX-License-Identifier: MIT
// The leaves and flowers that plan symbols are put together from. All are drawn about the painter's
// origin in a circle of radius 1.
#pragma once

#include "app/look/glyphs.h"

namespace tussock {

// `detail`: 0 a blot, 1 few strokes, 2 everything; from the size on the device.
struct GlyphBrush {
  QPainter& painter;
  const GlyphLook& look;
  int detail = 2;
  double hairline = 0.03;  // thinnest line that shows, in radii

  [[nodiscard]] int pick(int shift, int count) const {  // a choice that is the species' own
    return (look.variety >> shift) % count;
  }
};

void paintFoliage(const GlyphBrush& brush);
void paintFlowers(const GlyphBrush& brush);

}  // namespace tussock
