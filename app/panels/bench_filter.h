// SPDX-License-Identifier: MIT
// Which species the bench shows.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/catalog/rank.h"

namespace tussock {

// A chosen class lets through what has any of the chosen ones; an empty set lets all through.
struct BenchFilter {
  std::string words;
  std::set<SunNeed> sun;
  std::set<Moisture> moisture;
  std::set<Habit> habits;
  std::optional<RankRequest> fits;  // only what suits this place, best first unless words are typed
};

[[nodiscard]] std::vector<const Species*> shownSpecies(const Catalogue& facts,
                                                       const BenchFilter& filter);
// Of those that the filter would show but for their place, up to `count` with the reasons.
[[nodiscard]] std::vector<Ranked> leftOut(const Catalogue& facts, const BenchFilter& filter,
                                          std::size_t count);

}  // namespace tussock
