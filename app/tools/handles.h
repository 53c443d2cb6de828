// SPDX-License-Identifier: MIT
// The handles of what is selected: corners and middles of sides, and the turn of a drift.
#pragma once

#include <optional>

#include "app/canvas/canvas.h"
#include "app/tools/outline.h"

namespace tussock {

class Handles {
 public:
  enum class Kind { Corner, Side, Turn };
  struct Handle {
    Kind kind = Kind::Corner;
    QPointF at;       // pixels
    CornerAt corner;  // of a side: the corner it starts from
  };

  explicit Handles(Canvas& canvas) : canvas_(canvas) {}

  // Of the one selected object, for the mapping in force; none when several are selected.
  [[nodiscard]] std::vector<Handle> all() const;
  [[nodiscard]] std::optional<Handle> at(QPointF pixels) const;
  [[nodiscard]] std::optional<ObjectRef> subject() const;
  void paint(QPainter& painter, std::optional<CornerAt> active) const;

 private:
  void addCorners(std::vector<Handle>& handles, const Outline& outline) const;
  void addTurn(std::vector<Handle>& handles, const Drift& drift) const;

  Canvas& canvas_;
};

}  // namespace tussock
