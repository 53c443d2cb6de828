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
// Where nothing was planted: in gaps, anew, or in the whole bed.
[[nodiscard]] std::string noneFits(const FillRequest& request, const Bed& bed, const FillList& list,
                                   UnitSystem units);
// Of a species that was planted anew.
[[nodiscard]] std::string fewerAnew(int planted, int asked, const std::string& species);

inline constexpr const char* kTimeUp =
    "The time was up before all was tried. Allow more time for a better filling.";
inline constexpr const char* kStandsSo =
    "The bed stands so already: the same list gives the same arrangement. Ask for another "
    "arrangement to see others.";

}  // namespace tussock
