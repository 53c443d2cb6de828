// SPDX-License-Identifier: MIT
// The table of a user's own plants, written anew around all that it holds beside them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/exchange/plant_csv.h"

namespace tussock {

// The plants in place of those of the table `before`, of which `read` is the reading; it must be
// one that can be rewritten. Columns that are none of the plant table, or come twice, stay where
// they are, each cell with its plant. After the plants come the rows of `read.rowsLeft`, and those
// that have nothing but such cells, byte for byte; where the plants fill further columns, an empty
// cell is added to them for each.
[[nodiscard]] std::string rewrittenTable(const std::vector<OwnSpecies>& plants,
                                         std::string_view before, const OwnPlantsReading& read);
// Whether a plant of the table is not among these that has cells in such columns: they would go
// with it.
[[nodiscard]] bool losesOtherCells(const std::vector<OwnSpecies>& plants, std::string_view before,
                                   const OwnPlantsReading& read);

}  // namespace tussock
