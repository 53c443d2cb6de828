// SPDX-License-Identifier: MIT
// A yard in which every check finds something, given five hours of sun.
#pragma once

#include "tests/support/run_check.h"

namespace tussock::test {

inline YardBuilder faultyYard() {
  YardBuilder yard;
  yard.threshold("share_min_plants", 30.0);  // of few plants shares are not looked at otherwise
  yard.bed("Walk", kSquareBed).viewing("S");
  yard.drift(kJoePye, row(4, 0.3, {2.0, 2.0}));                  // even, crowded
  yard.drift(kConeflower, row(3, 0.4, {2.0, 2.6}));              // hidden by it
  yard.drift(kBergamot, row(15, 0.4, {1.0, 5.0}));               // one mass
  yard.drift(kBluestem, {{0.05, 8.0}, {3.0, 8.0}, {5.0, 8.0}});  // at the edge, short of sun
  yard.drift(kAster, row(7, 0.4, {2.0, 9.0}));
  yard.drift(kAlexanders, row(3, 0.4, {6.0, 8.0}));
  yard.bed("Corner", "POLYGON((12 0, 18 0, 18 6, 12 6, 12 0))").viewing("all");
  yard.drift(kConeflower, row(5, 0.4, {13.0, 2.0}));
  yard.drift(kAster, row(5, 0.4, {13.0, 4.0}));
  yard.drift(kBlazingStar, row(3, 0.4, {15.0, 3.0}));
  yard.drift("Nusquam ignota", row(3, 0.4, {16.4, 5.0}));  // of no known species
  yard.bed("Nook", "POLYGON((16 5, 20 5, 20 9, 16 9, 16 5))").viewing("all");  // over the corner
  yard.paving("Step", "POLYGON((14 3.8, 14.5 3.8, 14.5 4.2, 14 4.2, 14 3.8))");
  yard.wall("Stub", {{22.0, 3.0}, {22.0, 3.0}}, 0.2);  // of no length
  return yard;
}

}  // namespace tussock::test
