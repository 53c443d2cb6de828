// SPDX-License-Identifier: MIT
// A large bed in sections: what a change to a drift does is seen near it, and looking at little is
// quick.
#pragma once

#include <vector>

#include "core/model/yard.h"

namespace tussock {

// The drifts in groups that lie together, of up to four dozen each; each drift in one of them.
[[nodiscard]] std::vector<std::vector<Id<Drift>>> sectionsOf(const Yard& yard,
                                                             const std::vector<Id<Drift>>& drifts);

// The yard with no other drifts than those of the section and what stands within `reach` metres of
// them.
[[nodiscard]] Yard aroundSection(const Yard& yard, const std::vector<Id<Drift>>& section,
                                 double reach);

}  // namespace tussock
