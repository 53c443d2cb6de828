// SPDX-License-Identifier: MIT
#include "core/planting/whole_shares.h"

#include <cmath>

namespace tussock {

WholeShares wholeShares(const std::vector<WrittenShare>& written) {
  constexpr double kRounding = 0.005 + 1e-9;
  WholeShares whole;
  double main = 0.0;
  bool open = false;
  for (const WrittenShare& one : written) {
    whole.shares.push_back(one.share);
    whole.sum += one.share;
    if (one.beneath) continue;
    main += one.share;
    open = open || one.share <= 0.0;
  }
  const double beneath = whole.sum - main;
  const bool over = whole.sum > 1.0 + 1e-9;
  const bool under = !open && main > 0.0 && whole.sum < 1.0 - 1e-9;
  whole.proportioned = (over || under) && std::abs(whole.sum - 1.0) > kRounding;
  for (std::size_t i = 0; i < written.size(); ++i)
    if (over)
      whole.shares[i] /= whole.sum;
    else if (under && !written[i].beneath)
      whole.shares[i] *= (1.0 - beneath) / main;
  return whole;
}

}  // namespace tussock
