// SPDX-License-Identifier: MIT
// The handles of what is selected: corners and middles of sides; turn and ends of a drift; height
// of what stands, rim of a crown.
#pragma once

#include <optional>

#include "app/canvas/canvas.h"
#include "app/tools/outline.h"

namespace tussock {

class Handles {
 public:
  enum class Kind { Corner, Side, Turn, End, Height, Rim };
  struct Handle {
    Kind kind = Kind::Corner;
    QPointF at;         // pixels
    CornerAt corner;    // of a side: the corner it starts from
    double side = 1.0;  // of an end: 1 along the axis, -1 against it
    double stem = 0.0;  // pixels down to what it belongs to
  };

  explicit Handles(Canvas& canvas) : canvas_(canvas) {}

  // Of the one selected object, for the mapping in force; none when several are selected.
  [[nodiscard]] std::vector<Handle> all() const;
  [[nodiscard]] std::optional<Handle> at(QPointF pixels) const;
  [[nodiscard]] std::optional<ObjectRef> subject() const;
  void paint(QPainter& painter, std::optional<CornerAt> active) const;

 private:
  void addCorners(std::vector<Handle>& handles, const Outline& outline) const;
  void addEnds(std::vector<Handle>& handles, const Drift& drift) const;
  void addTurn(std::vector<Handle>& handles, const Drift& drift) const;
  [[nodiscard]] QPointF liftedOverWords(QPointF at) const;
  void addHeight(std::vector<Handle>& handles, ObjectRef ref) const;
  void paintOne(QPainter& painter, const Handle& handle) const;

  Canvas& canvas_;
};

}  // namespace tussock
