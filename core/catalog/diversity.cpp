// SPDX-License-Identifier: MIT
#include "core/catalog/diversity.h"

#include <cmath>

namespace tussock {

Diversity diversityOf(const std::vector<double>& amounts) {
  double sum = 0.0;
  for (const double amount : amounts)
    if (amount > 0.0) sum += amount;
  Diversity result;
  double squares = 0.0;
  for (const double amount : amounts) {
    if (!(amount > 0.0)) continue;
    const double p = amount / sum;
    ++result.richness;
    result.shannon -= p * std::log(p);
    squares += p * p;
  }
  if (result.richness == 0) return result;
  result.simpson = 1.0 - squares;
  result.inverseSimpson = 1.0 / squares;
  result.evenness = result.richness == 1 ? 1.0 : result.shannon / std::log(result.richness);
  return result;
}

}  // namespace tussock
