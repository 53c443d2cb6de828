// SPDX-License-Identifier: MIT
// The user's own plants that hold in every yard: a plant table in the data folder
// ($XDG_DATA_HOME/tussock/plants.csv, else ~/.local/share/tussock/plants.csv).
#pragma once

#include <QString>
#include <vector>

#include "core/exchange/plant_csv.h"

namespace tussock {

[[nodiscard]] QString personalPlantsPath();
// Nothing, without an error, when there is no such file. One that cannot be read is an error.
[[nodiscard]] OwnPlantsReading readPersonalPlants(const Catalogue& published);
// Throws std::runtime_error, saying what is wrong and what to do, unless all of the file was read:
// to write it anew would lose the rest.
void expectReadWhole(const OwnPlantsReading& reading);
// Puts `plants` in place of the file, if all of that can be read. Throws std::runtime_error.
void savePersonalPlants(const std::vector<OwnSpecies>& plants, const Catalogue& published);
// Keeps a copy of the file beside it; gives its path.
QString keepPersonalPlants();

}  // namespace tussock
