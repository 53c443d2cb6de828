// SPDX-License-Identifier: MIT
// A bed filled as the window and the command line do it, for tests to look at.
#pragma once

#include <string_view>
#include <vector>

#include "core/checks/checked_fill.h"
#include "tests/support/yard_builder.h"

namespace tussock::test {

[[nodiscard]] const Catalogue& shippedFacts();

struct Filled {
  Yard before, after;
  FillResult result;
  Catalogue facts;

  // Placing rules and odd counts that the checks find broken.
  [[nodiscard]] int broken() const;
};

// The first bed of the yard.
[[nodiscard]] Filled filled(const Yard& yard, FillRequest request,
                            const Catalogue& facts = shippedFacts());
[[nodiscard]] Filled filledBed(std::string_view outline, std::vector<ListedSpecies> plants = {});

}  // namespace tussock::test
