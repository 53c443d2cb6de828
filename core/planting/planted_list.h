// SPDX-License-Identifier: MIT
// What is planted in a bed, as a plant list.
#pragma once

#include <functional>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

// Each species of those drifts of the bed that count, in the order of their ids, with the share and
// the matrix mark that `list` gives it; those it does not name are matrix plants where they are
// planted so. Ground covers and bulbs are among them.
[[nodiscard]] std::vector<ListedSpecies> plantedList(
    const Yard& yard, Id<Bed> bed, const std::function<bool(const Drift&)>& counts,
    const std::vector<ListedSpecies>& list = {});
// The same with what stands there as the shares asked for: of all those plants, in whole per cent
// that come to 100 together, each 1 at least (as long as there are no more than 100 species).
[[nodiscard]] std::vector<ListedSpecies> plantedShares(
    const Yard& yard, Id<Bed> bed, const std::function<bool(const Drift&)>& counts);

// Of the species that stand in the bed before an edit, those that it leaves no plant of.
[[nodiscard]] std::size_t speciesGone(const Yard& before, const Yard& after, Id<Bed> bed);

}  // namespace tussock
