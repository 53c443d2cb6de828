// SPDX-License-Identifier: MIT
#include "app/canvas/drift_sketch.h"

#include <algorithm>

#include "app/look/glyphs.h"

namespace tussock {

namespace {

constexpr double kSpot = 0.42;       // of the spacing, a spot's radius
constexpr double kLeastSpot = 0.75;  // pixels
constexpr double kRoundFrom = 2.0;   // pixels; smaller spots are squares, which are drawn sooner

class DriftSketch : public Item {
 public:
  explicit DriftSketch(const Drift& drift)
      : Item(refTo(drift.id), Depth::MainLayer), drift_(drift) {}

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const double radius = std::max(kLeastSpot, mapping.pixels(drift_.spacing.metres() * kSpot));
    const QColor colour = colourIn(look);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    for (const Plant& plant : drift_.plants) {
      const QPointF at = mapping.toPixels(plant.at);
      if (radius >= kRoundFrom)
        painter.drawEllipse(at, radius, radius);
      else
        painter.fillRect(QRectF(at.x() - radius, at.y() - radius, 2.0 * radius, 2.0 * radius),
                         colour);
    }
  }

 private:
  [[nodiscard]] QColor colourIn(const CanvasLook& look) const {
    Species plain;
    plain.botanicalName = drift_.species;
    const Species* species = look.facts.find(drift_.species);
    const GlyphLook glyph =
        glyphLook(species ? *species : plain, look.week, look.theme.dark, look.facts.hemisphere());
    return washColour(glyph, look.theme.dark);
  }

  Drift drift_;
};

}  // namespace

std::unique_ptr<Item> makeDriftSketch(const Drift& drift) {
  return std::make_unique<DriftSketch>(drift);
}

}  // namespace tussock
