// SPDX-License-Identifier: MIT
// The user's own plants that hold in every yard: a plant table in the data folder
// ($XDG_DATA_HOME/tussock/plants.csv, else ~/.local/share/tussock/plants.csv).
#pragma once

#include <QString>
#include <set>
#include <vector>

#include "core/exchange/plant_csv.h"

namespace tussock {

[[nodiscard]] QString personalPlantsPath();
// Whether the path leads to that file, by a link too, and whether or not it is there yet.
[[nodiscard]] bool isPersonalPlants(const QString& path);
// Nothing, without an error, when there is no such file. One that cannot be read is an error.
[[nodiscard]] OwnPlantsReading readPersonalPlants(const Catalogue& published);
// Throws std::runtime_error, saying what is wrong and what to do, where no row of the file could be
// read: to write it anew would lose all.
void expectRewritable(const OwnPlantsReading& reading);
// Lines of the file whose rows cannot be used and are of one of the plants, which come in their
// place.
[[nodiscard]] std::set<std::size_t> rowsReplacedBy(const std::vector<OwnSpecies>& taken,
                                                   const Catalogue& published);
// Puts `plants` in place of those that can be read in the file. Rows that cannot be used stay in
// it, byte for byte, after them, but for those that `taken` come in place of; so do columns that
// are not known. Where a plant goes that has values in these, a copy of the file is kept beside
// first. Throws std::runtime_error.
void savePersonalPlants(const std::vector<OwnSpecies>& plants, const Catalogue& published,
                        const std::vector<OwnSpecies>& taken = {});
// Keeps a copy of the file beside it; gives its path.
QString keepPersonalPlants();

}  // namespace tussock
