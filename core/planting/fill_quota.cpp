// SPDX-License-Identifier: MIT
#include "core/planting/fill_quota.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tussock {

namespace {

int oddNear(double count) {
  return std::max(1, 2 * static_cast<int>(std::floor(count / 2.0)) + 1);
}

std::vector<double> wishes(const std::vector<FillKind>& kinds) {
  double listed = 0.0;
  std::size_t open = 0;
  for (const FillKind& kind : kinds) {
    listed += std::max(0.0, kind.share);
    if (kind.share <= 0.0) ++open;
  }
  const double each =
      open > 0 ? std::max(0.02, (1.0 - std::min(listed, 1.0))) / static_cast<double>(open) : 0.0;
  std::vector<double> result;
  result.reserve(kinds.size());
  for (const FillKind& kind : kinds) result.push_back(kind.share > 0.0 ? kind.share : each);
  return result;
}

double groundOf(const std::vector<FillKind>& kinds, const std::vector<double>& plants) {
  double sum = 0.0;
  for (std::size_t i = 0; i < kinds.size(); ++i) sum += kinds[i].ground * plants[i];
  return sum;
}

std::size_t groupOf(const FillKind& kind, std::size_t index, int rank) {
  return rank == 0 ? index : rank == 1 ? kind.genus : kind.family;
}

// Scales down groups above their limit, one rank after the other.
class Limiter {
 public:
  Limiter(const std::vector<FillKind>& kinds, const StandingPlants& standing,
          const FillLimits& limits)
      : kinds_(kinds),
        standing_(standing),
        limits_{limits.speciesShare, limits.genusShare, limits.familyShare} {}

  void limit(std::vector<double>& plants, int rank) const {
    constexpr double kRoom = 0.93;  // odd counts come out a little above
    const double all = std::accumulate(plants.begin(), plants.end(), standing_.all);
    std::vector<double> sums(standingOf(rank));
    std::vector<double> own(sums.size(), 0.0);
    for (std::size_t i = 0; i < kinds_.size(); ++i) own[groupOf(kinds_[i], i, rank)] += plants[i];
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
      const std::size_t group = groupOf(kinds_[i], i, rank);
      const double most = kRoom * limits_[rank] * all - sums[group];
      if (own[group] > most && own[group] > 0.0) plants[i] *= std::max(0.05, most / own[group]);
    }
  }

 private:
  [[nodiscard]] const std::vector<double>& standingOf(int rank) const {
    return rank == 0 ? standing_.ofKind : rank == 1 ? standing_.ofGenus : standing_.ofFamily;
  }
  const std::vector<FillKind>& kinds_;
  const StandingPlants& standing_;
  double limits_[3];
};

void scaleTo(const std::vector<FillKind>& kinds, double area, std::vector<double>& plants) {
  const double now = groundOf(kinds, plants);
  if (now <= 0.0) return;
  for (double& count : plants) count *= area / now;
}

// Large plants stand in smaller groups: shrubs and giants alone or in threes.
double sizeFor(const FillKind& kind, double usual, double meanSpacing) {
  const double size = usual * std::pow(meanSpacing / kind.spacing, 0.8);
  return std::clamp(size, 1.0, 1.8 * usual);
}

double chanceSize(double usual, double wildness, Chance& chance) {
  const double spread = 0.15 + 0.55 * wildness;
  return usual * chance.between(1.0 - spread, 1.0 + spread);
}

void addDrifts(std::vector<PlannedDrift>& drifts, std::size_t kind, double plants, double size,
               double most, double wildness, Chance& chance) {
  const auto groups = std::max(1, static_cast<int>(std::lround(plants / size)));
  double left = plants;
  for (int i = groups; i > 0; --i) {
    const double even = left / i;
    const double wanted = i == 1 ? left : std::min(left, chanceSize(even, wildness, chance));
    int count = oddNear(std::min(wanted, most));
    if (count > 1 && wanted < count - 0.999) count -= 2;
    drifts.push_back({kind, count});
    left -= count;
  }
}

// Adds and takes pairs of plants until the drifts take the area, where a kind is farthest from its
// quota first.
class Balance {
 public:
  Balance(const std::vector<FillKind>& kinds, const Quota& quota, const FillLimits& limits,
          std::vector<PlannedDrift>& drifts)
      : kinds_(kinds),
        quota_(quota),
        limits_(limits),
        drifts_(drifts),
        planned_(kinds.size(), 0.0) {
    for (const PlannedDrift& drift : drifts_) add(drift.kind, drift.count);
  }
  void settle(double area) {
    for (int i = 0; i < 400 && ground_ < area - widest(); ++i)
      if (!change(+2)) break;
    for (int i = 0; i < 400 && ground_ > area + 0.5 * widest(); ++i)
      if (!change(-2)) break;
  }

