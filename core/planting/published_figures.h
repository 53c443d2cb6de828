// SPDX-License-Identifier: MIT
// What a bed measures beside figures that others have published. Reported, not judged: their
// authors disagree, and none wrote of every bed.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"

namespace tussock {

struct PublishedFigure {
  std::string_view title;
  double measured = 0.0;
  double low = 0.0;
  double high = 0.0;  // as low where only a least figure is given
  std::string_view source;
  std::string reason = {};  // why it is outside that, where the bed itself says so

  [[nodiscard]] bool below() const { return measured < low - 1e-9; }
  [[nodiscard]] bool above() const { return high > low && measured > high + 1e-9; }
  [[nodiscard]] bool within() const { return !below() && !above(); }
  // "below" or "above", empty within.
  [[nodiscard]] std::string_view outside() const;
  // "4 to 9", or "8 and more".
  [[nodiscard]] std::string range() const;
};

// "2.8, below the published 4 to 9; here its plants stand 60 cm apart on average": without title
// and source.
[[nodiscard]] std::string besidePublished(const PublishedFigure& figure);

// Of a bed with plants: density by layer in plants a square metre or square yard, share of small
// drifts that are odd, width of the drifts that show flowers in metres or feet, plants of each such
// species. What was published in other units than the yard's is converted. Figures that say nothing
// of this bed are left out.
[[nodiscard]] std::vector<PublishedFigure> publishedFigures(const Yard& yard,
                                                            const Catalogue& catalogue,
                                                            Id<Bed> bed);

}  // namespace tussock
