// SPDX-License-Identifier: MIT
#include "core/planting/fill_words.h"

#include <fmt/format.h>

#include "core/planting/fill_layer.h"

namespace tussock {

std::string labelOf(const FillRequest& request, const Bed& bed, const Catalogue& catalogue) {
  const std::string name = bed.name.empty() ? "the bed" : bed.name;
  switch (request.what) {
    case FillWhat::WholeBed:
      return bed.name.empty() ? "Fill bed" : fmt::format("Fill {}", name);
    case FillWhat::EmptyPart:
      return fmt::format("Fill the gaps of {}", name);
    case FillWhat::OneSpecies: {
      const Species* known = catalogue.find(request.species);
      return fmt::format("Refill {} in {}",
                         known != nullptr ? catalogue.nameApart(*known) : request.species, name);
    }
  }
  return {};
}

std::string noneFits(const Bed& bed, const FillList& list, UnitSystem units) {
  if (bed.setback && !list.main.empty() &&
      bed.setback->metres() > 0.5 * leastSpacing(list.main) + 1e-9)
    return fmt::format(
        "No plant of the list finds room: the bed keeps plants {} from its edges. Lessen that "
        "set-back, widen the bed, or take something out.",
        formatLength(*bed.setback, units));
  return "No plant of the list finds room: each stands half its spacing from the edges. Widen the "
         "bed, take something out, or list plants of small spacing.";
}

}  // namespace tussock
