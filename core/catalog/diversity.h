// SPDX-License-Identifier: MIT
// Richness and evenness of what is counted or measured by kind.
//
// Shannon (1948): H = -sum p ln p, natural logarithm. Simpson (1949) as 1 - D with D = sum p², and
// as 1/D. Pielou (1966): J = H / ln S. p are shares of the sum over all kinds that are there.
#pragma once

#include <vector>

namespace tussock {

struct Diversity {
  int richness = 0;             // kinds with more than nothing
  double shannon = 0.0;         // 0 and more
  double simpson = 0.0;         // 1 - D, 0 to below 1
  double inverseSimpson = 0.0;  // 1 / D, 0 where there is nothing
  double evenness = 0.0;        // 0 to 1; 1 for a single kind
};
// Amounts below 0 count as 0.
[[nodiscard]] Diversity diversityOf(const std::vector<double>& amounts);

}  // namespace tussock
