// SPDX-License-Identifier: MIT
// Walls are solid, fences posts on a line, hedges a soft green band.
#include <algorithm>

#include "app/canvas/items.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

constexpr double kPostStep = 2.4;  // metres, a usual fence panel

class BarrierItem : public Item {
 public:
  explicit BarrierItem(const Barrier& barrier)
      : Item(refTo(barrier.id), Depth::Barrier),
        kind_(barrier.kind),
        line_(barrier.footprint.empty() ? pathOf(barrier.line) : QPainterPath()) {
    if (barrier.footprint.empty()) {
      setArea(strip(barrier.line, barrier.thickness));
    } else {
      setArea({barrier.footprint});
    }
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    painter.setTransform(mapping.transform(), true);
    const Theme& t = look.theme;
    switch (kind_) {
      case BarrierKind::Wall:
        painter.fillPath(shape(), t.edge);
        painter.strokePath(shape(), linePen(t.ink, 1.2));
        return;
      case BarrierKind::Fence:
        painter.strokePath(line_.isEmpty() ? shape() : line_, linePen(t.ink, 1.4));
        paintPosts(painter, t.ink);
        return;
      case BarrierKind::Hedge:
        painter.fillPath(shape(), faded(t.leaf, 0.45));
        painter.strokePath(shape(), linePen(t.leaf, 1.4, Qt::DotLine));
        return;
    }
  }

 private:
  void paintPosts(QPainter& painter, const QColor& ink) const {
    const double length = line_.length();
    const int posts = std::max(1, int(length / kPostStep));
    for (int i = 0; i <= posts && length > 0.0; ++i) {
      const QPointF at = line_.pointAtPercent(std::min(1.0, double(i) / posts));
      painter.fillRect(QRectF(at.x() - 0.06, at.y() - 0.06, 0.12, 0.12), ink);
    }
  }

  BarrierKind kind_;
  QPainterPath line_;
};

}  // namespace

std::unique_ptr<Item> makeBarrierItem(const Barrier& barrier) {
  return std::make_unique<BarrierItem>(barrier);
}

}  // namespace tussock
