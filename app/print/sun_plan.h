// SPDX-License-Identifier: MIT
// The yard with its hours of sun, for a picture: hours, the limits of the sun classes, and what
// stands there.
#pragma once

#include "app/canvas/scene_mapping.h"
#include "core/catalog/fit.h"
#include "core/model/yard.h"
#include "core/sun/map.h"

namespace tussock {

// All of the map's ground, the longer side 1400 pixels.
[[nodiscard]] SceneMapping sunPlanMapping(const SunMap& map);
// Where only the beds' ground is known, hours are painted inside their outlines and nowhere else.
enum class SunGround { Whole, Beds };
void paintSunPlan(QPainter& painter, const SceneMapping& mapping, const SunMap& map,
                  const Yard& yard, const SunProfile& classes, SunGround ground);

}  // namespace tussock
