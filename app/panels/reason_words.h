// SPDX-License-Identifier: MIT
// Reasons of the core in one line.
#pragma once

#include <QString>
#include <string>
#include <vector>

namespace tussock {

// "the ground is medium; asks for dry"
[[nodiscard]] QString joinedReasons(const std::vector<std::string>& reasons);
// As a sentence without its full stop: "In flower in 4 weeks when little else is; feeds
// caterpillars". Empty for none.
[[nodiscard]] QString reasonWords(const std::vector<std::string>& reasons);

}  // namespace tussock
