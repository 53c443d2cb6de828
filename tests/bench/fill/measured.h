// SPDX-License-Identifier: MIT
// What is measured of one planted bed, and the table over many.
#pragma once

#include <array>
#include <map>
#include <string>
#include <vector>

#include "core/checks/registry.h"
#include "core/planting/measures.h"

namespace tussock::bench {

struct Measured {
  BedMeasures bed;
  double area = 0.0;             // square metres
  double widthInSpacings = 0.0;  // area over the longer side of the bed, in mean spacings
  double rowsShowAbove = 0.0;    // the figure of rowsOf
  bool rowsShow = false;         // on beds with 300 pairs and more
  double score = 0.0, height = 1.0;
  std::map<CheckId, int> findings;

  [[nodiscard]] bool large() const { return area >= 50.0 * bed.meanSpacing * bed.meanSpacing; }
  [[nodiscard]] bool narrow() const { return widthInSpacings < 4.0; }
  [[nodiscard]] int placingRulesBroken() const;
  [[nodiscard]] int otherFindings() const;
};
[[nodiscard]] Measured measured(const Yard& planted, const Catalogue& catalogue, const SunMap* sun,
                                Id<Bed> bed);

struct Way {
  std::string name;
  std::vector<Measured> beds;
};
// A table in Markdown, one column for each way.
[[nodiscard]] std::string tableOf(const std::vector<Way>& ways);

}  // namespace tussock::bench
