// SPDX-License-Identifier: MIT
// What plants in hand would break where they are: said beside the pointer, and ringed in the plan.
#pragma once

#include <QStringList>

#include "app/canvas/canvas.h"
#include "core/checks/finding.h"

namespace tussock {

class Breakage {
 public:
  Breakage() = default;
  // `drift` with its plants where they would stand.
  Breakage(const Document& document, const Drift& drift, const std::vector<Finding>& findings);

  // "Too close to Aster: 0.20 m, 0.38 m asked"; one for each rule that is broken, the worst first.
  [[nodiscard]] const QStringList& words() const { return words_; }
  void paint(QPainter& painter, const Canvas& canvas, Point beside) const;

 private:
  QStringList words_;
  std::vector<Point> places_;
  Length spacing_;
};

// Of a drift that is moved, turned or stretched, as it would then stand.
[[nodiscard]] Breakage breakageOf(const Document& document, const Drift& drift);

// Rings around plants, never too small to be seen.
void paintRings(QPainter& painter, const SceneMapping& mapping, const std::vector<Point>& places,
                Length spacing, const QColor& colour);

}  // namespace tussock
