// SPDX-License-Identifier: MIT
#include "app/canvas/items.h"
#include "core/sun/roof_plan.h"

namespace tussock {

namespace {

QPainterPath creasesOf(const RoofPlan& roof) {
  QPainterPath path;
  for (const auto& [a, b] : roof.creases) {
    path.moveTo(a.x, a.y);
    path.lineTo(b.x, b.y);
  }
  return path;
}

QPainterPath eavesOf(const RoofPlan& roof) {
  QPainterPath path;
  for (const Polygon& eaves : roof.eaves) path.addPath(pathOf(eaves));
  return path;
}

class BuildingItem : public Item {
 public:
  explicit BuildingItem(const Building& building)
      : Item(refTo(building.id), Depth::Building),
        name_(QString::fromStdString(building.name)),
        middle_(labelPoint(building.footprint)) {
    setArea({building.footprint});
    const RoofPlan roof = roofPlanOf(building);
    creases_ = creasesOf(roof);
    eaves_ = eavesOf(roof);
  }

  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    painter.setTransform(mapping.transform(), true);
    painter.setPen(Qt::NoPen);
    painter.fillPath(shape(), faded(look.theme.building, cover(look, 0.75)));
    painter.fillPath(eaves_.subtracted(shape()),
                     faded(look.theme.building, 0.5 * cover(look, 0.75)));
    painter.strokePath(creases_, linePen(faded(look.theme.quietInk, 0.75), 1.0));
    painter.strokePath(eaves_, linePen(look.theme.quietInk, 1.0, Qt::DashLine));
    painter.strokePath(shape(), linePen(look.theme.quietInk, 1.8));
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    if (name_.isEmpty()) return;
    Label label{{name_}, fontFor(TextRole::Body), {}, look.theme.ink};
    label.middle = mapping.toPixels(middle_) + QPointF(0.0, creases_.isEmpty() ? 0.0 : -16.0);
    label.room = mapping.pixels(bounds().width()) * 0.95;
    label.weight = 60.0;
    label.slide = 24.0;
    labels.push_back(label);
  }

 private:
  QPainterPath creases_, eaves_;  // as the roof that casts shade has them
  QString name_;
  Point middle_;
};

}  // namespace

std::unique_ptr<Item> makeBuildingItem(const Building& building) {
  return std::make_unique<BuildingItem>(building);
}

}  // namespace tussock
