// SPDX-License-Identifier: MIT
// Least squares with bounds (Levenberg 1944, Marquardt 1963), for a few unknowns and functions that
// are smooth only on the whole: derivatives are taken over a given step.
#pragma once

#include <functional>
#include <stop_token>
#include <vector>

namespace tussock {

struct Unknown {
  double start = 0.0;
  double low = 0.0, high = 1.0;
  double step = 0.01;  // over which derivatives are taken
  double scale = 1.0;  // a change by this much costs as much as a residual of `hold`
};
using Residuals = std::function<std::vector<double>(const std::vector<double>&)>;

// The values, within bounds, with the least sum of squared residuals and, weighed by hold squared,
// squared changes from the start in scales. The sum is never more than at the start.
[[nodiscard]] std::vector<double> leastSquares(const std::vector<Unknown>& unknowns, double hold,
                                               const Residuals& residuals, std::stop_token stop);

}  // namespace tussock
