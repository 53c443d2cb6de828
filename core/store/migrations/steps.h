// SPDX-License-Identifier: MIT
// The statements of each step, by what it brings.
#pragma once

namespace tussock {

// To version 2: whether deer are about the yard; in older files they are not.
[[nodiscard]] const char* deerStep();

}  // namespace tussock
