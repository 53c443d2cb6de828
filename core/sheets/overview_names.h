// SPDX-License-Identifier: MIT
// The names of what lies on a site, on the overview sheet. One that finds no place has a number
// there and stands in a list.
#pragma once

#include <string>
#include <vector>

#include "core/sheets/labelling.h"
#include "core/sheets/layout.h"

namespace tussock {

// The sheet's scale and window are set. `marks` are centres that no text may cover. Gives the names
// that have a number instead, the first for number 1.
[[nodiscard]] std::vector<std::string> addNames(Sheet& sheet, const Yard& yard,
                                                const std::vector<PaperPoint>& marks,
                                                LabelMargin margin);
// "1 Hose bib · 2 Rain barrel"; empty without names.
[[nodiscard]] std::string listInLine(const std::vector<std::string>& names);
// The list on pages of its own.
[[nodiscard]] std::vector<Sheet> listPages(const PlanSource& source, const std::string& title,
                                           const std::vector<std::string>& names,
                                           Orientation orientation);

}  // namespace tussock
