// SPDX-License-Identifier: MIT
// Yards that are hard to put on paper.
#pragma once

#include <string>
#include <vector>

#include "core/model/yard.h"

namespace tussock::test {

struct SpecialYard {
  std::string name;
  Yard yard;
};
// Empty, without names, crowded with beds, drifts or named trees, with very long names, in metres,
// south of the equator, a bed too narrow for its labels.
[[nodiscard]] std::vector<SpecialYard> specialYards();

[[nodiscard]] Yard inMetres(const Yard& yard);
[[nodiscard]] Yard fortyBeds();
[[nodiscard]] Yard crowdedSite();  // 60 named trees within 6 m x 5 m
[[nodiscard]] Yard longNames();

}  // namespace tussock::test
