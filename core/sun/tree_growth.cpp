// SPDX-License-Identifier: MIT
#include "core/sun/tree_growth.h"

#include <algorithm>
#include <cmath>

namespace tussock {

Tree grownBy(const Tree& tree, double years) {
  const double gain = tree.growth.metres() * years;
  if (!std::isfinite(gain) || gain <= 0.0 || years <= 0.0 || tree.height <= Length()) return tree;
  Length height = tree.height + Length::metres(gain);
  if (tree.matureHeight) height = std::min(height, std::max(*tree.matureHeight, tree.height));
  const double share = height / tree.height;
  Tree grown = tree;
  grown.height = height;
  grown.crownRadius = tree.crownRadius * share;
  grown.trunkDiameter = tree.trunkDiameter * share;
  return grown;
}

Yard grownBy(const Yard& yard, double years) {
  Yard grown = yard;
  for (const Tree& tree : yard.trees) {
    Tree later = grownBy(tree, years);
    if (!(later == tree)) grown.trees = grown.trees.with(std::move(later));
  }
  return grown;
}

}  // namespace tussock
