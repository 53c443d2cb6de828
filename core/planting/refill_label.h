// SPDX-License-Identifier: MIT
// How an edit that plants one species anew is called.
#pragma once

#include <string>

#include "core/planting/fill.h"

namespace tussock {

// "Refill prairie dropseed in South border".
[[nodiscard]] std::string refillLabel(const Yard& yard, const Catalogue& catalogue,
                                      const FillRequest& request);

}  // namespace tussock
