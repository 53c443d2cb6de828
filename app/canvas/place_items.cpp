// SPDX-License-Identifier: MIT
// Stepping places and water points.
#include "app/canvas/items.h"

namespace tussock {

namespace {

class StepItem : public Item {
 public:
  explicit StepItem(const SteppingPlace& step) : Item(refTo(step.id), Depth::Place) {
    setArea({disc(step.at, step.radius)});
  }
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    painter.setTransform(mapping.transform(), true);
    painter.setPen(linePen(look.theme.edge, 1.0));
    painter.setBrush(look.theme.paving);
    painter.drawPath(shape());
  }
};

constexpr Length kWaterRadius = Length::centimetres(15);  // so that it can be picked

class WaterItem : public Item {
 public:
  explicit WaterItem(const WaterPoint& point)
      : Item(refTo(point.id), Depth::Place),
        at_(point.at),
        name_(QString::fromStdString(point.name)) {
    setArea({disc(point.at, kWaterRadius)});
  }
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    const QPointF at = mapping.toPixels(at_);
    QPainterPath drop;
    drop.moveTo(at + QPointF(0, -8));
    drop.cubicTo(at + QPointF(1, -4), at + QPointF(5.5, -1), at + QPointF(5.5, 3));
    drop.cubicTo(at + QPointF(5.5, 9), at + QPointF(-5.5, 9), at + QPointF(-5.5, 3));
    drop.cubicTo(at + QPointF(-5.5, -1), at + QPointF(-1, -4), at + QPointF(0, -8));
    painter.setPen(QPen(look.theme.sky, 1.4));
    painter.setBrush(look.theme.raised);
    painter.drawPath(drop);
  }
  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    if (name_.isEmpty()) return;
    Label label{{name_}, fontFor(TextRole::Note), {}, look.theme.quietInk};
    label.middle = mapping.toPixels(at_) + QPointF(0.0, 18.0);
    label.weight = 10.0;
    labels.push_back(label);
  }

 private:
  Point at_;
  QString name_;
};

}  // namespace

std::unique_ptr<Item> makeStepItem(const SteppingPlace& step) {
  return std::make_unique<StepItem>(step);
}
std::unique_ptr<Item> makeWaterItem(const WaterPoint& point) {
  return std::make_unique<WaterItem>(point);
}

}  // namespace tussock
