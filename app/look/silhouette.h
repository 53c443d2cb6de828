// SPDX-License-Identifier: MIT
// A species seen from the side: foliage to its height, stems and flowers above it. Drawn from the
// same facts and colours as its symbol in plan (glyphs.h).
#pragma once

#include "app/look/glyphs.h"

namespace tussock {

struct Silhouette {
  GlyphLook look;
  Length foliage;  // height of the leaves
  Length flower;   // height in flower; not under the foliage
  Length spread;
  bool seeThrough = false;  // bare stems above low leaves: fewer, finer strokes
};

// Without a week: in flower, in summer green. Leaves stand to the middle of their own range of
// height; where that is not known, to a share of the height in flower by habit (our own reading,
// for the drawing only).
[[nodiscard]] Silhouette silhouetteOf(const Species& species, std::optional<int> week, bool dark,
                                      Hemisphere where = Hemisphere::North);

// Draws it standing on `foot`, one metre high as `pixelsPerMetre` of the painter's units, y down.
// Nothing is drawn above the height in flower or below the foot.
void paintSilhouette(QPainter& painter, QPointF foot, double pixelsPerMetre,
                     const Silhouette& silhouette);

}  // namespace tussock
