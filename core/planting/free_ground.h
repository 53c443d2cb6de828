// SPDX-License-Identifier: MIT
// How much ground of a bed its main layer may take.
#pragma once

#include "core/model/yard.h"

namespace tussock {

// Square metres along the ground that paving, walls, trunks and stepping places leave of the bed,
// and, where it has a set-back, that plants of `spacing` metres reach from inside of it. Whatever
// grows there.
[[nodiscard]] Area freeGround(const Yard& yard, const Bed& bed, double spacing);
// Square metres that are left beside the main layer too; `flat` is laid flat.
[[nodiscard]] double groundLeft(const Yard& flat, const Bed& bed, double spacing);

}  // namespace tussock
