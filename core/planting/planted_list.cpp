// SPDX-License-Identifier: MIT
#include "core/planting/planted_list.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <string_view>

namespace tussock {

namespace {

const ListedSpecies* entryFor(const std::string& species, const std::vector<ListedSpecies>& list) {
  const auto found = std::find_if(list.begin(), list.end(), [&](const ListedSpecies& entry) {
    return entry.species == species;
  });
  return found == list.end() ? nullptr : &*found;
}

constexpr int kWhole = 100;  // per cent

// By the largest remainders, after 1 for each.
std::vector<int> wholePerCent(const std::vector<std::size_t>& counts) {
  const double all =
      static_cast<double>(std::accumulate(counts.begin(), counts.end(), std::size_t{0}));
  std::vector<double> exact;
  std::vector<int> whole;
  for (const std::size_t count : counts) {
    exact.push_back(all > 0.0 ? kWhole * static_cast<double>(count) / all : 0.0);
    whole.push_back(std::max(1, static_cast<int>(exact.back())));
  }
  const auto over = [&](std::size_t i) { return whole[i] - exact[i]; };
  std::vector<std::size_t> order(counts.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  for (int sum = std::accumulate(whole.begin(), whole.end(), 0); sum != kWhole;) {
    const int step = sum < kWhole ? 1 : -1;
    std::erase_if(order, [&](std::size_t i) { return step < 0 && whole[i] <= 1; });
    if (order.empty()) break;  // more species than parts in a hundred
    sum += step;
    const auto most = std::max_element(order.begin(), order.end(), [&](auto a, auto b) {
      return step > 0 ? over(a) > over(b) : over(a) < over(b);
    });
    whole[*most] += step;
  }
  return whole;
}

}  // namespace

std::vector<ListedSpecies> plantedList(const Yard& yard, Id<Bed> bed,
                                       const std::function<bool(const Drift&)>& counts,
                                       const std::vector<ListedSpecies>& list) {
  std::vector<ListedSpecies> result;
  for (const Drift* drift : driftsIn(yard, bed)) {
    if (!counts(*drift) || entryFor(drift->species, result) != nullptr) continue;
    const ListedSpecies* listed = entryFor(drift->species, list);
    result.push_back(listed != nullptr
                         ? *listed
                         : ListedSpecies{drift->species, 0.0, drift->pattern == Pattern::Matrix});
  }
  return result;
}

std::vector<ListedSpecies> plantedShares(const Yard& yard, Id<Bed> bed,
                                         const std::function<bool(const Drift&)>& counts) {
  std::vector<ListedSpecies> result = plantedList(yard, bed, counts);
  std::vector<std::size_t> plants(result.size(), 0);
  for (const Drift* drift : driftsIn(yard, bed))
    for (std::size_t i = 0; counts(*drift) && i < result.size(); ++i)
      if (result[i].species == drift->species) plants[i] += drift->plants.size();
  const std::vector<int> shares = wholePerCent(plants);
  for (std::size_t i = 0; i < result.size(); ++i) result[i].share = shares[i] / 100.0;
  return result;
}

std::size_t speciesGone(const Yard& before, const Yard& after, Id<Bed> bed) {
  std::set<std::string_view> gone;
  for (const Drift* drift : driftsIn(before, bed)) gone.insert(drift->species);
  for (const Drift* drift : driftsIn(after, bed)) gone.erase(drift->species);
  return gone.size();
}

}  // namespace tussock
