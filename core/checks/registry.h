// SPDX-License-Identifier: MIT
// All checks in one table, and running them.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/checks/finding.h"
#include "core/sun/map.h"

namespace tussock {

// What a check may look at. `sun` may be null: then checks that need it say nothing.
struct CheckInput {
  const Yard& yard;
  const Catalogue& facts;
  const SunMap* sun = nullptr;
};

struct CheckEntry {
  CheckId id;
  std::string_view title;  // "Spacing between plants"
  std::vector<Finding> (*run)(const CheckInput&);
};
[[nodiscard]] std::span<const CheckEntry> allChecks();

// Every check, alerts first, then by key. Nothing when stopped.
[[nodiscard]] std::optional<std::vector<Finding>> runChecks(const CheckInput& input,
                                                            std::stop_token stop = {});
// The acceptance of a finding, or null.
[[nodiscard]] const Acceptance* acceptanceOf(const Yard& yard, const Finding& finding);

}  // namespace tussock
