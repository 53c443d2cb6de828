// SPDX-License-Identifier: MIT
// One check on a yard made for it.
#pragma once

#include <vector>

#include "core/checks/registry.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock::test {

inline std::vector<Finding> found(CheckId id, const YardBuilder& builder,
                                  const SunMap* sun = nullptr) {
  const Yard yard = builder.build();
  const Catalogue facts = tinyCatalogue();
  return runCheck(id, {yard, facts, sun});
}

// The same hours everywhere on 20 x 20 m.
inline SunMap evenSun(double hours) {
  constexpr int kCells = 80;
  SunMap map({{0.0, 0.0}, {20.0, 20.0}}, Length::centimetres(25), kCells, kCells);
  for (int row = 0; row < kCells; ++row)
    for (int column = 0; column < kCells; ++column)
      map.set(column, row, {hours / 2.0, hours / 2.0});
  return map;
}

inline constexpr auto kSquareBed = "POLYGON((0 0, 10 0, 10 10, 0 10, 0 0))";  // 10 x 10 m

}  // namespace tussock::test
