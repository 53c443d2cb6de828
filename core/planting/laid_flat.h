// SPDX-License-Identifier: MIT
// A sloping yard as if its ground were laid flat: what plants keep apart by is measured there.
#pragma once

#include "core/model/yard.h"
#include "core/planting/slope.h"

namespace tussock {

// Beds, patches, plants and whatever keeps plants off in the coordinates of Slope::onGround, the
// slope itself taken away; the same yard where the ground is level. Thick and round things count
// as thick as they are along their longer way. For placing only: heights, shade and the sheets
// belong to the plan.
[[nodiscard]] Yard laidFlat(const Yard& yard);

}  // namespace tussock
