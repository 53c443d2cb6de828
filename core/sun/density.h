// SPDX-License-Identifier: MIT
// How dense shadows are, in numbers that add up where shadows overlap.
#pragma once

#include <array>
#include <cstdint>

namespace tussock {

// The binary logarithm of the openness, times -2^40: whole, so that sums are exact and the same in
// any order, and what is added can be taken away.
using Density = std::int64_t;
// Lets nothing through, as does anything more. As much as 64 halvings: some 100,000 shadows can
// overlap before a sum would not fit.
inline constexpr Density kOpaque = Density{1} << 46;

[[nodiscard]] Density densityOf(double openness);  // from 0, where all gets through, to kOpaque

// The same, with the last kept.
class Densities {
 public:
  Density of(double openness) {
    if (openness <= 0.0) return kOpaque;
    if (openness != openness_) openness_ = openness, density_ = densityOf(openness);
    return density_;
  }

 private:
  double openness_ = 1.0;
  Density density_ = 0;
};

// Share of light that a density keeps off, from 0 to 1. Few densities make up a yard's, so what was
// worked out is kept.
class Keeping {
 public:
  double off(Density density) {
    Kept& kept = kept_[(static_cast<std::uint64_t>(density) * kScatter) >> 56U];
    if (kept.density != density) kept = {density, lost(density)};
    return kept.lost;
  }

 private:
  struct Kept {
    Density density = 0;
    double lost = 0.0;
  };
  static constexpr std::uint64_t kScatter = 0x9E3779B97F4A7C15U;  // 2^64 over the golden ratio
  static double lost(Density density);

  std::array<Kept, 256> kept_{};
};

}  // namespace tussock
