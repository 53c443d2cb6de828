// SPDX-License-Identifier: MIT
// What stands on a point of the ground, so that hours of sun mean nothing there.
#pragma once

#include "core/model/yard.h"

namespace tussock {

enum class Cover { Open, Roof, Trunk };
// A building that stands on the ground covers its footprint; light passes below one on posts. A
// trunk covers a disc of its diameter.
[[nodiscard]] Cover coverAt(const Yard& yard, Point p);

}  // namespace tussock
