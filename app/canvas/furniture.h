// SPDX-License-Identifier: MIT
// What is painted over the plan and stays put: scale bar, north arrow, the key to hours of sun.
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
void paintScaleBar(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);
void paintNorthArrow(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);
// Where the key's ramp lies, from 0 h at its left to kSunScaleTop at its right.
[[nodiscard]] QRectF sunKeyRamp(const SceneMapping& mapping);
void paintSunKey(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);
// A large figure on a plate, above the point: the count while it changes.
void paintFigure(QPainter& painter, QPointF above, const QString& figure, const QString& note,
                 const Theme& theme);
// A small note beside the pointer.
void paintNote(QPainter& painter, QPointF at, const QString& text, const Theme& theme);

}  // namespace tussock
