// SPDX-License-Identifier: MIT
// Who takes which place, at the least total cost.
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace tussock {

// For each of `rows`, its column (each taken once); columns must be at least as many as rows.
// The Hungarian method with potentials, O(rows² columns) (Kuhn 1955, Munkres 1957).
[[nodiscard]] std::vector<std::size_t> cheapestMatching(
    std::size_t rows, std::size_t columns,
    const std::function<double(std::size_t, std::size_t)>& cost);

}  // namespace tussock
