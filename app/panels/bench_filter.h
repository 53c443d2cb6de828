// SPDX-License-Identifier: MIT
// Which species the bench shows.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/catalog/fit.h"

namespace tussock {

// A chosen class lets through what has any of the chosen ones; an empty set lets all through.
struct BenchFilter {
  std::string words;
  std::set<SunNeed> sun;
  std::set<Moisture> moisture;
  std::set<Habit> habits;
  std::optional<Place> fits;  // only what suits this place
  std::string sunProfile = "usual";
};

[[nodiscard]] std::vector<const Species*> shownSpecies(const Catalogue& facts,
                                                       const BenchFilter& filter);

}  // namespace tussock
