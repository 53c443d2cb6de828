// SPDX-License-Identifier: MIT
#include "core/planting/fill_quota.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>

#include "core/planting/fill_balance.h"
#include "core/planting/fill_caps.h"
#include "core/planting/fill_rhythm.h"
#include "core/planting/plant_count.h"

namespace tussock {

namespace {

double medianSpacing(const std::vector<FillKind>& kinds) {
  std::vector<double> spacings;
  for (const FillKind& kind : kinds) spacings.push_back(kind.spacing);
  const auto middle = spacings.begin() + static_cast<std::ptrdiff_t>(spacings.size() / 2);
  std::nth_element(spacings.begin(), middle, spacings.end());
  return spacings.empty() ? 1.0 : *middle;
}

// What is left open is shared out evenly, but for plants that stand wide: as many shrubs as others
// would take the bed, so those take no more ground than one at the limit would (our own judgement,
// tried on drawn beds).
std::vector<double> partsOf(const std::vector<FillKind>& kinds) {
  constexpr double kWide = 1.6;  // times the spacing in the middle
  const double wide = kWide * medianSpacing(kinds);
  std::vector<double> parts;
  parts.reserve(kinds.size());
  for (const FillKind& kind : kinds)
    parts.push_back(kind.share > 0.0 ? 0.0 : std::pow(std::min(1.0, wide / kind.spacing), 2.0));
  return parts;
}

std::vector<double> wishes(const std::vector<FillKind>& kinds) {
  constexpr double kLeastOpen = 0.02;  // of the plants, for each
  const std::vector<double> parts = partsOf(kinds);
  const double sum = std::accumulate(parts.begin(), parts.end(), 0.0);
  double listed = 0.0, open = 0.0;
  for (const FillKind& kind : kinds) {
    listed += std::max(0.0, kind.share);
    if (kind.share <= 0.0) open += 1.0;
  }
  const double all = std::max(kLeastOpen * open, 1.0 - std::min(listed, 1.0));
  std::vector<double> result;
  result.reserve(kinds.size());
  for (std::size_t i = 0; i < kinds.size(); ++i)
    result.push_back(kinds[i].share > 0.0 ? kinds[i].share : all * parts[i] / sum);
  return result;
}

double groundOf(const std::vector<FillKind>& kinds, const std::vector<double>& plants) {
  double sum = 0.0;
  for (std::size_t i = 0; i < kinds.size(); ++i) sum += kinds[i].ground * plants[i];
  return sum;
}

// Scales down groups above their limit, one rank after the other.
class Limiter {
 public:
  Limiter(const std::vector<FillKind>& kinds, const StandingPlants& standing,
          const FillLimits& limits)
      : kinds_(kinds),
        standing_(standing),
        limits_{limits.speciesShare, limits.genusShare, limits.familyShare},
        most_(mostSharesOf(kinds)) {}

