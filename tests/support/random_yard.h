// SPDX-License-Identifier: MIT
// Yards with every kind of object and every field set at random, for properties that must hold of
// any yard. Shapes are valid, numbers finite; the same seed gives the same yard.
#pragma once

#include <random>

#include "core/edit/change.h"

namespace tussock::test {

using Random = std::mt19937_64;

[[nodiscard]] Yard randomYard(Random& random);
// Some objects changed, some added, some removed; drifts keep some plants, move, lose and gain
// some.
[[nodiscard]] Yard randomNext(const Yard& yard, Random& random);
// For each photo of a random yard, the bytes whose hash it names.
[[nodiscard]] std::string randomPicture(int number);

}  // namespace tussock::test
