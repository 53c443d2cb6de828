// SPDX-License-Identifier: MIT
// Weeks in flower of one's own beside the months of the same row.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/own_species.h"

namespace tussock {

// Adds a sentence for each week that has no day in the month of the same end; the month is that of
// the row, else the published one. `published` may be null; the row must be one that can be used.
void addWeekNotes(const OwnSpecies& own, const Species* published, std::string_view fileName,
                  std::size_t line, std::vector<std::string>& notes);

}  // namespace tussock
