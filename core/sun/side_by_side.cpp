// SPDX-License-Identifier: MIT
#include "core/sun/side_by_side.h"

#include <exception>
#include <thread>

namespace tussock {

void sideBySide(const std::function<void()>& here, const std::function<void()>& there) {
  std::exception_ptr failure;
  {
    const std::jthread helper([&] {
      try {
        there();
      } catch (...) {
        failure = std::current_exception();
      }
    });
    here();
  }
  if (failure) std::rethrow_exception(failure);
}

}  // namespace tussock
