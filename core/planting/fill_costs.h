// SPDX-License-Identifier: MIT
// What it costs to have this species here and that one there: the terms of fill_terms.h that
// depend on who grows where.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "core/planting/fill_kinds.h"
#include "core/planting/fill_layout.h"
#include "core/planting/fill_terms.h"

namespace tussock {

using Assignment = std::vector<std::size_t>;  // the kind that grows at each spot
using TermSums = std::array<double, kFillTerms>;

class FillCosts {
 public:
  // The more formal, the more even distances between drifts of one species count.
  FillCosts(const Layout& layout, const std::vector<FillKind>& kinds, WeekSet season,
            const FillLimits& limits, double wildness);

  // Heights are judged by their rank among what is planted.
  void rankHeights(const Assignment& kinds);

  // The weighted cost of what a spot has to do with, but for bloom.
  [[nodiscard]] double around(std::size_t spot, const Assignment& kinds) const;
  // The weighted cost of weeks without flowers, over the parts of the bed.
  [[nodiscard]] double bloomCost(const Assignment& kinds) const;
  // The same for one part of the bed, from the number of drifts in flower each week.
  using Weeks = std::array<std::uint16_t, 52>;
  [[nodiscard]] double bloomCost(const Weeks& flowering) const;
  void addWeeks(Weeks& weeks, std::size_t kind, int step) const;
  [[nodiscard]] WeekSet season() const { return season_; }
  [[nodiscard]] const Layout& layout() const { return layout_; }

  // Each term between 0, nowhere broken, and 1; below 0 where it says nothing of this planting.
  [[nodiscard]] TermSums badness(const Assignment& kinds) const;

  // How much of the rear drift the front one hides, 0 to 1.
  [[nodiscard]] double hidden(const SightLine& line, std::size_t rear, std::size_t front) const;

 private:
  struct Terms {
    double height = 0.0, edge = 0.0, sun = 0.0, moisture = 0.0;
  };
  [[nodiscard]] Terms alone(std::size_t spot, std::size_t kind) const;
  [[nodiscard]] double hiddenCost(const SightLine& line, std::size_t rear, std::size_t front) const;
  [[nodiscard]] double sightCost(std::size_t spot, const Assignment& kinds) const;
  [[nodiscard]] double touchCost(std::size_t spot, const Assignment& kinds) const;
  [[nodiscard]] double repetitionCost(std::size_t spot, const Assignment& kinds) const;
  [[nodiscard]] bool unsupported(std::size_t spot, const Assignment& kinds) const;
  [[nodiscard]] double crowding(std::size_t kind, double metres) const;
  [[nodiscard]] double repeated(const Assignment& kinds) const;
  void addPairs(const Assignment& kinds, TermSums& sums) const;

  const Layout& layout_;
  const std::vector<FillKind>& kinds_;
  WeekSet season_;
  FillLimits limits_;
  double rhythm_;                                // weight of even distances
  double area_ = 0.0;                            // of all spots
  std::vector<double> heightRank_;               // for each kind, 0 lowest to 1
  std::vector<double> ideal_;                    // metres between drifts of each kind
  std::vector<double> alone_;                    // weighted cost of kind at spot
  std::vector<double> clash_, overrun_, apart_;  // for each pair of kinds
};

}  // namespace tussock
