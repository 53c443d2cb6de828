// SPDX-License-Identifier: MIT
// Another species for one that cannot be had, in the drifts that stand on the plan.
#pragma once

#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/likeness.h"
#include "core/checks/registry.h"
#include "core/edit/change.h"

namespace tussock {

// Plants of one drift before and after.
struct CountChange {
  Id<Drift> drift;
  int before = 0;
  int after = 0;
  bool operator==(const CountChange&) const = default;
};

struct Substitution {
  ChangeSet edit;  // one edit, empty when no drift can take the species
  std::vector<CountChange> drifts;
  int keptAsTheyAre = 0;           // drifts that are locked or stand there already
  int noPlace = 0;                 // plants that the ground comes to and that found no place
  Area groundBefore, groundAfter;  // what those drifts cover at their spacing
};
// Each drift of the species keeps its ground: so many of the other species as that takes at its own
// spacing, an odd number. Ids that stay are kept; the species takes a plan code if needed, and the
// one replaced keeps its own. Bed plant lists name the other species instead.
[[nodiscard]] Substitution substitute(const Yard& yard, std::string_view species,
                                      const Species& with, IdSource& ids);
// "They take 3.1 m² in place of 4.0 m².", for an odd number of plants at another spacing seldom
// comes to the same; empty when both read alike.
[[nodiscard]] std::string groundChangeWords(Area before, Area after, UnitSystem units);

// "As many as find a place; the same ground would come to 4 more."; empty for none.
[[nodiscard]] std::string noPlaceWords(int noPlace);

struct Substitute {
  const Species* species = nullptr;
  double likeness = 0.0;                 // 0 to 100
  std::vector<std::string> differences;  // in words
  std::vector<CountChange> drifts;
  int before = 0, after = 0;             // plants in all
  int noPlace = 0;                       // as of Substitution
  Area groundBefore, groundAfter;        // what they cover at their spacing
  std::vector<Finding> caused;           // findings that the yard has not got now
  std::vector<std::string> causedTexts;  // the same in words
  // Findings that the yard has now and that would be further from what is asked, as they would be.
  std::vector<Finding> worsened;
  std::vector<std::string> worsenedTexts;
};
// The `count` most alike of those that suit every bed concerned, best first. Empty when the
// catalogue does not know the species or no drift of it can be changed. They point into the
// catalogue, which must live on. Runs all checks once for each. Stopped, it gives those done by
// then.
[[nodiscard]] std::vector<Substitute> substitutesFor(const CheckInput& input,
                                                     std::string_view species, std::size_t count,
                                                     const std::stop_token& stop = {});
// The same of one species that was chosen, whether or not it suits the beds. It must not be `of`.
[[nodiscard]] Substitute substituteBy(const CheckInput& input, const Species& of,
                                      const Species& with);

}  // namespace tussock
