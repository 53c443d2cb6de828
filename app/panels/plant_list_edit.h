// SPDX-License-Identifier: MIT
// Edits of a bed's plant list.
#pragma once

#include <string>
#include <vector>

#include "app/document/document.h"

namespace tussock {

// One edit with the label; false when it was not made.
bool writePlantList(Document& document, Id<Bed> bed, std::vector<ListedSpecies> list,
                    const QString& label);
// With its share open; nothing when it is listed already.
void addToPlantList(Document& document, Id<Bed> bed, const std::string& species);
// Makes the list of the species planted in the bed, their shares open, those in a matrix so marked.
void listPlanted(Document& document, Id<Bed> bed);

}  // namespace tussock
