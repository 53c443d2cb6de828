// SPDX-License-Identifier: MIT
// How much of a bed's ground a fill has left bare, and what can be done about it.
#pragma once

#include <string>

#include "core/catalog/catalogue.h"
#include "core/planting/fill.h"

namespace tussock {

// Of more than 50 spacings² and less of its ground taken (Σ n s² √3/2, see
// docs/methods-planting.md) a bed has gaps; our own judgement. What paving, trunks and stepping
// places cover is no gap.
inline constexpr double kGroundTaken = 0.93;

// A sentence or two; empty where the plants take the ground, and where one species alone was
// planted anew. The yard is that after the fill.
[[nodiscard]] std::string bareGround(const Yard& planted, const Catalogue& catalogue,
                                     const FillRequest& request, const FillResult& result);

}  // namespace tussock
