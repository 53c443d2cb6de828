// SPDX-License-Identifier: MIT
// Edits of drifts as change sets. Each plants what fits and says so through `fitted`.
#pragma once

#include <string>

#include "core/catalog/catalogue.h"
#include "core/catalog/plan_codes.h"
#include "core/edit/change.h"
#include "core/planting/grow.h"

namespace tussock {

struct DriftEdit {
  ChangeSet edit;  // empty when nothing could be placed
  Id<Drift> drift;
  int asked = 0;
  int fitted = 0;
};

// Plants a new drift of the species at its usual spacing and layer; takes a plan code if needed.
[[nodiscard]] DriftEdit plantDrift(const Yard& yard, const Species& species,
                                   const GrowRequest& request, IdSource& ids,
                                   StockSize size = StockSize::Plug);
// Moves every plant by the step and keeps the shape; into another bed when its middle lands there.
// Never refused: what it breaks becomes a finding.
[[nodiscard]] DriftEdit moveDrift(const Yard& yard, Id<Drift> drift, Point step);
// Grows or shrinks to `count`: ids that stay are kept, the plants nearest the middle stay.
[[nodiscard]] DriftEdit resizeDrift(const Yard& yard, Id<Drift> drift, int count, IdSource& ids,
                                    CountAs as = CountAs::Odd);
// Turns the plants about the drift's middle, as drawn by hand.
[[nodiscard]] DriftEdit turnDrift(const Yard& yard, Id<Drift> drift, Angle turn);
// Finds places that obey the rules for the drift on the ground that it has, see setOut; ids kept.
// An even count stays: somebody asked for it.
[[nodiscard]] DriftEdit regrowDrift(const Yard& yard, Id<Drift> drift, IdSource& ids);
// Moves some of the drift's plants by the step, as drawn by hand.
[[nodiscard]] DriftEdit movePlants(const Yard& yard, Id<Drift> drift,
                                   const std::vector<Id<Plant>>& plants, Point step);
[[nodiscard]] DriftEdit nudgePlant(const Yard& yard, Id<Drift> drift, Id<Plant> plant, Point to);

// Takes one plant to the nearest place that keeps the rules: beside the others of its drift where
// one of those stands within eight spacings of where it comes back to them, else within eight
// spacings of where it stands; no edit when there is none.
[[nodiscard]] DriftEdit settlePlant(const Yard& yard, Id<Drift> drift, Id<Plant> plant);
// A locked drift takes no edit but this one.
enum class DriftLock { Locked, Free };
[[nodiscard]] DriftEdit lockDrift(const Yard& yard, Id<Drift> drift, DriftLock lock);

[[nodiscard]] Point middleOf(const Drift& drift);
// The soft outline drawn around a drift.
[[nodiscard]] std::vector<Polygon> outlineOf(const Drift& drift);
[[nodiscard]] std::vector<Polygon> outlineOf(const KeptDrift& drift);

}  // namespace tussock
