// SPDX-License-Identifier: MIT
// Filling a bed with an eye to the checks: to the limits the yard sets, and with as few findings as
// the plant list allows; what is left is told in words.
#pragma once

#include "core/model/settings.h"
#include "core/planting/fill.h"

namespace tussock {

// The yard's own limits, else the usual ones.
[[nodiscard]] FillLimits fillLimits(const Settings& settings);

// Why a species cannot be planted anew: none of it stands in the bed, or what does is to stay.
// Empty where it can, and where more is asked for than one species.
[[nodiscard]] std::string whyNoRefill(const Yard& yard, const Catalogue& catalogue,
                                      const FillRequest& request);

// As fillBed; limits and judge of the request are set here. The notes of the result also tell what
// the checks still find of the bed, and why; what changes the bed most comes first.
[[nodiscard]] std::optional<FillResult> fillChecked(const Yard& yard, const Catalogue& catalogue,
                                                    const SunMap* sun, FillRequest request,
                                                    IdSource& ids, const std::stop_token& stop = {},
                                                    const FillProgressCall& progress = {});

// What a fill has planted by the rules so far, as the result if it were stopped there and that
// kept: without the score and what the checks find. Nothing while the drifts only grow.
[[nodiscard]] std::optional<FillResult> plantedSoFar(const Yard& yard, const Catalogue& catalogue,
                                                     const FillRequest& request,
                                                     const FillProgress& progress, IdSource ids);

}  // namespace tussock
