// SPDX-License-Identifier: MIT
// How many plants of each species a planting may still take until it, its genus or its family is
// over the share it may have.
#pragma once

#include <array>
#include <vector>

#include "core/planting/fill_quota.h"

namespace tussock {

// The number of the group that a kind belongs to: 0 itself, 1 its genus, 2 its family.
[[nodiscard]] std::size_t groupAt(const FillKind& kind, std::size_t number, std::size_t rank);

class ShareCaps {
 public:
  // Limits are widened as far as the list needs; none hold where the quota is not limited.
  ShareCaps(const std::vector<FillKind>& kinds, const StandingPlants& standing, const Quota& quota,
            const FillLimits& limits);

  void add(std::size_t kind, double count);
  // From now on as many as so many plants in all allow, to the last; any number where those are too
  // few for shares to matter.
  void limitBy(double planted);
  // How many more of the kind there may be; below 0 where there are too many.
  [[nodiscard]] double room(std::size_t kind) const;
  // How many more plants of any kind before shares begin to matter.
  [[nodiscard]] double roomForAny() const { return mostPlants_ - planted_; }

 private:
  const std::vector<FillKind>& kinds_;
  bool hold_;
  double standing_;  // plants that stay
  double least_;     // plants from which shares matter
  double mostPlants_, planted_ = 0.0;
  std::array<double, 3> shares_{};  // by rank
  std::array<double, 3> most_{};    // plants, by rank
  std::array<std::vector<double>, 3> sums_;
};

}  // namespace tussock
