// SPDX-License-Identifier: MIT
// A finding in words: what it is, what was measured, what would mend it, where the limit is from.
#pragma once

#include <string>

#include "core/catalog/catalogue.h"
#include "core/checks/finding.h"

namespace tussock {

struct FindingText {
  std::string title;  // "Hidden from the south"
  std::string text;   // fact, then remedy, in the yard's units
  std::string limit;  // what is asked and the source of it
};
[[nodiscard]] FindingText describe(const Finding& finding, const Yard& yard,
                                   const Catalogue& facts);

}  // namespace tussock
