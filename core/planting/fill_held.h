// SPDX-License-Identifier: MIT
// What a planting holds on to while its drifts change species: the ground that is taken and the
// shares that were asked for.
#pragma once

#include <vector>

#include "core/model/yard.h"
#include "core/planting/fill_kinds.h"

namespace tussock {

class HeldPlanting {
 public:
  // Holds to how the yard's drifts `mine` stand now. Up to so many square metres may fall bare.
  // With `keepAll` no kind may come to nearly nothing.
  HeldPlanting(const std::vector<FillKind>& kinds, const std::vector<Id<Drift>>& mine,
               const Yard& yard, double spareGround, bool keepAll);

  // Whether a change leaves the ground taken, and, of each kind whose share was asked for, as many
  // plants, give or take two in a hundred of all; of the others half as many, where all are kept,
  // and no more of a wide one than mostSharesOf.
  [[nodiscard]] bool keptBy(const Yard& next) const;

 private:
  [[nodiscard]] double groundOf(const Yard& yard) const;
  [[nodiscard]] std::vector<double> countsIn(const Yard& yard) const;
  [[nodiscard]] bool keepsShares(const Yard& next) const;

  const std::vector<FillKind>& kinds_;
  const std::vector<Id<Drift>>& mine_;
  double leastGround_;  // square metres
  bool keepAll_;
  std::vector<double> counts_;  // plants of each kind, then all
  std::vector<double> mostShares_;
};

}  // namespace tussock
