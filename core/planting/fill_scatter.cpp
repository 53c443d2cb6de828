// SPDX-License-Identifier: MIT
#include "core/planting/fill_scatter.h"

#include <algorithm>

namespace tussock {

namespace {

// Metres; 0 where it is not known from where the bed is looked at.
double awayFromViewers(const KeptDrift& drift, const FillGround& ground) {
  double sum = 0.0;
  for (const Point p : drift.places)
    if (const int cell = ground.at(p); cell >= 0)
      sum += static_cast<double>(ground.cells()[static_cast<std::size_t>(cell)].toViewers);
  return sum / static_cast<double>(std::max<std::size_t>(1, drift.places.size()));
}

}  // namespace

std::vector<KeptDrift> scattered(std::vector<KeptDrift> drifts, ScatterRequest request,
                                 const FillGround& ground, Chance& chance) {
  std::vector<std::pair<double, KeptDrift>> order;
  for (KeptDrift& drift : drifts) {
    const double away = 0.5 + awayFromViewers(drift, ground);
    order.emplace_back(away * chance.between(0.5, 1.5), std::move(drift));
  }
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<KeptDrift> some, others;
  for (auto& [unused, drift] : order) {
    const bool first = request.proposed ? some.empty() : request.there.insert(drift.species).second;
    (first ? some : others).push_back(std::move(drift));
  }
  double planted = 0.0;
  for (const KeptDrift& drift : some) planted += static_cast<double>(drift.places.size());
  for (KeptDrift& drift : others) {
    const auto count = static_cast<double>(drift.places.size());
    if (planted + 0.5 * count > request.plants) continue;
    planted += count;
    some.push_back(std::move(drift));
  }
  return some;
}

}  // namespace tussock
