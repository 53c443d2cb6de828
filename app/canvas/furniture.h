// SPDX-License-Identifier: MIT
// What is painted over the plan and stays put: scale bar, north arrow, notes.
#pragma once

#include "app/canvas/canvas_look.h"
#include "app/canvas/scene_mapping.h"

class QPainter;

namespace tussock {

struct ScaleBar {
  double step = 1.0;  // site metres between ticks
  int ticks = 3;
};
// Three or four round steps that take 150 to 350 pixels.
[[nodiscard]] ScaleBar scaleBarFor(const SceneMapping& mapping, UnitSystem units);
// `foot` pixels along the bottom edge are taken by something else.
void paintScaleBar(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look,
                   int foot = 0);
void paintNorthArrow(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);
// A large figure on a plate: the count while it changes.
void paintFigure(QPainter& painter, const QRectF& plate, const QString& figure, const QString& note,
                 const Theme& theme);
// The plate above a point, within the view: in the middle, aside, or higher up, by the number of
// the way from 0.
inline constexpr int kFigureWays = 6;
[[nodiscard]] QRectF figurePlate(QPointF above, const QString& figure, const QString& note,
                                 const QRectF& view, int way);
// A small note beside the pointer.
void paintNote(QPainter& painter, QPointF at, const QString& text, const Theme& theme);

}  // namespace tussock
