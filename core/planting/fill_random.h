// SPDX-License-Identifier: MIT
// Chance that is the same on every machine: the standard distributions differ between libraries.
#pragma once

#include <cstddef>
#include <random>
#include <utility>

namespace tussock {

class Chance {
 public:
  explicit Chance(unsigned seed) : engine_(seed) {}
  // 0 up to, not including, 1.
  double share() { return static_cast<double>(engine_()) / 4294967296.0; }
  double between(double low, double high) { return low + (high - low) * share(); }
  std::size_t below(std::size_t count) { return engine_() % count; }
  template <class T>
  void shuffle(T& items) {
    for (std::size_t i = items.size(); i > 1; --i) std::swap(items[i - 1], items[below(i)]);
  }

 private:
  std::mt19937 engine_;
};

}  // namespace tussock
