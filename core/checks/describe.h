// SPDX-License-Identifier: MIT
// A finding in words: what it is, what was measured, what would mend it, where the limit is from.
#pragma once

#include <string>

#include "core/catalog/catalogue.h"
#include "core/checks/finding.h"
#include "core/sun/map.h"

namespace tussock {

struct FindingText {
  std::string title;  // "Hidden from the south"
  std::string text;   // fact, then remedy, in the yard's units
  std::string limit;  // what is asked and the source of it
};
// The yard is the one the finding was made for; what has left it since is named in general words.
// With a sun map the species that are proposed suit the hours of sun.
[[nodiscard]] FindingText describe(const Finding& finding, const Yard& yard, const Catalogue& facts,
                                   const SunMap* sun = nullptr);

}  // namespace tussock
