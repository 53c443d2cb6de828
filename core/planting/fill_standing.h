// SPDX-License-Identifier: MIT
// What the yard's main layer holds already of the species, genera and families to be planted.
#pragma once

#include "core/catalog/catalogue.h"
#include "core/planting/fill_quota.h"

namespace tussock {

[[nodiscard]] StandingPlants standingIn(const Yard& yard, const Catalogue& catalogue,
                                        const std::vector<FillKind>& kinds);

}  // namespace tussock
