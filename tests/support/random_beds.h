// SPDX-License-Identifier: MIT
// Beds of many shapes and sizes to be filled, the same for a seed on every machine.
#pragma once

#include <string_view>

#include "core/model/yard.h"

namespace tussock::test {

enum class BedShape { Convex, L, Kidney, Ring, Strip, Triangle };
inline constexpr int kBedShapes = 6;
[[nodiscard]] std::string_view nameOf(BedShape shape);

struct RandomBed {
  Yard yard;
  Id<Bed> bed;
  BedShape shape = BedShape::Convex;
};
// 3 to 400 square metres (a strip 3 to 25, being a metre wide), looked at from one or two sides or
// all round; a ring lies around a tree. One shape after the other.
[[nodiscard]] RandomBed randomBed(unsigned seed);
// The same beds looked at from two opposite sides or, one row of shapes in three, from four.
[[nodiscard]] RandomBed randomBedSeenAcross(unsigned seed);

}  // namespace tussock::test
