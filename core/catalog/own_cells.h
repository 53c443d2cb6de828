// SPDX-License-Identifier: MIT
// The values of a plant that is the user's own alone, by column: looked up where they stand, for
// tables of many thousand plants.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/own_species.h"

namespace tussock {

class OwnCells {
 public:
  explicit OwnCells(const OwnSpecies& own);  // must live on

  // The genus is the first word of the name where none is given. Sources are not values.
  [[nodiscard]] std::string_view text(std::string_view column) const;
  [[nodiscard]] std::vector<std::string_view> columns() const;  // of the filled ones, in order
  // Each value's source as "own", with the keys that it came with.
  void addSources(std::vector<FactSource>& sources) const;

 private:
  const OwnSpecies& own_;
  std::vector<const OwnFact*> facts_;  // filled, by column, each once: the last one written
};

}  // namespace tussock
