// SPDX-License-Identifier: MIT
// How often a bed is planted to keep the best, and for how long at most.
#pragma once

#include <chrono>

#include "core/units/length.h"

namespace tussock {

struct FillTries {
  int planned = 1;
  int most = 1;  // while something is found in the best
  // Of these, as many as bring nothing better one after the other: then what is found is the bed's.
  static constexpr int kPatience = 9;

  // Of all the work, when so many tries are done; parts of one count too.
  [[nodiscard]] double share(double done) const;
};

// A small bed is tried as often as takes a moment, or a few seconds where something is found; in
// one of many thousand plants luck evens out.
[[nodiscard]] FillTries triesFor(double plants);

// The most that a fill takes where nobody says: 20 s, and above 1,500 m² eight more for each 1,000;
// 90 s at most (our own judgement).
[[nodiscard]] std::chrono::milliseconds usualTimeFor(Area bed);

}  // namespace tussock
