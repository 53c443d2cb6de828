// SPDX-License-Identifier: MIT
// Giving a drift another shape where it stands, and the sums behind it: of count, spacing and area
// each follows from the other two.
#pragma once

#include <optional>

#include "core/planting/edit_drift.h"

namespace tussock {

struct DriftShape {
  Pattern pattern = Pattern::Staggered;
  Length spacing;
  int count = 1;  // even only where asked, see CountAs::Asked
  Angle axis;
  double stretch = 3.0;  // length over width, 1 to 10

  bool operator==(const DriftShape&) const = default;
};
[[nodiscard]] DriftShape shapeOf(const Drift& drift);

// Length over width as the drift stands, along the ground: see rectangleOf. Nothing under 5 plants
// and for a matrix, which runs around others.
[[nodiscard]] std::optional<double> standingStretch(const Settings& settings, const Drift& drift);
// That, where it is more than a quarter away from the stretch asked for (our own judgement: drifts
// of few plants come out up to so much otherwise, and look as asked).
[[nodiscard]] std::optional<double> stretchIfOther(const Settings& settings, const Drift& drift);

// Plants the drift anew in this shape: about its middle where axis or stretch is another, else on
// the ground that it has, see setOut; ids that stay are kept. A change of count alone leaves the
// standing plants where they are, see resizeDrift. No edit for locked drifts, for plants that stand
// there already, and where the shape is the drift's own.
[[nodiscard]] DriftEdit reshapeDrift(const Yard& yard, Id<Drift> drift, const DriftShape& shape,
                                     IdSource& ids);

// Along the ground, at the pattern's density: groundPerPlant(pattern, spacing) for each plant.
[[nodiscard]] Area areaFor(Pattern pattern, Length spacing, int count);
// The odd number nearest to what the area holds, 1 at least; 1 for a spacing of nothing.
[[nodiscard]] int countFor(Pattern pattern, Length spacing, Area area);
// Nothing for no plants or no area.
[[nodiscard]] Length spacingFor(Pattern pattern, int count, Area area);

// The shape when one of the three is given another value, so that the others answer: on the same
// ground another spacing takes another count, and another count (as asked, even too) another
// spacing; other ground at the same spacing takes another count. A count that answers is odd,
// unless it comes to the even one that was there.
[[nodiscard]] DriftShape withSpacing(DriftShape shape, Length spacing);
[[nodiscard]] DriftShape withCount(DriftShape shape, int count);
[[nodiscard]] DriftShape onGround(DriftShape shape, Area ground);

}  // namespace tussock
