// SPDX-License-Identifier: MIT
// Words on the plan, and where they go: greedily, the weightiest first, never over one another.
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPixmap>
#include <QStringList>
#include <vector>

namespace tussock {

struct Label {
  QStringList lines{};
  QFont font{};
  QFont otherFont{};  // of the lines after the first
  QColor ink{};
  QPointF middle{};    // pixels
  double room = 1e9;   // width in pixels that it may take; later lines go before the first does
  double weight = 0;   // more goes first
  double slide = 0.0;  // pixels it may be moved up or down to find a place
};

struct PlacedLabel {
  Label label;
  QRectF box;       // pixels
  QPixmap picture;  // made when it is first painted
};

// `taken` are boxes that nothing may lie over.
[[nodiscard]] std::vector<PlacedLabel> placeLabels(std::vector<Label> wishes,
                                                   std::vector<QRectF> taken);
// With a halo of the ground colour, so that it reads on planting. `origin` is where the pixels of
// the box are counted from.
void paintLabel(QPainter& painter, PlacedLabel& placed, QPointF origin, const QColor& halo);

}  // namespace tussock
