// SPDX-License-Identifier: MIT
// What the canvas shows of one object. Items keep ready-made shapes; they read values and never
// write any.
#pragma once

#include <memory>
#include <QPainter>
#include <QPainterPath>

#include "app/canvas/canvas_look.h"
#include "app/canvas/label.h"
#include "app/canvas/scene_mapping.h"
#include "core/model/yard.h"

namespace tussock {

// From the ground up: the order in which things are drawn, and picked the other way round.
enum class Depth {
  Photo,
  Lot,
  Bed,
  Patch,
  Paving,
  GroundLayer,
  MainLayer,
  BulbLayer,
  Limit,
  Buried,
  Place,
  Barrier,
  Building,
  Tree
};

class Item {
 public:
  Item(ObjectRef ref, Depth depth) : ref_(ref), depth_(depth) {}
  virtual ~Item() = default;

  [[nodiscard]] ObjectRef ref() const { return ref_; }
  [[nodiscard]] Depth depth() const { return depth_; }
  [[nodiscard]] const Box& bounds() const { return bounds_; }
  // The part that can be picked and is outlined when selected, in site metres.
  [[nodiscard]] const QPainterPath& shape() const { return shape_; }
  // Whether a pointer at p, give or take `reach` metres, is on it.
  [[nodiscard]] virtual bool hit(Point p, double reach) const;

  // Whether it spreads over p, and is meant there where nothing but open ground lies under it.
  [[nodiscard]] virtual bool spreadsOver(Point) const { return false; }

  virtual void paint(QPainter& painter, const SceneMapping& mapping,
                     const CanvasLook& look) const = 0;
  // The line around ground that stays in sight under what is laid on it; painted over all ground.
  virtual void paintEdge(QPainter&, const SceneMapping&, const CanvasLook&) const {}
  // What is written on the plan about it, wishes only: there may be no room.
  virtual void addLabels(std::vector<Label>&, const SceneMapping&, const CanvasLook&) const {}
  // What no words may lie over, in pixels.
  virtual void addTaken(std::vector<QRectF>&, const SceneMapping&) const {}

 protected:
  void setArea(std::vector<Polygon> area);

 private:
  ObjectRef ref_;
  Depth depth_;
  Box bounds_;
  // Asked for hits: a painter path in metres is too coarse with its fuzzy comparisons.
  std::vector<Polygon> area_;
  QPainterPath shape_;
};

// For kinds that are not drawn: null. The yard is asked for plan codes.
[[nodiscard]] std::unique_ptr<Item> makeItem(const Object& object, const Yard& yard);

[[nodiscard]] QPainterPath pathOf(const Polygon& polygon);
[[nodiscard]] QPainterPath pathOf(const Polyline& line);
// A pen of a width in pixels whatever the scale.
[[nodiscard]] QPen linePen(const QColor& colour, double pixels, Qt::PenStyle style = Qt::SolidLine);
[[nodiscard]] QColor faded(QColor colour, double alpha);

}  // namespace tussock
