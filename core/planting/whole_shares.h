// SPDX-License-Identifier: MIT
// The shares of a plant list as they are taken: of a whole, whatever they come to.
#pragma once

#include <vector>

namespace tussock {

struct WrittenShare {
  double share = 0.0;    // 0 where left open
  bool beneath = false;  // ground covers and bulbs, which without a share come on top of the rest
};

struct WholeShares {
  std::vector<double> shares;  // of the plants, as many as were written
  double sum = 0.0;            // as written
  bool proportioned = false;   // they came to so much more or less that one is to know it
};
// More than the whole is taken in proportion. So is less, where no species is open to take what is
// left: those of the main layer make it up. Half a per cent either way is rounding: three thirds
// are written 33, 33 and 34 %.
[[nodiscard]] WholeShares wholeShares(const std::vector<WrittenShare>& written);

}  // namespace tussock
