// SPDX-License-Identifier: MIT
#include "core/catalog/plan_codes.h"

#include <algorithm>
#include <vector>

#include "core/catalog/fit.h"

namespace tussock {

namespace {

constexpr std::size_t kLongestCode = 12;  // bytes; labels of longer ones would not fit a sheet

}  // namespace

std::string codeOf(const Yard& yard, std::string_view botanicalName) {
  for (const PlanCode& code : yard.planCodes)
    if (code.species == botanicalName) return code.code;
  return {};
}

void takeCode(Draft& draft, const std::string& botanicalName, IdSource& ids,
              const std::string& wanted) {
  if (!codeOf(draft.yard(), botanicalName).empty()) return;
  std::vector<std::string> taken;
  for (const PlanCode& code : draft.yard().planCodes) taken.push_back(code.code);
  const bool free = !wanted.empty() && wanted.size() <= kLongestCode &&
                    std::find(taken.begin(), taken.end(), wanted) == taken.end();
  draft.put(PlanCode{ids.take<PlanCode>(), botanicalName,
                     free ? wanted : proposeCode(botanicalName, taken)});
}

Yard withCodes(const Yard& yard) {
  Draft draft(yard);
  IdSource ids(largestId(yard) + 1);
  for (const Drift& drift : yard.drifts) takeCode(draft, drift.species, ids);
  return draft.yard();
}

}  // namespace tussock
