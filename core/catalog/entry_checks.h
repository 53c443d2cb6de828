// SPDX-License-Identifier: MIT
// What a reader of plant tables can take and a person still cannot have meant: a genus alone for a
// name, another plant's symbol, a family that there is none of or that its genus is not in, a state
// that there is none of. Asked when a value is entered or brought in, never of what was kept
// before, which must open as it was.
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/own_plants.h"

namespace tussock {

// Whether a family can be held against what is published of the genus.
[[nodiscard]] bool isGenusOf(const Catalogue& published, std::string_view genus);

class EntryChecks {
 public:
  // Works through all plants of the layers once.
  explicit EntryChecks(const PlantLayers& layers);

  // `title` and `line` say where it was entered; line 0 for no file.
  [[nodiscard]] std::vector<CatalogueError> of(const OwnSpecies& entered, std::string_view title,
                                               std::size_t line = 0) const;
  // isGenusOf, of a plant's name, for many.
  [[nodiscard]] bool knowsGenusOf(std::string_view name) const;
  // What comes after is judged with this one there.
  void take(const OwnSpecies& entered);

 private:
  [[nodiscard]] std::string againstSymbol(const std::string& symbol, std::string_view name) const;
  [[nodiscard]] std::string againstFamily(const std::string& family, std::string_view name) const;
  [[nodiscard]] std::string againstSynonyms(const std::string& cell, std::string_view name) const;
  [[nodiscard]] std::string against(const OwnFact& fact, std::string_view name) const;

  std::map<std::string, std::set<std::string>, std::less<>> familiesByGenus_;  // as published
  std::set<std::string, std::less<>> names_;
  std::map<std::string, std::string, std::less<>> nameBySymbol_;
};

}  // namespace tussock
