// SPDX-License-Identifier: MIT
// What a fill is called, and what is said when it planted nothing.
#pragma once

#include <string>

#include "core/planting/fill.h"
#include "core/planting/fill_list.h"

namespace tussock {

// As the history has it: "Fill Border", "Fill the gaps of Border", "Refill wild bergamot in
// Border".
[[nodiscard]] std::string labelOf(const FillRequest& request, const Bed& bed,
                                  const Catalogue& catalogue);
// Of the whole bed.
[[nodiscard]] std::string noneFits(const Bed& bed, const FillList& list, UnitSystem units);

}  // namespace tussock
