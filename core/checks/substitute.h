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
  int withoutPlace = 0;            // drifts in which not one plant finds a place; they stay
  int noPlace = 0;                 // plants that the others' ground comes to, without a place
  Area groundBefore, groundAfter;  // what the drifts that change cover at their spacing
  Area groundWithoutPlace;         // what those in which none finds a place cover
};
// Each drift of the species keeps its ground: so many of the other species as that takes at its own
// spacing, an odd number or just the even one that stands, or as many as find a place by the
// placement rules. One in which not one does stays as it is. Ids that stay are kept; the species
// takes a plan code if needed, and the one replaced keeps its own. Bed plant lists name the other
// species instead, unless a drift stays.
[[nodiscard]] Substitution substitute(const Yard& yard, std::string_view species,
                                      const Species& with, IdSource& ids);
// In the drifts that change.
[[nodiscard]] int plantsBefore(const Substitution& done);
[[nodiscard]] int plantsAfter(const Substitution& done);

// Of the ground that the drifts have, what the other species would not take; 0 to 1. What stays
// with drifts in which it finds no place counts as well, for the species there cannot be had.
[[nodiscard]] double bareShare(const Substitution& done);
// Points taken away when all of the ground would stay bare: half of it bare weighs as much as
// flowers in none of the same weeks. Ours, see docs/methods-plants.md.
inline constexpr double kBareGround = 40.0;
// What the ranking goes by: the likeness, 0 to 100, less what is bare.
[[nodiscard]] double pointsOf(double likeness, double bareShare);

// What a person is told of the ground: "They take 1.7 m² in place of 2.0 m², which leaves 15 % of
// the ground bare.", how many plants find no place and how many drifts stay for that. Empty when
// nothing is other.
[[nodiscard]] std::string groundWords(const Substitution& done, UnitSystem units);

struct Substitute {
  const Species* species = nullptr;
  double likeness = 0.0;                 // 0 to 100
  double points = 0.0;                   // likeness less what would be bare
  std::vector<std::string> differences;  // in words
  Substitution done;                     // as it would be
  std::vector<Finding> caused;           // findings that the yard has not got now
  std::vector<std::string> causedTexts;  // the same in words
  // Findings that the yard has now and that would be further from what is asked, as they would be.
  std::vector<Finding> worsened;
  std::vector<std::string> worsenedTexts;
};
// The `count` of most points among those that suit every bed concerned, best first. Empty when the
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
