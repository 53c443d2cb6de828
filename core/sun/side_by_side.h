// SPDX-License-Identifier: MIT
// Two pieces of work at the same time, one of them on a thread of its own.
#pragma once

#include <cstddef>
#include <functional>

namespace tussock {

// Returns when both have ended. What either throws goes to the caller; when both do, what `here`
// threw does.
void sideBySide(const std::function<void()>& here, const std::function<void()>& there);

// Every `stride`th piece from `first`.
struct Share {
  std::size_t first = 0, stride = 1;
};
// Gives every second of the pieces to one thread and the others to another, or all of them to one
// where there is only one core or only one piece. The caller's own thread has the first piece.
void inHalves(std::size_t pieces, const std::function<void(Share)>& work);

}  // namespace tussock
