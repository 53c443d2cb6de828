// SPDX-License-Identifier: MIT
// How well a bed is planted, rule by rule, whoever planted it.
#pragma once

#include <optional>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/planting/fill_layout.h"
#include "core/planting/fill_terms.h"
#include "core/sun/map.h"

namespace tussock {

struct TermScore {
  FillTerm term = FillTerm::Height;
  double weight = 1.0;
  double score = 1.0;  // 0 to 1, 1 where the rule is kept everywhere
};

struct FillScore {
  std::vector<TermScore> terms;  // those that say something about this bed
  double total = 0.0;            // weighted mean, 0 to 1

  [[nodiscard]] std::optional<double> of(FillTerm term) const;
};

// The score of the main layer of a bed as it stands. `sun` may be null: then the sun is left out.
// `wildness` decides what drift size is asked for.
[[nodiscard]] FillScore scoreBed(const Yard& yard, const Catalogue& catalogue, const SunMap* sun,
                                 Id<Bed> bed, double wildness, const FillLimits& limits = {});

// The same again and again for a bed whose drifts change their species only: where they lie to each
// other is worked out once.
class BedScorer {
 public:
  // `limits` and `catalogue` must outlive it.
  BedScorer(const Yard& yard, const Catalogue& catalogue, const SunMap* sun, Id<Bed> bed,
            double wildness, const FillLimits& limits);
  // Of a yard with the same drifts and plants in the bed.
  [[nodiscard]] FillScore score(const Yard& yard) const;
  [[nodiscard]] const Layout& layout() const { return layout_; }  // of the main drifts

 private:
  const Catalogue& catalogue_;
  Id<Bed> bed_;
  double wildness_;
  const FillLimits& limits_;
  Layout layout_;
};

}  // namespace tussock
