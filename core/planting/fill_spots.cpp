// SPDX-License-Identifier: MIT
#include "core/planting/fill_spots.h"

#include <algorithm>
#include <map>

#include "core/catalog/bloom.h"
#include "core/planting/disc_grid.h"
#include "core/planting/grow.h"

namespace tussock {

namespace {

using Samples = std::vector<std::vector<FillCell>>;

std::vector<FillCell> samplesOf(const SpotsRequest& request, const Drift& drift) {
  std::vector<FillCell> samples;
  for (const Plant& plant : drift.plants) {
    FillCell cell;
    cell.at = plant.at;
    samples.push_back(cell);
  }
  lookAround(samples, request.yard, request.bed, request.sun, request.sight);
  return samples;
}

// Some cells of each drift, spread over it.
Samples samplesOf(const FillGround& ground, const Owners& owners, std::size_t drifts) {
  const std::size_t most = drifts > 150 ? 14 : 26;
  std::vector<std::vector<std::size_t>> cells(drifts);
  for (std::size_t i = 0; i < owners.size(); ++i)
    if (owners[i] >= 0) cells[static_cast<std::size_t>(owners[i])].push_back(i);
  Samples samples(drifts);
  for (std::size_t drift = 0; drift < drifts; ++drift) {
    const auto& own = cells[drift];
    const std::size_t count = std::min(most, own.size());
    for (std::size_t i = 0; i < count; ++i) {
      const std::size_t cell = own[(2 * i + 1) * own.size() / (2 * count)];
      samples[drift].push_back(ground.cells()[cell]);
      samples[drift].back().across = static_cast<float>(ground.across(static_cast<int>(cell)));
    }
  }
  return samples;
}

// Kept drifts touch whose cells begin right beside their plants.
void addKeptContacts(const std::vector<const Drift*>& kept, const FillGround& ground,
                     const Owners& owners, std::size_t first, TouchingPairs& pairs) {
  for (std::size_t i = 0; i < kept.size(); ++i) {
    std::vector<std::int32_t> beside;
    const double s = kept[i]->spacing.metres();
    for (const Plant& plant : kept[i]->plants)
      for (int turn = 0; turn < 12; ++turn) {
        const Point p = plant.at + rotated({0.8 * s, 0.0}, Angle::degrees(30.0 * turn));
        if (!ground.box().contains(p)) continue;
        const int cell = ground.at(p);
        if (cell >= 0 && owners[static_cast<std::size_t>(cell)] >= 0)
          beside.push_back(owners[static_cast<std::size_t>(cell)]);
      }
    std::sort(beside.begin(), beside.end());
    beside.erase(std::unique(beside.begin(), beside.end()), beside.end());
    for (const std::int32_t other : beside)
      pairs.emplace_back(static_cast<std::size_t>(other), first + i);
  }
}

}  // namespace

TouchingPairs touchingCells(const FillGround& ground, const Owners& owners) {
  constexpr double kContact = 0.12;  // metres of common edge
  std::map<std::pair<std::size_t, std::size_t>, double> contacts;
  for (std::size_t i = 0; i < owners.size(); ++i)
    ground.beside(static_cast<int>(i), [&](int other) {
      const std::int32_t a = owners[i], b = owners[static_cast<std::size_t>(other)];
      if (a >= 0 && b > a)
        contacts[{static_cast<std::size_t>(a), static_cast<std::size_t>(b)}] += ground.size();
    });
  TouchingPairs pairs;
  for (const auto& [pair, length] : contacts)
    if (length >= kContact) pairs.push_back(pair);
  return pairs;
}

TouchingPairs touchingDrifts(const std::vector<const Drift*>& drifts) {
  Box box;
  double widest = 0.05;
  for (const Drift* drift : drifts) {
    box.include(boundsOf(positionsOf(*drift)));
    widest = std::max(widest, drift->spacing.metres());
  }
  if (box.empty()) return {};
  DiscGrid grid(box, kTouch * widest);
  std::vector<std::size_t> owner;
  TouchingPairs pairs;
  for (std::size_t i = 0; i < drifts.size(); ++i)
    for (const Plant& plant : drifts[i]->plants) {
      grid.near(plant.at, kTouch * widest, [&](std::size_t other) {
        const Length sum = drifts[i]->spacing + drifts[owner[other]]->spacing;
        const double touch = kTouch * 0.5 * sum.metres();
        if (owner[other] != i && squaredDistance(plant.at, grid.at(other)) < touch * touch)
          pairs.emplace_back(owner[other], i);
        return true;
      });
      grid.add(plant.at);
      owner.push_back(i);
    }
  std::sort(pairs.begin(), pairs.end());
  pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
  return pairs;
}

Layout layoutOf(const SpotsRequest& request, const FillGround& ground, const Owners& owners,
                std::size_t drifts) {
  Samples samples = samplesOf(ground, owners, drifts);
  std::vector<double> areas(drifts, 0.0);
  for (const std::int32_t owner : owners)
    if (owner >= 0) areas[static_cast<std::size_t>(owner)] += ground.cellArea();
  TouchingPairs pairs = touchingCells(ground, owners);
  for (const auto& [a, b] : touchingDrifts(request.kept))
    pairs.emplace_back(drifts + a, drifts + b);
  addKeptContacts(request.kept, ground, owners, drifts, pairs);
  for (const Drift* drift : request.kept) {
    samples.push_back(samplesOf(request, *drift));
    areas.push_back(groundOf(*drift).squareMetres());
  }
  return layoutOf(request.bed, std::move(samples), areas, pairs, request.sight);
}

Layout layoutOf(const SpotsRequest& request) {
  Samples samples;
  std::vector<double> areas;
  for (const Drift* drift : request.kept) {
    samples.push_back(samplesOf(request, *drift));
    areas.push_back(groundOf(*drift).squareMetres());
  }
  return layoutOf(request.bed, std::move(samples), areas, touchingDrifts(request.kept),
                  request.sight);
}

}  // namespace tussock
