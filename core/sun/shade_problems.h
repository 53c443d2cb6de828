// SPDX-License-Identifier: MIT
// What is drawn in a way that its shade is missing or doubtful. Maps are computed all the same;
// nothing is changed or left out of the yard.
#pragma once

#include <string>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

struct ShadeProblem {
  ObjectRef about;
  Point at;              // may be not finite
  std::string subject;   // "the building “Barn”"
  std::string trouble;   // what follows it: what it does to the shade, and what to do
  bool asDrawn = false;  // shaded as it was drawn, which may be right
};
// With its place: "The building “Barn” at 3.00 m, 4.00 m has no height and casts no shade. ..."
[[nodiscard]] std::string sentenceOf(const ShadeProblem& problem, UnitSystem units);

// Each trouble once with its first object in full, and the others that have it after it.
[[nodiscard]] std::vector<std::string> sentencesOf(const std::vector<ShadeProblem>& problems,
                                                   UnitSystem units);

// Of buildings, walls and trees: outlines that cross themselves or have no ground; heights, sizes
// and crowns that are none; crowns wider than their tree is high; leaf dates that are one or run
// over the new year north of the equator, or through midsummer south of it.
[[nodiscard]] std::vector<ShadeProblem> solidProblems(const Yard& yard);
// The same, and beds so far apart that the cells of the shared map (see seasonRequest) are over 1
// m.
[[nodiscard]] std::vector<ShadeProblem> shadeProblems(const Yard& yard);

}  // namespace tussock
