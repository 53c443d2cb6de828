// SPDX-License-Identifier: MIT
#include "core/planting/fill_words.h"

#include <fmt/format.h>

#include "core/planting/fill_layer.h"

namespace tussock {

namespace {

std::string noneInWholeBed(const Bed& bed, const FillList& list, UnitSystem units) {
  if (bed.setback && !list.main.empty() &&
      bed.setback->metres() > 0.5 * leastSpacing(list.main) + 1e-9)
    return fmt::format(
        "No plant of the list finds room: the bed keeps plants {} from its edges. Lessen that "
        "set-back, widen the bed, or take something out.",
        formatLength(*bed.setback, units));
  return "No plant of the list finds room: each stands half its spacing from the edges. Widen the "
         "bed, take something out, or list plants of small spacing.";
}

}  // namespace

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

std::string noneFits(const FillRequest& request, const Bed& bed, const FillList& list,
                     UnitSystem units) {
  switch (request.what) {
    case FillWhat::EmptyPart:
      return "No plant of the list finds room in the gaps by the rules.";
    case FillWhat::OneSpecies:
      return fmt::format(
          "{} finds no room beside what stands in the bed. Take something out, or fill the whole "
          "bed anew.",
          request.species);
    case FillWhat::WholeBed:
      return noneInWholeBed(bed, list, units);
  }
  return {};
}

std::string fewerAnew(int planted, int asked, const std::string& species) {
  return fmt::format(
      "{} of {} plants of {} find room where they stood by the rules. Take something out beside "
      "them, or fill the whole bed anew.",
      planted, asked, species);
}

}  // namespace tussock
