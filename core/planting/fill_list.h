// SPDX-License-Identifier: MIT
// The plant list of a fill: what is asked for, less what cannot grow here, or a proposal.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/planting/fill.h"
#include "core/planting/fill_kinds.h"

namespace tussock {

struct FillList {
  std::vector<FillKind> main, ground, bulbs;
  std::vector<ListedSpecies> plants;
  std::set<std::string> suiting;   // of them, species that find a place they like
  std::vector<std::string> notes;  // what was left out and why
  bool proposed = false;
};

struct ListRequest {
  const Yard& yard;  // without what is taken out, laid flat: ground counts, not plan area
  const Catalogue& catalogue;
  FillSun sun;
  const Bed& bed;
  double wildness = 0.5;
  const FillRequest& fill;
};
[[nodiscard]] FillList listFor(const ListRequest& request);

}  // namespace tussock
