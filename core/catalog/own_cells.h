// SPDX-License-Identifier: MIT
// The values of a plant that is the user's own alone, by column: looked up where they stand, for
// tables of many thousand plants.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species_row.h"
#include "core/model/own_species.h"

namespace tussock {

class OwnCells {
 public:
  explicit OwnCells(const OwnSpecies& own);  // must live on

  // Without the blanks around it. The genus is the first word of the name where none is given.
  // Sources are not values.
  [[nodiscard]] std::string_view text(std::string_view column) const;
  // Filled ones that a plant table does not have, in the order written.
  [[nodiscard]] const std::vector<std::string_view>& strangeColumns() const { return strange_; }
  // Each value's source as "own", with the keys that it came with: one entry for all values of the
  // same.
  [[nodiscard]] std::vector<FactSource> sources() const;

 private:
  const OwnSpecies& own_;
  // By place among the columns, of several facts of one the last one filled.
  std::array<std::string_view, kPlantColumns.size()> values_{};
  std::vector<std::string_view> strange_;
};

}  // namespace tussock