 private:
  void add(std::size_t kind, int count) {
    planned_[kind] += count;
    ground_ += count * kinds_[kind].ground;
  }
  [[nodiscard]] double widest() const {
    double widest = 0.0;
    for (const FillKind& kind : kinds_) widest = std::max(widest, kind.ground);
    return widest;
  }
  [[nodiscard]] double need(const PlannedDrift& drift, int step) const {
    const double miss = quota_.plants[drift.kind] - planned_[drift.kind];
    return (step > 0 ? miss : -miss) / std::max(1.0, quota_.plants[drift.kind]) -
           (step > 0 ? 0.02 : -0.02) * drift.count;
  }
  [[nodiscard]] bool may(const PlannedDrift& drift, int step) const {
    const int count = drift.count + step;
    return count >= 1 && (step < 0 || !kinds_[drift.kind].diseaseProne ||
                          static_cast<double>(count) < limits_.diseaseMass);
  }
  bool change(int step) {
    PlannedDrift* best = nullptr;
    for (PlannedDrift& drift : drifts_)
      if (may(drift, step) && (best == nullptr || need(drift, step) > need(*best, step)))
        best = &drift;
    if (best == nullptr) return false;
    best->count += step;
    add(best->kind, step);
    return true;
  }

  const std::vector<FillKind>& kinds_;
  const Quota& quota_;
  const FillLimits& limits_;
  std::vector<PlannedDrift>& drifts_;
  std::vector<double> planned_;
  double ground_ = 0.0;
};

}  // namespace

Quota quotaFor(const std::vector<FillKind>& kinds, double area, const StandingPlants& standing,
               const FillLimits& limits) {
  Quota quota{wishes(kinds), 0.0};
  scaleTo(kinds, area, quota.plants);
  const bool listed = std::any_of(kinds.begin(), kinds.end(),
                                  [](const FillKind& kind) { return kind.share > 0.0; });
  const Limiter limiter(kinds, standing, limits);
  const double all = std::accumulate(quota.plants.begin(), quota.plants.end(), standing.all);
  constexpr int kRounds = 60;
  if (!listed && all >= limits.shareMinPlants)
    for (int round = 0; round < kRounds; ++round) {
      for (const int rank : {2, 1, 0}) limiter.limit(quota.plants, rank);
      scaleTo(kinds, area, quota.plants);
    }
  quota.total = std::accumulate(quota.plants.begin(), quota.plants.end(), 0.0);
  return quota;
}

// From groups of three to five in a small bed to some thirty plants in a large one (garden press:
// 3, 5, 7; the rest is our own judgement, tried on drawn beds).
double usualDriftSize(double plantsInBed, double wildness) {
  const double middle = std::clamp(1.6 * std::pow(std::max(plantsInBed, 1.0), 0.36), 3.0, 40.0);
  return middle * std::exp2(0.9 - 1.7 * wildness);
}

std::vector<PlannedDrift> driftsFor(const std::vector<FillKind>& kinds, const Quota& quota,
                                    double area, double wildness, const FillLimits& limits,
                                    Chance& chance) {
  std::vector<PlannedDrift> drifts;
  if (quota.total <= 0.0) return drifts;
  const double meanSpacing = std::sqrt(area / quota.total * 2.0 / std::sqrt(3.0));
  const double usual = usualDriftSize(quota.total, wildness);
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    const double most = kinds[i].diseaseProne ? limits.diseaseMass - 2.0 : 1e9;
    const double size = std::min(most, sizeFor(kinds[i], usual, meanSpacing));
    if (quota.plants[i] < 0.35) continue;
    addDrifts(drifts, i, quota.plants[i], size, most, wildness, chance);
  }
  Balance(kinds, quota, limits, drifts).settle(area);
  return drifts;
}

std::size_t speciesFor(double plantsInBed, double wildness, const FillLimits& limits) {
  const double grown = std::pow(std::max(plantsInBed, 1.0), 0.36) * std::exp2(1.4 * wildness - 0.4);
  double count = std::clamp(1.35 * grown, 1.0, 60.0);
  if (plantsInBed >= limits.shareMinPlants)
    count = std::max(count, 1.0 / std::max(0.02, 0.93 * limits.speciesShare) + 1.0);
  return static_cast<std::size_t>(std::lround(std::min(count, std::max(1.0, plantsInBed / 2.0))));
}

}  // namespace tussock
