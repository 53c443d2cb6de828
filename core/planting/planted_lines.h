// SPDX-License-Identifier: MIT
// What a fill has planted, species by species.
#pragma once

#include <string>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/planting/fill.h"

namespace tussock {

struct PlantedLine {
  Layer layer = Layer::Main;
  std::string botanicalName;
  std::string commonName;  // empty when the catalogue does not know the species
  std::size_t plants = 0, drifts = 0;
};
// By layer, those with most plants first. The yard is that after the fill; what was kept of the bed
// is left out, what was to be planted and stood there so already is not.
[[nodiscard]] std::vector<PlantedLine> plantedLines(const Yard& after, const Catalogue& catalogue,
                                                    const FillRequest& request,
                                                    const FillResult& result);

}  // namespace tussock
