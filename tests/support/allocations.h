// SPDX-License-Identifier: MIT
// How often memory was asked for.
#pragma once

#include <cstddef>

namespace tussock::test {

// By operator new, in all threads, since the program began.
[[nodiscard]] std::size_t allocations();
// False where the build's sanitizers have an operator new of their own.
[[nodiscard]] bool countsAllocations();

}  // namespace tussock::test
