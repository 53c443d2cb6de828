// SPDX-License-Identifier: MIT
#include "tests/support/allocations.h"

#include <atomic>
#include <cstdlib>
#include <new>

namespace {
std::atomic<std::size_t> asked{0};
}

#ifndef __SANITIZE_ADDRESS__
// The other forms of new and delete come down to these.
void* operator new(std::size_t size) {
  asked.fetch_add(1, std::memory_order_relaxed);
  if (void* memory = std::malloc(size == 0 ? 1 : size)) return memory;
  throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
  std::free(memory);
}
void operator delete(void* memory, std::size_t /*size*/) noexcept {
  std::free(memory);
}
#endif

namespace tussock::test {

std::size_t allocations() {
  return asked.load();
}

bool countsAllocations() {
#ifdef __SANITIZE_ADDRESS__
  return false;
#else
  return true;
#endif
}

}  // namespace tussock::test
