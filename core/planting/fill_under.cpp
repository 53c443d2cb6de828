// SPDX-License-Identifier: MIT
#include "core/planting/fill_under.h"

#include <algorithm>

namespace tussock {

namespace {

double sharesOf(const std::vector<FillKind>& kinds) {
  double sum = 0.0;
  for (const FillKind& kind : kinds) sum += kind.share;
  return sum;
}

}  // namespace

double plantsUnder(const FillList& list, Layer layer, double main) {
  constexpr double kCarpets = 0.25, kClumps = 0.15;  // plants to one of the main layer
  constexpr double kLeastMain = 0.1;
  const bool bulbs = layer == Layer::Bulbs;
  const double ground = sharesOf(list.ground), clumps = sharesOf(list.bulbs);
  const double asked = bulbs ? clumps : ground;
  if (asked <= 0.0) return (bulbs ? kClumps : kCarpets) * main;
  return asked * main / std::max(kLeastMain, 1.0 - ground - clumps);
}

std::map<std::string, double> plantsOfEach(const std::vector<FillKind>& kinds, double plants) {
  constexpr double kGroup = 3.0, kLeast = 1.0;
  const double asked = sharesOf(kinds);
  std::map<std::string, double> each;
  for (const FillKind& kind : kinds) {
    double& own = each[kind.species->botanicalName];
    if (asked <= 0.0)
      own = std::max(kGroup, plants / static_cast<double>(kinds.size()));
    else
      own = kind.share > 0.0 ? std::max(kLeast, plants * kind.share / asked) : kGroup;
  }
  return each;
}

}  // namespace tussock
