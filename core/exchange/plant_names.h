// SPDX-License-Identifier: MIT
// Names of plants as files of a user's own plants have them.
#pragma once

#include <string>

#include "core/catalog/catalogue.h"
#include "core/model/own_species.h"

namespace tussock {

// The plant of that botanical name or synonym, in whatever case; not by a common name. Null where
// there is none, or more than one.
[[nodiscard]] const Species* plantCalled(const std::string& name, const Catalogue& known);
// Gives the plant that name in place of an older one, and leaves the genus out that only repeats
// the older one.
void takeName(OwnSpecies& own, const std::string& name);

}  // namespace tussock
