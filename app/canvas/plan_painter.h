// SPDX-License-Identifier: MIT
// Paints the yard: paper, ground, planting and words, in this order.
#pragma once

#include <QPainter>
#include <set>

#include "app/canvas/finding_marks.h"
#include "app/canvas/scene.h"

namespace tussock {

class PlanPainter {
 public:
  PlanPainter(const Scene& scene, const FindingMarks& marks) : scene_(scene), marks_(marks) {}

  // These are left out, because a preview stands in for them.
  void hide(std::set<ObjectRef> refs) { hidden_ = std::move(refs); }
  [[nodiscard]] const std::set<ObjectRef>& hidden() const { return hidden_; }
  // As last painted, in pixels from the site's origin at that scale.
  [[nodiscard]] const std::vector<PlacedLabel>& labels() const { return labels_; }
  // And by what no words may lie over.
  [[nodiscard]] std::vector<QRectF> takenByLabels() const;
  // Whether words are written there; from the origin, as they were last painted.
  [[nodiscard]] bool hasWordsIn(const QRectF& box) const;
  // What the name under a point names, in pixels from the site's origin.
  [[nodiscard]] const Item* namedAt(QPointF at) const;
  void forgetLabels() { labelScale_ = 0.0; }

  void paint(QPainter& painter, const QRectF& part, const SceneMapping& mapping,
             const CanvasLook& look);
  // The words alone that touch `part`, to lie over what was painted since.
  void paintLabels(QPainter& painter, const QRectF& part, const SceneMapping& mapping,
                   const CanvasLook& look);

 private:
  void paintItems(QPainter& painter, const Box& part, const SceneMapping& mapping,
                  const CanvasLook& look) const;
  void paintEdges(QPainter& painter, const std::vector<const Item*>& ground,
                  const SceneMapping& mapping, const CanvasLook& look) const;
  void placeAllLabels(const SceneMapping& mapping, const CanvasLook& look);

  const Scene& scene_;
  const FindingMarks& marks_;
  std::set<ObjectRef> hidden_;
  // Placed once for a scale, in pixels from the site's origin, so that panning moves no label.
  std::vector<PlacedLabel> labels_;
  std::vector<QRectF> taken_;  // by what no words may lie over, likewise
  double labelScale_ = 0.0;
};

}  // namespace tussock
