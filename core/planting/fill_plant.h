// SPDX-License-Identifier: MIT
// Planting the shared ground: so many plants in each drift's cell, evenly, without rows, by the
// placement rules.
#pragma once

#include <functional>
#include <vector>

#include "core/planting/fill_caps.h"
#include "core/planting/fill_cells.h"
#include "core/planting/fill_watch.h"
#include "core/planting/grow.h"

namespace tussock {

struct DriftToPlant {
  double spacing = 0.3;  // metres
  int count = 1;         // odd
  Angle axis;
  std::size_t kind = 0;
};

struct PlantingPlace {
  const Yard& yard;  // without what is taken out: every plant in it is kept
  const Bed& bed;
  Layer layer = Layer::Main;
  const FillGround& ground;
};

using DriftPlaces = std::vector<std::vector<Point>>;

// Called with the share that is done, 0 to 1, and where plants stand by then.
using PlantTold = std::function<void(double, const DriftPlaces&)>;

// Obeys the placement rules: a drift that finds room for fewer has fewer, still odd and in one
// piece, or none; where holes are left it has more, as far as the caps allow, in which the counts
// asked for are counted already.
[[nodiscard]] DriftPlaces plantDrifts(const PlantingPlace& place, const Owners& owners,
                                      const std::vector<DriftToPlant>& drifts,
                                      const ShareCaps& caps, Chance& chance, const WorkWatch& watch,
                                      const PlantTold& told = {});

// Even places in each drift's cell, whatever the rules (centroidal Voronoi cells, Du, Faber and
// Gunzburger 1999).
[[nodiscard]] DriftPlaces evenPlaces(const FillGround& ground, const Owners& owners,
                                     const std::vector<DriftToPlant>& drifts, Chance& chance,
                                     const WorkWatch& watch);

}  // namespace tussock
