// SPDX-License-Identifier: MIT
// Which values of the published table were chosen within a tolerance of their source.
#pragma once

#include <string_view>

namespace tussock {

// How far a value of that column may lie from what its source gives, as resources/plants-sources.md
// has it; empty for a column whose values stand as they were read.
[[nodiscard]] std::string_view toleranceOf(std::string_view column);

}  // namespace tussock
