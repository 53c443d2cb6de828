// SPDX-License-Identifier: MIT
#include "app/canvas/items.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

// Ridge, and hips to the corners of the rectangle around the footprint; nothing on a flat roof.
QPainterPath roofLines(const Building& building) {
  QPainterPath path;
  if (building.roof == Roof::Flat || building.footprint.empty()) return path;
  OrientedRectangle box = smallestRectangle(building.footprint.outer, Length());
  Point along = rotated(Point{1.0, 0.0}, box.axis);
  if (building.ridgeAzimuth) {
    const Point wanted = directionOf(*building.ridgeAzimuth);
    if (std::abs(cross(along, wanted)) > 0.7) {
      along = {-along.y, along.x};
      std::swap(box.length, box.width);
    }
  }
  const Point across{-along.y, along.x};
  const double half =
      building.roof == Roof::Hip ? std::max(0.0, box.length - box.width) / 2.0 : box.length / 2.0;
  const auto to = [](Point p) { return QPointF(p.x, p.y); };
  path.moveTo(to(box.centre - along * half));
  path.lineTo(to(box.centre + along * half));
  if (building.roof != Roof::Hip) return path;
  for (const double end : {-1.0, 1.0})
    for (const double side : {-1.0, 1.0}) {
      path.moveTo(to(box.centre + along * (end * half)));
      path.lineTo(
          to(box.centre + along * (end * box.length / 2.0) + across * (side * box.width / 2.0)));
    }
  return path;
}

class BuildingItem : public Item {
 public:
  explicit BuildingItem(const Building& building)
      : Item(refTo(building.id), Depth::Building),
        roof_(roofLines(building)),
        name_(QString::fromStdString(building.name)),
        middle_(labelPoint(building.footprint)) {
    setArea({building.footprint});
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    painter.setTransform(mapping.transform(), true);
    painter.setPen(Qt::NoPen);
    painter.fillPath(shape(), faded(look.theme.building, cover(look, 0.75)));
    painter.setClipPath(shape(), Qt::IntersectClip);
    painter.strokePath(roof_, linePen(faded(look.theme.quietInk, 0.75), 1.0));
    painter.setClipping(false);
    painter.strokePath(shape(), linePen(look.theme.quietInk, 1.8));
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    if (name_.isEmpty()) return;
    Label label{{name_}, fontFor(TextRole::Body), {}, look.theme.ink};
    label.middle = mapping.toPixels(middle_) + QPointF(0.0, roof_.isEmpty() ? 0.0 : -16.0);
    label.room = mapping.pixels(bounds().width()) * 0.95;
    label.weight = 60.0;
    label.slide = 24.0;
    labels.push_back(label);
  }

 private:
  QPainterPath roof_;
  QString name_;
  Point middle_;
};

}  // namespace

std::unique_ptr<Item> makeBuildingItem(const Building& building) {
  return std::make_unique<BuildingItem>(building);
}

}  // namespace tussock
