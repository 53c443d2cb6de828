// SPDX-License-Identifier: MIT
// How many plants a drift is to have. Groups of odd number look less set out (see the sources of
// the check `odd_count`), so what Tussock works out itself is odd; an even number stands only where
// a person asked for just that many.
#pragma once

#include <vector>

#include "core/model/drift.h"

namespace tussock {

enum class CountAs {
  Odd,   // an even count is taken as the odd one below it
  Asked  // an even count is meant: it is planted where all find a place, else an odd number is
};
[[nodiscard]] int countTaken(int count, CountAs as);  // 1 at least

[[nodiscard]] int oddCount(int count);    // the odd number at or below, 1 at least
[[nodiscard]] int oddNear(double count);  // the nearest odd number, 1 at least

// Leaves all places where there are as many as `count`, as countTaken gives it; of fewer the
// largest odd number of them, the first ones.
void keepCount(std::vector<Point>& places, int count);

// Whether people count its plants: those of the ground layer and bulbs are read as a carpet, set by
// the square metre; what stands there already was counted by someone else.
[[nodiscard]] bool isCounted(const Drift& drift);

// The counts a drift steps through: 1, 3, 5, 7, ...; from an even one to the odd ones beside it.
[[nodiscard]] int nextCount(int count);
[[nodiscard]] int previousCount(int count);

}  // namespace tussock
