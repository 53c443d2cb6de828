// SPDX-License-Identifier: MIT
// How alike two species are to look at and to grow, for putting one in place of another. The points
// are ours (docs/methods-plants.md); they order, and promise nothing.
#pragma once

#include <string>
#include <vector>

#include "core/catalog/species.h"
#include "core/units/measure_text.h"

namespace tussock {

// Each part from 0, nothing alike, to 1, the same.
struct Likeness {
  double height = 0.0;    // the lower design height over the higher
  double form = 0.0;      // half for the habit, half for the flowers' form
  double weeks = 0.0;     // weeks in which both are in flower over those in which either is
  double colour = 0.0;    // by distance in OKLab
  double sun = 0.0;       // classes that both take over those that either takes
  double moisture = 0.0;  // the same of moisture
  double spread = 0.0;    // the smaller spacing over the larger

  [[nodiscard]] double points() const;  // 0 to 100
};
[[nodiscard]] Likeness likenessOf(const Species& a, const Species& b);

// What would be other with `with` in place of `of`, in words; empty when little is.
[[nodiscard]] std::vector<std::string> differencesOf(const Species& of, const Species& with,
                                                     UnitSystem units);

}  // namespace tussock
