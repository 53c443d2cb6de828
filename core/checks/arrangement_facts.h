// SPDX-License-Identifier: MIT
// What there is to say of a way of planting a bed, to compare it with another.
#pragma once

#include "core/checks/registry.h"
#include "core/planting/fill_score.h"

namespace tussock {

struct ArrangementFacts {
  int plants = 0, drifts = 0, species = 0;  // of the bed, in all layers
  double taken = 0.0;                       // of the bed's ground, by the main layer, as a share
  FillScore score;
  double wildness = 0.5;  // that it is scored at: the bed's own in that yard
  int findings = 0;       // about the bed or plants in it, those not accepted
};
// Of the bed as it is planted in the yard.
[[nodiscard]] ArrangementFacts arrangementFacts(const CheckInput& input, Id<Bed> bed);
// The yard with the arrangement planted, the bed at the wildness kept with it, which is what it is
// scored at; as it is when there is no such arrangement.
[[nodiscard]] Yard withArrangement(const Yard& yard, Id<Arrangement> arrangement);

// Whether the bed is planted as the arrangement says, where it may be.
[[nodiscard]] bool isPlantedAs(const Yard& yard, Id<Arrangement> arrangement);

struct TermPair {
  FillTerm term;
  double first = 0.0, second = 0.0;  // scores, 0 to 1
};
// The rules that both are judged by and one keeps better, those that weigh most first.
[[nodiscard]] std::vector<TermPair> differingTerms(const FillScore& first, const FillScore& second);

}  // namespace tussock
