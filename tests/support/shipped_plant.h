// SPDX-License-Identifier: MIT
// A species of the plant table that comes with the program.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

#include "core/catalog/catalogue.h"

namespace tussock::test {

// Throws std::invalid_argument where there is none of that name.
[[nodiscard]] inline const Species& shippedPlant(std::string_view name) {
  static const Catalogue facts = readShippedCatalogue().catalogue;
  const Species* species = facts.find(name);
  if (species == nullptr) throw std::invalid_argument(std::string(name));
  return *species;
}

}  // namespace tussock::test
