// SPDX-License-Identifier: MIT
// A drift that follows a line drawn by hand.
#pragma once

#include "core/planting/edit_drift.h"

namespace tussock {

struct StrokeRequest {
  Polyline line;  // on the plan
  Length width;   // of the drift, from the outer sides of its plants; one spacing at least
};

// Plants the species along the line, in the bed under its first point that is in one: an odd
// number, in one piece, every plant by the rules; as far as the line's free ground hangs together.
// Where plants that stand in the way end it early, `asked` is about what all of the line would
// take. The same line gives the same drift.
[[nodiscard]] DriftEdit plantAlong(const Yard& yard, const Species& species,
                                   const StrokeRequest& request, IdSource& ids,
                                   StockSize size = StockSize::Plug);

}  // namespace tussock
