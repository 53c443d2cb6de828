// SPDX-License-Identifier: MIT
// A drift of a vast planting while it grows: a spot of its colour for each plant, and no outline,
// which would take longer to find for all drifts than to plant them.
#pragma once

#include <memory>

#include "app/canvas/item.h"
#include "core/model/drift.h"

namespace tussock {

[[nodiscard]] std::unique_ptr<Item> makeDriftSketch(const Drift& drift);

}  // namespace tussock
