// SPDX-License-Identifier: MIT
#include "core/geometry/lattice.h"

namespace tussock {

double triangularCount(Area ground, Length spacing) {
  return ground / triangularGround(spacing);
}

double squareCount(Area ground, Length spacing) {
  return ground / (spacing * spacing);
}

}  // namespace tussock
