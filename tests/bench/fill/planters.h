// SPDX-License-Identifier: MIT
// Three ways of planting a bed, to be measured side by side: the program's own, and two plain ones
// that live here only. All three plant the same species and keep set-back and least distance.
#pragma once

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/sun/map.h"

namespace tussock::bench {

struct PlantingJob {
  const Yard& yard;
  const Catalogue& catalogue;
  const SunMap* sun = nullptr;
  Id<Bed> bed;
  std::vector<const Species*> species;  // of the main layer
  unsigned seed = 1;
};

// Points as dense as Poisson-disc sampling makes them (Bridson, Fast Poisson disk sampling in
// arbitrary dimensions, 2007), each of a species dealt at random. Plants of one species that touch
// are one drift.
[[nodiscard]] Yard plantedByPoissonDisc(const PlantingJob& job);

// Cells of a weighted Voronoi diagram (power diagram, Aurenhammer 1987) around random middles, one
// species dealt to each at random, planted in triangular rows.
[[nodiscard]] Yard plantedByVoronoi(const PlantingJob& job);

}  // namespace tussock::bench
