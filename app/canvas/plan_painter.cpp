// SPDX-License-Identifier: MIT
#include "app/canvas/plan_painter.h"

#include <algorithm>
#include <array>

#include "app/canvas/backdrop.h"

namespace tussock {

namespace {
constexpr double kOverhang = 40.0;  // pixels that symbols and lines may reach beyond their shape
constexpr double kLeading = 3.0;    // pixels of a line of words that are blank above and below

bool liesIn(const Item& around, const SceneMapping& mapping, const QRectF& box) {
  const QRectF words = box.adjusted(0.0, kLeading, 0.0, -kLeading);
  return std::ranges::all_of(
      std::array{words.topLeft(), words.topRight(), words.bottomRight(), words.bottomLeft()},
      [&](QPointF corner) { return around.hit(mapping.toSite(corner), 0.0); });
}

}  // namespace

void PlanPainter::paint(QPainter& painter, const QRectF& part, const SceneMapping& mapping,
                        const CanvasLook& look) {
  painter.setRenderHint(QPainter::Antialiasing);
  paintPaper(painter, mapping, look);
  const Box seen = mapping.siteOf(part.adjusted(-kOverhang, -kOverhang, kOverhang, kOverhang));
  paintItems(painter, seen, mapping, look);
  paintLabels(painter, part, mapping, look);
}

void PlanPainter::paintItems(QPainter& painter, const Box& part, const SceneMapping& mapping,
                             const CanvasLook& look) const {
  bool gridDone = false;
  const std::vector<const Item*> items = scene_.within(part);
  const auto above =
      std::ranges::find_if(items, [](const Item* item) { return item->depth() > Depth::Paving; });
  for (auto at = items.begin();; ++at) {
    if (at == above) paintEdges(painter, {items.begin(), above}, mapping, look);
    if (at == items.end()) break;
    const Item* item = *at;
    // The grid lies on the photo and the lawn, under all that is built and planted.
    if (!gridDone && item->depth() > Depth::Lot) {
      paintGrid(painter, mapping, look);
      gridDone = true;
    }
    if (hidden_.contains(item->ref())) continue;
    painter.save();
    item->paint(painter, mapping, look);
    painter.restore();
  }
  if (!gridDone) paintGrid(painter, mapping, look);
}

void PlanPainter::paintEdges(QPainter& painter, const std::vector<const Item*>& ground,
                             const SceneMapping& mapping, const CanvasLook& look) const {
  for (const Item* item : ground) {
    if (hidden_.contains(item->ref())) continue;
    painter.save();
    item->paintEdge(painter, mapping, look);
    painter.restore();
  }
}

void PlanPainter::paintLabels(QPainter& painter, const QRectF& part, const SceneMapping& mapping,
                              const CanvasLook& look) {
  if (labelScale_ != mapping.scale()) placeAllLabels(mapping, look);
  const QPointF origin = mapping.toPixels(Point{});
  for (const PlacedLabel& placed : labels_)
    if (reachOf(placed).translated(origin).intersects(part))
      paintLabelLine(painter, placed, origin, look.theme.paper);
  for (PlacedLabel& placed : labels_)
    if (reachOf(placed).translated(origin).intersects(part))
      paintLabel(painter, placed, origin, look.theme.paper);
}

std::vector<QRectF> PlanPainter::takenByLabels() const {
  std::vector<QRectF> boxes = taken_;
  boxes.reserve(taken_.size() + labels_.size());
  for (const PlacedLabel& placed : labels_) boxes.push_back(placed.box);
  return boxes;
}

bool PlanPainter::hasWordsIn(const QRectF& box) const {
  return std::ranges::any_of(labels_,
                             [&](const PlacedLabel& placed) { return placed.box.intersects(box); });
}

const Item* PlanPainter::namedAt(QPointF at) const {
  for (const PlacedLabel& placed : labels_)
    if (placed.label.names && placed.box.contains(at)) return scene_.find(*placed.label.names);
  return nullptr;
}

void PlanPainter::placeAllLabels(const SceneMapping& mapping, const CanvasLook& look) {
  const SceneMapping fromOrigin(Point{}, mapping.scale(), QSizeF(0.0, 0.0));
  Box everywhere;
  everywhere.include(Point{-1e9, -1e9});
  everywhere.include(Point{1e9, 1e9});
  std::vector<Label> wishes;
  taken_.clear();
  for (const Item* item : scene_.within(everywhere)) {
    if (hidden_.contains(item->ref())) continue;
    item->addLabels(wishes, fromOrigin, look);
    item->addTaken(taken_, fromOrigin);
  }
  for (Label& label : wishes) {
    const Item* around = label.within ? scene_.find(*label.within) : nullptr;
    if (around)
      label.allowed = [around, fromOrigin](const QRectF& box) {
        return liesIn(*around, fromOrigin, box);
      };
  }
  for (const FindingMark& mark : marks_.marks()) taken_.push_back(marks_.boxOf(mark, fromOrigin));
  labels_ = placeLabels(std::move(wishes), taken_);
  labelScale_ = mapping.scale();
}

}  // namespace tussock
