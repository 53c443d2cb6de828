// SPDX-License-Identifier: MIT
// Words on the plan, and where they go: greedily, the weightiest first, never over one another.
// What has no room is said more shortly, and then not at all.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPixmap>
#include <QStringList>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

struct Label {
  QStringList lines{};
  QFont font{};
  QFont otherFont{};  // of the lines after the first
  QColor ink{};
  QPointF middle{};      // pixels
  double room = 1e9;     // width in pixels that it may take; later lines go before the first does
  double ground = 1e9;   // square pixels of what it names: larger words would hide it
  double weight = 0;     // more goes first
  double over = 0.0;     // pixels left free above and below
  double slide = 0.0;    // pixels it may be moved up or down to find a place
  double aside = 0.0;    // and to the left or right
  QString brief{};       // instead, where the lines have no place; none when empty
  bool always = false;   // said with a line to the middle where there is no place near it
  bool sooner = false;   // in brief near the middle before it is said in full from afar
  std::int64_t set = 0;  // labels of one set stand together: few of many say nothing; 0 for none
  double near = 1e9;     // pixels it may be moved without a line to what it names
  std::optional<QPointF> end{};  // of that line; the middle when not set
  // What it is to lie in: past its edge it would seem to name what lies beside.
  std::optional<ObjectRef> within{};
  std::optional<ObjectRef> names{};              // what a press on it is meant for, when set
  std::function<bool(const QRectF&)> allowed{};  // whether the box may lie there, when set
  QString mark{};                                // an icon before the first line, when set
};

struct PlacedLabel {
  Label label;
  QRectF box;         // pixels
  bool afar = false;  // with a line to what it names
  QPixmap picture{};  // made when it is first painted
};

// `taken` are boxes that nothing may lie over.
[[nodiscard]] std::vector<PlacedLabel> placeLabels(std::vector<Label> wishes,
                                                   std::vector<QRectF> taken);
// What painting it may reach.
[[nodiscard]] QRectF reachOf(const PlacedLabel& placed);
// Lines go before all labels, so that no line runs through words.
void paintLabelLine(QPainter& painter, const PlacedLabel& placed, QPointF origin,
                    const QColor& halo);
// With a halo of the ground colour, so that it reads on planting. `origin` is where the pixels of
// the box are counted from.
void paintLabel(QPainter& painter, PlacedLabel& placed, QPointF origin, const QColor& halo);

}  // namespace tussock
