// SPDX-License-Identifier: MIT
#include "core/catalog/growth.h"

#include <algorithm>
#include <array>

namespace tussock {

namespace {

using Shares = std::array<double, 3>;  // years 1 to 3, from a plug

Shares sharesOf(const Species& species) {
  if (species.habit == Habit::Shrub) return {0.25, 0.4, 0.55};
  const bool fast = species.spreadWay == SpreadWay::RhizomeFast ||
                    species.spreadWay == SpreadWay::SelfSeedsFast ||
                    species.lifeSpan == LifeSpan::ShortLived;
  if (species.habit == Habit::Fern) return {0.35, 0.55, 0.8};
  return fast ? Shares{0.5, 0.85, 1.0} : Shares{0.4, 0.7, 0.95};
}

// What the size planted adds to, or takes from, a plug's share.
double headStart(StockSize size) {
  switch (size) {
    case StockSize::Seed:
      return -0.15;
    case StockSize::Plug:
      return 0.0;
    case StockSize::Quart:
      return 0.1;
    case StockSize::Gallon:
      return 0.2;
    case StockSize::Existing:
      return 1.0;
  }
  return 0.0;
}

}  // namespace

double shareOfSpread(const Species& species, StockSize size, GrowthYear year) {
  if (year == GrowthYear::Mature || species.lifeSpan == LifeSpan::Annual) return 1.0;
  const double fromPlug = sharesOf(species)[static_cast<std::size_t>(year)];
  return std::clamp(fromPlug + headStart(size), 0.1, 1.0);
}

Length spreadIn(const Species& species, StockSize size, GrowthYear year) {
  return species.spread * shareOfSpread(species, size, year);
}

}  // namespace tussock
