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

void inHalves(std::size_t pieces, const std::function<void(Share)>& work) {
  if (std::thread::hardware_concurrency() < 2 || pieces < 2) return work({0, 1});
  sideBySide([&] { work({0, 2}); }, [&] { work({1, 2}); });
}

}  // namespace tussock
