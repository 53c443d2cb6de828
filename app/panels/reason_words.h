// SPDX-License-Identifier: MIT
// Reasons of the core as one sentence without its full stop.
#pragma once

#include <QString>
#include <string>
#include <vector>

namespace tussock {

// "In flower in 4 weeks when little else is; feeds caterpillars". Empty for none.
[[nodiscard]] QString reasonWords(const std::vector<std::string>& reasons);

}  // namespace tussock
