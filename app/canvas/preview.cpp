// SPDX-License-Identifier: MIT
#include "app/canvas/preview.h"

#include <algorithm>

#include "app/canvas/drift_sketch.h"

namespace tussock {

namespace {

constexpr std::size_t kMostDrawn = 4'000;  // plants, one by one; of more there is a sketch

std::size_t plantsIn(const ChangeSet& edit) {
  std::size_t plants = 0;
  for (const Change& change : edit.changes)
    if (const auto* drift = change.after ? std::get_if<Drift>(&*change.after) : nullptr)
      plants += drift->plants.size();
  return plants;
}

}  // namespace

void Preview::show(const Yard& yard, const ChangeSet& edit) {
  clear();
  const bool vast = plantsIn(edit) > kMostDrawn;
  const Yard after = apply(yard, edit);
  for (const Change& change : edit.changes) {
    refs_.insert(subjectOf(change));
    if (!change.after) continue;
    const auto* drift = std::get_if<Drift>(&*change.after);
    if (auto item = vast && drift ? makeDriftSketch(*drift) : makeItem(*change.after, after))
      items_.push_back(std::move(item));
  }
  std::sort(items_.begin(), items_.end(),
            [](const auto& a, const auto& b) { return a->depth() < b->depth(); });
}

void Preview::showMoved(std::vector<ObjectRef> refs, Point step) {
  clear();
  refs_ = {refs.begin(), refs.end()};
  moved_ = std::move(refs);
  step_ = step;
}

void Preview::clear() {
  items_.clear();
  refs_.clear();
  moved_.clear();
  step_ = {};
}

std::set<ObjectRef> Preview::replaced() const {
  return refs_;
}

void Preview::paint(QPainter& painter, const Scene& scene, const SceneMapping& mapping,
                    const CanvasLook& look) const {
  for (const auto& item : items_) paintOne(painter, *item, mapping, look);
  const SceneMapping there = mapping.panned({mapping.pixels(step_.x), -mapping.pixels(step_.y)});
  std::vector<const Item*> moved;
  for (const ObjectRef ref : moved_)
    if (const Item* item = scene.find(ref)) moved.push_back(item);
  std::stable_sort(moved.begin(), moved.end(),
                   [](const Item* a, const Item* b) { return a->depth() < b->depth(); });
  for (const Item* item : moved) paintOne(painter, *item, there, look);
}

void Preview::paintOne(QPainter& painter, const Item& item, const SceneMapping& mapping,
                       const CanvasLook& look) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  item.paint(painter, mapping, look);
  painter.restore();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  item.paintEdge(painter, mapping, look);
  painter.restore();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setTransform(mapping.transform(), true);
  painter.strokePath(item.shape(), linePen(look.theme.sky, 2.0));
  painter.restore();
}

}  // namespace tussock
