// SPDX-License-Identifier: MIT
// The small drawn symbol of a species, in plan, for canvas, cards and paper alike.
#pragma once

#include <optional>
#include <QColor>
#include <QPainter>
#include <QPixmap>

#include "core/catalog/species.h"
#include "core/model/settings.h"

namespace tussock {

struct GlyphLook {
  Habit habit = Habit::Forb;
  FlowerForm form = FlowerForm::None;
  QColor flower;
  QColor foliage;
  QColor centre = QColor(0x2B, 0x2A, 0x27);
  bool inFlower = true;
  bool existing = false;  // dot instead of cross-hair
  bool mat = false;       // spreads flat over the ground
  int variety = 0;        // 0 to 255: leaf shape, number and turn, so that neighbours differ

  bool operator==(const GlyphLook&) const = default;
};

// Without a week: in flower, in summer green. The species' weeks are those of that half of the
// earth.
[[nodiscard]] GlyphLook glyphLook(const Species& species, std::optional<int> week, bool dark,
                                  Hemisphere where = Hemisphere::North);
// For the ground of many such plants: the flowers', unless there are none or they would read as
// bare paper; else that of the leaves.
[[nodiscard]] QColor washColour(const GlyphLook& look, bool dark);

// Draws the symbol of the given radius about `centre`, in the painter's units. Detail follows the
// size it has on the device.
void paintGlyph(QPainter& painter, QPointF centre, double radius, const GlyphLook& look);
// The same as a cached picture of 2 x radius pixels, for drawing thousands. Main thread only.
[[nodiscard]] const QPixmap& glyphSprite(const GlyphLook& look, int radiusPixels, double dpr);

}  // namespace tussock
