// SPDX-License-Identifier: MIT
// The plants of drifts, a row each. A plant's place is its position in the drift's list.
#pragma once

#include <vector>

#include "core/store/statements.h"

namespace tussock {

// Gives each of the drifts (ids ascending) its plants.
void readPlants(SQLite::Database& database, std::vector<Drift>& drifts);

// In two steps, so that a plant can go from one drift to another: all that leave, then all that
// come or change.
void removePlants(Statements& statements, const std::vector<Plant>& before,
                  const std::vector<Plant>& after);
void writePlants(Statements& statements, Id<Drift> drift, const std::vector<Plant>& before,
                 const std::vector<Plant>& after);

}  // namespace tussock
