// SPDX-License-Identifier: MIT
// A drift of a fill as another species, which stands closer or wider, on its own ground.
#pragma once

#include <optional>

#include "core/model/yard.h"
#include "core/planting/fill_kinds.h"

namespace tussock {

// Takes about as much ground as before: none where the kind's plants do not find room for that, or
// would stand much closer or wider.
[[nodiscard]] std::optional<Drift> regrownAs(const Yard& yard, const Drift& drift,
                                             const FillKind& kind);

}  // namespace tussock
