// SPDX-License-Identifier: MIT
// The rhythm of a formal bed: one low species comes again in groups of one size, a group in each
// even part of the bed (repetition at even intervals is common practice in formal borders; that it
// is a low one, which shows at the front and hides nothing, and how many groups is our own
// judgement, tried on drawn beds).
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "core/planting/fill_ground.h"
#include "core/planting/fill_quota.h"

namespace tussock {

// Wilder beds have none.
inline constexpr double kLeastWildRhythm = 0.3;

// The kind that comes again: of the lower third of the kinds, of those that disease spares and that
// have plants enough for three groups of three, the one whose plants are broadest. None in wilder
// beds, nor of few kinds or in beds so large that nearly all come again: there what they are apart
// counts.
[[nodiscard]] std::optional<std::size_t> rhythmKind(const DriftsRequest& request);
// An odd number of groups of one size, some `usual` groups or more, for so many plants.
[[nodiscard]] std::vector<PlannedDrift> groupsInRhythm(std::size_t kind, double plants, int usual);

struct RhythmPlaces {
  const FillGround& ground;
  const std::vector<Point>& middles;         // of the drifts, in any order
  const std::vector<PlannedDrift>& planned;  // in any order
  std::size_t kind = 0;                      // that comes again
};
// Of `drifts`, the planned drift at each middle: gives those of the kind places that lie evenly
// over the ground, about as deep in it as they are now, and the others what is left, in the order
// of their depth. Tells the places of the kind.
[[nodiscard]] std::set<std::size_t> setRhythm(const RhythmPlaces& places,
                                              std::vector<std::size_t>& drifts, Chance& chance);

}  // namespace tussock
