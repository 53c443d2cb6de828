// SPDX-License-Identifier: MIT
// All checks in one table, and running them.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <string_view>
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

struct Survey;
struct SurveyedBed;

// A check may have a part that looks at one bed and nothing but it, the obstacles, the settings and
// the sun (so that its findings can be kept while those stay the same), and a part for the whole
// yard.
struct CheckEntry {
  CheckId id;
  std::string_view title;  // "Spacing between plants"
  std::vector<Finding> (*ofBed)(const Survey&, const SurveyedBed&) = nullptr;
  std::vector<Finding> (*ofYard)(const Survey&) = nullptr;
};
[[nodiscard]] std::span<const CheckEntry> allChecks();

// One check alone, in no particular order.
[[nodiscard]] std::vector<Finding> runCheck(CheckId id, const CheckInput& input);
// Every check: alerts first, then in the order of the table and by subjects. Nothing when stopped.
// Again and again, with little changed between: see kept_findings.h.
[[nodiscard]] std::optional<std::vector<Finding>> runChecks(const CheckInput& input,
                                                            std::stop_token stop = {});
// The acceptance of a finding, or null.
[[nodiscard]] const Acceptance* acceptanceOf(const Yard& yard, const Finding& finding);

}  // namespace tussock
