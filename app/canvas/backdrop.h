// SPDX-License-Identifier: MIT
// Paper with a faint grid of feet or metres that thins as one zooms out.
#pragma once

#include <QPainter>

#include "app/canvas/canvas_look.h"
#include "app/canvas/scene_mapping.h"

namespace tussock {

// Metres between grid lines that stand at least `leastPixels` apart: 1, 5, 10, 50 ... of the unit.
[[nodiscard]] double gridStep(const SceneMapping& mapping, UnitSystem units, double leastPixels);
void paintPaper(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);
// Over the open ground, under everything planted.
void paintGrid(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);

}  // namespace tussock
