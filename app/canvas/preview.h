// SPDX-License-Identifier: MIT
// What an edit in hand would make of the yard, shown before it is made.
#pragma once

#include <memory>
#include <set>
#include <vector>

#include "app/canvas/scene.h"

namespace tussock {

class Preview {
 public:
  // The objects as they would be after the edit.
  void show(const Yard& yard, const ChangeSet& edit);
  // The objects as they are, moved by a step.
  void showMoved(std::vector<ObjectRef> refs, Point step);
  void clear();

  [[nodiscard]] bool empty() const { return items_.empty() && moved_.empty(); }
  [[nodiscard]] std::set<ObjectRef> replaced() const;  // what it stands in for
  void paint(QPainter& painter, const Scene& scene, const SceneMapping& mapping,
             const CanvasLook& look) const;

 private:
  void paintOne(QPainter& painter, const Item& item, const SceneMapping& mapping,
                const CanvasLook& look) const;

  std::vector<std::unique_ptr<Item>> items_;
  std::set<ObjectRef> refs_;
  std::vector<ObjectRef> moved_;
  Point step_;
};

}  // namespace tussock
