// SPDX-License-Identifier: MIT
// Two pieces of work at the same time, one of them on a thread of its own.
#pragma once

#include <functional>

namespace tussock {

// Returns when both have ended. What either throws goes to the caller; when both do, what `here`
// threw does.
void sideBySide(const std::function<void()>& here, const std::function<void()>& there);

}  // namespace tussock
