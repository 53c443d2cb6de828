// SPDX-License-Identifier: MIT
#include "core/model/cover.h"

#include <algorithm>

namespace tussock {

Cover coverAt(const Yard& yard, Point p) {
  const auto roofed = [p](const Building& b) {
    return !(b.base > Length()) && contains(b.footprint, p);
  };
  if (std::any_of(yard.buildings.begin(), yard.buildings.end(), roofed)) return Cover::Roof;
  const auto stands = [p](const Tree& t) {
    return distance(t.at, p) < t.trunkDiameter.metres() / 2.0;
  };
  if (std::any_of(yard.trees.begin(), yard.trees.end(), stands)) return Cover::Trunk;
  return Cover::Open;
}

}  // namespace tussock
