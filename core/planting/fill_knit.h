// SPDX-License-Identifier: MIT
// Drifts that lie past each other: at the end of a strip or in a tip one easily comes to lie beside
// a single other. There the cells around are turned and moved until it lies beside two.
#pragma once

#include "core/planting/fill_cells.h"

namespace tussock {

// Changes the cells and whose the ground is, as long as fewer drifts lie beside less than two
// others then. Looks at beds of some dozens of drifts only: in larger ones hardly any lies so.
void knit(const FillGround& ground, const DriftCells& sharing, std::vector<DriftCell>& cells,
          Owners& owners, Chance& chance, const WorkWatch& watch);

}  // namespace tussock
