// SPDX-License-Identifier: MIT
// Choosing plants: all that is known, filtered, held against a place, in the order wanted.
#pragma once

#include <optional>
#include <vector>

#include "core/catalog/rank.h"

namespace tussock {

// Of what passes the filter: all, what suits the place, or what is left out there. Without a place
// there is nothing to be left out of.
enum class ChoiceOf { All, Suiting, LeftOut };

struct Choice {
  PlantFilter filter;
  std::optional<RankRequest> place;
  ChoiceOf of = ChoiceOf::All;
  // None: what suits a place by fit, and as searched for among equals; else as searched for where
  // words are typed; else by name.
  std::optional<RankOrder> order;
};
// What is left out comes fewest reasons first unless an order is asked for. Points into the
// catalogue, which must live on.
[[nodiscard]] std::vector<Ranked> choose(const Catalogue& catalogue, const Choice& choice);

}  // namespace tussock
