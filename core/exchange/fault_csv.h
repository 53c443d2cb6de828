// SPDX-License-Identifier: MIT
// What is wrong with a plant table, as comma-separated values and as text to be copied.
#pragma once

#include <string>
#include <vector>

#include "core/catalog/catalogue.h"

namespace tussock {

// Columns file, line, column, value and expected; a line of 0 is left empty.
[[nodiscard]] std::string faultsCsv(const std::vector<CatalogueError>& errors);
// A sentence a line, all of them.
[[nodiscard]] std::string faultsText(const std::vector<CatalogueError>& errors);

}  // namespace tussock