  void limit(std::vector<double>& plants, int rank) const {
    constexpr double kRoom = 0.93;  // odd counts come out a little above
    const double all = std::accumulate(plants.begin(), plants.end(), standing_.all);
    for (std::size_t i = 0; rank == 0 && i < kinds_.size(); ++i)
      plants[i] = std::min(plants[i], most_[i] * all);
    std::vector<double> sums(standingOf(rank));
    std::vector<double> own(sums.size(), 0.0);
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      own[groupAt(kinds_[i], i, static_cast<std::size_t>(rank))] += plants[i];
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
      const std::size_t group = groupAt(kinds_[i], i, static_cast<std::size_t>(rank));
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
  std::vector<double> most_;
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

// The most that stand together of a species that disease may take.
double mostTogether(const FillKind& kind, const FillLimits& limits) {
  if (!kind.diseaseProne) return 1e9;
  return std::max(1.0, kind.species->massThatMatters(limits.diseaseMass) - 2.0);
}

// Disease-prone species stand in many small drifts, which must not come to lie beside one another:
// the others are parted into drifts small enough to go between.
double sizeBetweenProne(const DriftsRequest& request, double usual) {
  constexpr double kMostProne = 0.3;  // of all drifts
  double prone = 0.0, others = 0.0;
  for (std::size_t i = 0; i < request.kinds.size(); ++i) {
    const double plants = request.quota.plants[i];
    const double most = mostTogether(request.kinds[i], request.limits);
    if (most < usual)
      prone += plants / most;
    else
      others += plants;
  }
  if (prone <= 0.0) return usual;
  return std::min(usual, std::max(others * kMostProne / (prone * (1.0 - kMostProne)), 0.4 * usual));
}

// Parted or not, drifts of a formal bed are no smaller than halfway to natural.
double driftSizeFor(const DriftsRequest& request) {
  const auto sizeAt = [&](double wildness) {
    return sizeBetweenProne(request, usualDriftSize(request.quota.total, wildness));
  };
  return request.wildness < 0.5 ? std::max(sizeAt(request.wildness), sizeAt(0.5))
                                : sizeAt(request.wildness);
}

// The most of all plants that a list can come to when none of its species, genera and families is
// over its limit.
double reachable(const std::vector<FillKind>& kinds, const FillLimits& limits) {
  std::map<std::size_t, std::map<std::size_t, double>> families;
  const std::vector<double> most = mostSharesOf(kinds);
  for (std::size_t i = 0; i < kinds.size(); ++i)
    families[kinds[i].family][kinds[i].genus] += std::min(limits.speciesShare, most[i]);
  double sum = 0.0;
  for (const auto& [family, genera] : families) {
    double own = 0.0;
    for (const auto& [genus, share] : genera) own += std::min(share, limits.genusShare);
    sum += std::min(own, limits.familyShare);
  }
  return sum;
}

// So few that, one to spare, each may have a drift of the largest odd count its share allows.
double fewestSpecies(double plants, double standing, const FillLimits& limits) {
  constexpr double kUsed = 0.8;  // of the share, where drifts are many
  constexpr double kSmall = 12.0;
  const double share = std::max(0.02, limits.speciesShare) * (plants + standing);
  const double odd = std::max(1.0, 2.0 * std::floor((0.975 * share - 1.0) / 2.0) + 1.0);
  return (share < kSmall ? std::ceil(plants / odd) : plants / (kUsed * share)) + 1.0;
}

}  // namespace

std::vector<double> mostSharesOf(const std::vector<FillKind>& kinds) {
  constexpr double kMore = 1.5;  // times what it would have beside the others
  const std::vector<double> parts = partsOf(kinds);
  const double sum = std::accumulate(parts.begin(), parts.end(), 0.0);
  std::vector<double> most;
  for (const double part : parts)
    most.push_back(part > 0.0 && part < 1.0 ? kMore * part / sum : 1.0);
  return most;
}

Quota quotaFor(const std::vector<FillKind>& kinds, double area, const StandingPlants& standing,
               const FillLimits& limits) {
  Quota quota;
  quota.plants = wishes(kinds);
  scaleTo(kinds, area, quota.plants);
  const bool listed = std::any_of(kinds.begin(), kinds.end(),
                                  [](const FillKind& kind) { return kind.share > 0.0; });
  const Limiter limiter(kinds, standing, limitsWithin(kinds, limits));
  const double all = std::accumulate(quota.plants.begin(), quota.plants.end(), standing.all);
  constexpr int kQuotaRounds = 60;
  quota.limited = !listed && all >= limits.shareMinPlants;
  if (!listed && !quota.limited) quota.most = limits.shareMinPlants - 1.0 - standing.all;
  if (quota.limited)
    for (int round = 0; round < kQuotaRounds; ++round) {
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

std::vector<PlannedDrift> driftsFor(const DriftsRequest& request, Chance& chance) {
  std::vector<PlannedDrift> drifts;
  if (request.quota.total <= 0.0) return drifts;
  const double meanSpacing = std::sqrt(request.area / request.quota.total * 2.0 / std::sqrt(3.0));
  const double usual = driftSizeFor(request);
  // In a bed large enough each species is planted, however little of it is asked for.
  const double least = request.kinds.size() <= mostSpeciesIn(request.quota.total) ? 1.0 : 0.0;
  const auto again = rhythmKind(request);
  for (std::size_t i = 0; i < request.kinds.size(); ++i) {
    const FillKind& kind = request.kinds[i];
    const double plants = std::max(least, request.quota.plants[i]);
    const double most = mostTogether(kind, request.limits);
    const double size = std::min(most, sizeFor(kind, usual, meanSpacing));
    if (plants < 0.35) continue;
    if (i == again) {
      const auto groups = groupsInRhythm(i, plants, static_cast<int>(std::lround(plants / size)));
      drifts.insert(drifts.end(), groups.begin(), groups.end());
      continue;
    }
    addDrifts(drifts, i, plants, size, most, request.wildness, chance);
  }
  balance(request, drifts);
  return drifts;
}

bool sharesCanBeKept(const std::vector<FillKind>& kinds, const FillLimits& limits) {
  return reachable(kinds, limits) >= 1.0 - 1e-9;
}

bool sharesCanBeKept(const std::vector<FillKind>& kinds, FillLimits limits, int plants) {
  for (double* share : {&limits.speciesShare, &limits.genusShare, &limits.familyShare})
    *share = std::floor(*share * plants + 1e-9) / std::max(1, plants);
  return sharesCanBeKept(kinds, limits);
}

FillLimits limitsWithin(const std::vector<FillKind>& kinds, const FillLimits& limits) {
  // For odd counts; where the limits cannot be kept anyway, for plants in every hole as well.
  constexpr double kForOdd = 1.06, kForHoles = 1.3, kNone = 1.1;
  const double room = sharesCanBeKept(kinds, limits) ? kForOdd : kForHoles;
  const std::array<double FillLimits::*, 3> shares{
      &FillLimits::speciesShare, &FillLimits::genusShare, &FillLimits::familyShare};
  const auto widen = [kNone](double& share) { share = std::min(kNone, 1.03 * share + 1e-3); };
  FillLimits wider = limits;
  // First each by itself as far as it alone stands in the way: what can be kept is kept.
  for (const auto share : shares) {
    FillLimits alone = limits;
    for (const auto other : shares)
      if (other != share) alone.*other = kNone;
    const double own = sharesCanBeKept(kinds, alone) ? kForOdd : kForHoles;
    for (int i = 0; i < 200 && reachable(kinds, alone) < own; ++i) widen(alone.*share);
    wider.*share = alone.*share;
  }
  const bool enough = reachable(kinds, wider) >= 1.0;
  for (int i = 0; i < 200 && reachable(kinds, wider) < (enough ? kForOdd : room); ++i)
    for (const auto share : shares) widen(wider.*share);
  return wider;
}

std::size_t speciesFor(double plantsInBed, double standing, double wildness,
                       const FillLimits& limits) {
  const double grown = std::pow(std::max(plantsInBed, 1.0), 0.36) * std::exp2(1.4 * wildness - 0.4);
  double count = std::clamp(1.35 * grown, 1.0, 60.0);
  constexpr double kMoreNatural = 1.4;  // times the fewest, at the natural end
  if (plantsInBed + standing >= limits.shareMinPlants)
    count = std::max(count, fewestSpecies(plantsInBed, standing, limits) *
                                (1.0 + (kMoreNatural - 1.0) * wildness));
  return static_cast<std::size_t>(std::lround(std::min(count, std::max(1.0, plantsInBed / 2.0))));
}

std::size_t mostSpeciesIn(double plantsInBed) {
  // Single plants of two kinds in the smallest bed: of one alone nothing follows when it fades.
  const double fewest = std::min(2.0, std::max(1.0, std::floor(plantsInBed)));
  return static_cast<std::size_t>(std::max(fewest, std::floor(plantsInBed / 3.0)));
}

}  // namespace tussock
