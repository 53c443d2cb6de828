// SPDX-License-Identifier: MIT
// What of a kept drift finds room beside drifts that stay.
#pragma once

#include <vector>

#include "core/model/yard.h"

namespace tussock {

// Its places that keep the least distance from the plants of `staying`, as many as are one piece
// and an odd number where its pattern asks for one piece; none that stands too near.
[[nodiscard]] std::vector<Point> roomBeside(const Settings& settings, const KeptDrift& kept,
                                            const std::vector<const Drift*>& staying);

}  // namespace tussock
