// SPDX-License-Identifier: MIT
// What lies flat on the ground or under it.
#include "app/canvas/items.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

// An area with a wash and a line, and its name in the middle.
class AreaItem : public Item {
 public:
  AreaItem(ObjectRef ref, Depth depth, const Polygon& outline, std::string name)
      : Item(ref, depth), name_(QString::fromStdString(name)), middle_(labelPoint(outline)) {
    setArea({outline});
  }

  void addLabels(std::vector<Label>& labels, const SceneMapping& mapping,
                 const CanvasLook& look) const override {
    if (name_.isEmpty()) return;
    Label label{{name_}, fontFor(TextRole::Body), {}, look.theme.quietInk};
    label.middle = mapping.toPixels(middle_);
    label.room = mapping.pixels(std::max(bounds().width(), bounds().height())) * 0.9;
    label.weight = 50.0;
    label.slide = 20.0;
    labels.push_back(label);
  }

 protected:
  void paintArea(QPainter& painter, const SceneMapping& mapping, const QPen& pen,
                 const QBrush& brush) const {
    painter.setTransform(mapping.transform(), true);
    painter.setPen(pen);
    painter.setBrush(brush);
    painter.drawPath(shape());
  }

 private:
  QString name_;
  Point middle_;
};

class LotItem : public AreaItem {
 public:
  explicit LotItem(const LotLine& lot)
      : AreaItem(refTo(lot.id), Depth::Lot, lot.outline, {}), outline_(lot.outline) {}
  [[nodiscard]] bool hit(Point p, double reach) const override {
    return distanceToEdge(outline_, p) <= reach;  // the line only: the lawn is no thing to pick
  }
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    paintArea(painter, mapping, linePen(look.theme.quietInk, 1.0, Qt::DashDotLine),
              faded(look.theme.lawn, 0.82 * cover(look, 0.2)));
  }

 private:
  Polygon outline_;
};

class PatchItem : public AreaItem {
 public:
  explicit PatchItem(const Patch& patch)
      : AreaItem(refTo(patch.id), Depth::Patch, patch.outline, patch.name) {}
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    paintArea(painter, mapping, linePen(look.theme.sky, 1.0, Qt::DotLine),
              faded(look.theme.sky, 0.12));
  }
};

class PavingItem : public AreaItem {
 public:
  explicit PavingItem(const Paving& paving)
      : AreaItem(refTo(paving.id), Depth::Paving, paving.outline, paving.name) {}
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    paintArea(painter, mapping, linePen(faded(look.theme.edge, 0.55), 0.8),
              faded(look.theme.paving, cover(look, 0.55)));
  }
};

class LimitItem : public AreaItem {
 public:
  explicit LimitItem(const HeightLimit& limit)
      : AreaItem(refTo(limit.id), Depth::Limit, limit.outline, limit.name) {}
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    paintArea(painter, mapping, linePen(look.theme.caution, 1.2, Qt::DashLine),
              faded(look.theme.caution, 0.06));
  }
};

class BuriedItem : public Item {
 public:
  explicit BuriedItem(const BuriedLine& line)
      : Item(refTo(line.id), Depth::Buried), line_(pathOf(line.line)) {
    setArea(strip(line.line, line.handDigWidth * 2.0));
  }
  void paint(QPainter& painter, const SceneMapping& mapping,
             const CanvasLook& look) const override {
    painter.setTransform(mapping.transform(), true);
    painter.setPen(Qt::NoPen);
    painter.fillPath(shape(), faded(look.theme.alert, 0.07));
    painter.strokePath(line_, linePen(look.theme.alert, 1.2, Qt::DashDotDotLine));
  }

 private:
  QPainterPath line_;
};

}  // namespace

std::unique_ptr<Item> makeLotItem(const LotLine& lot) {
  return std::make_unique<LotItem>(lot);
}
std::unique_ptr<Item> makePatchItem(const Patch& patch) {
  return std::make_unique<PatchItem>(patch);
}
std::unique_ptr<Item> makePavingItem(const Paving& paving) {
  return std::make_unique<PavingItem>(paving);
}
std::unique_ptr<Item> makeLimitItem(const HeightLimit& limit) {
  return std::make_unique<LimitItem>(limit);
}
std::unique_ptr<Item> makeBuriedItem(const BuriedLine& line) {
  return std::make_unique<BuriedItem>(line);
}

}  // namespace tussock
