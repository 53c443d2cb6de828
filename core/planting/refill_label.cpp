// SPDX-License-Identifier: MIT
#include "core/planting/refill_label.h"

#include <fmt/format.h>

namespace tussock {

std::string refillLabel(const Yard& yard, const Catalogue& catalogue, const FillRequest& request) {
  const Bed* bed = yard.beds.find(request.bed);
  const Species* known = catalogue.find(request.species);
  const std::string name = known != nullptr ? catalogue.nameApart(*known) : request.species;
  return bed == nullptr || bed->name.empty() ? fmt::format("Refill {}", name)
                                             : fmt::format("Refill {} in {}", name, bed->name);
}

}  // namespace tussock
