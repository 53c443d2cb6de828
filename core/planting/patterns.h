// SPDX-License-Identifier: MIT
// Where plants go in the patterns other than the loose staggered one. Each returns `standing`,
// which keeps its places, and more up to request.count, the nearest in the figure's distance first.
// Request, figure and places are measured on the ground, see Ground; the request has its axis.
#pragma once

#include <vector>

#include "core/planting/front.h"

namespace tussock {

// Single accents stand this many spacings apart or more: well clear of a drift's touch (our own
// judgement).
inline constexpr double kAccentsApart = 3.0;

[[nodiscard]] constexpr bool isStrict(Pattern pattern) {
  return pattern == Pattern::Triangular || pattern == Pattern::Square;
}
// Whether plants of the pattern hang together as one drift.
[[nodiscard]] constexpr bool isOnePiece(Pattern pattern) {
  return pattern != Pattern::Single && pattern != Pattern::Matrix;
}

// A strict lattice along the axis, in one piece: a whole spacing between plants, none missing.
[[nodiscard]] std::vector<Point> strictPlaces(const Ground& ground, const GrowRequest& request,
                                              const std::vector<Point>& standing,
                                              const DriftFigure& figure);
// Plants each by itself.
[[nodiscard]] std::vector<Point> singlePlaces(const Ground& ground, const GrowRequest& request,
                                              const std::vector<Point>& standing,
                                              const DriftFigure& figure);
// What is left free between the drifts of the bed, in as many pieces as it has.
[[nodiscard]] std::vector<Point> matrixPlaces(const Ground& ground, const GrowRequest& request,
                                              const std::vector<Point>& standing);

}  // namespace tussock
