// SPDX-License-Identifier: MIT
#include "core/planting/fill_propose.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/planting/fill_layer.h"
#include "core/planting/fill_quota.h"

namespace tussock {

namespace {

constexpr int kProposeRounds = 12;
constexpr std::size_t kMostAdded = 4;  // species for a week without flowers
constexpr double kDrift = 5.0;         // plants, the fewest that read as a drift and not as dots
constexpr double kEnough =
    57.0;                      // plants of which each species may have so many: a tenth, and some
constexpr double kFew = 0.92;  // of the plants up to which shares are not looked at

class Proposing {
 public:
  Proposing(const std::vector<FillKind>& kinds, const ProposeRequest& request)
      : kinds_(kinds), request_(request), limits_(request.choose.limits) {}

  std::vector<FillKind> run() const {
    const std::vector<FillKind> usual = chosenWith(0.0, 0.0);
    const double plants = plantsOf(usual);
    const bool fewKinds = usual.size() <= countFor(plants) + kMostAdded;
    if (usual.empty() || (fewKinds && readsAsDrifts(plants))) return usual;
    // A few plants too many for shares not to matter, and too few for drifts of five: smaller
    // plants or larger ones, whichever is nearer.
    const double few = kFew * limits_.shareMinPlants - request_.standing;
    const double many = kEnough - request_.standing;
    const bool smaller = plants * plants > few * many;
    for (const double wanted : {smaller ? many : few, smaller ? few : many}) {
      auto chosen = wanted < 2.0 * kDrift ? std::nullopt : chosenNear(wanted);
      if (chosen) return std::move(*chosen);
    }
    return usual;
  }

 private:
  [[nodiscard]] double plantsOf(const std::vector<FillKind>& kinds) const {
    return plantsOn(request_.choose.area, kinds);
  }
  [[nodiscard]] double spacingOf(double plants) const {
    return std::sqrt(request_.choose.area * 2.0 / (std::numbers::sqrt3 * plants));
  }
  // Whether each species may have a drift's worth of plants.
  [[nodiscard]] bool readsAsDrifts(double plants) const {
    const double all = plants + request_.standing;
    return all < kFew * 1.05 * limits_.shareMinPlants ||
           all * limits_.speciesShare >= kDrift * 1.08;
  }

  // Of the spacing that comes to about so many plants, if such are to be had.
  [[nodiscard]] std::optional<std::vector<FillKind>> chosenNear(double wanted) const {
    constexpr int kTries = 4;
    double spacing = spacingOf(wanted);
    for (int i = 0; i < kTries; ++i) {
      auto chosen = chosenWith(spacing, wanted);
      const double plants = plantsOf(chosen);
      if (plants < 1.0) break;
      if (readsAsDrifts(plants)) return chosen;
      spacing *= std::sqrt(plants / wanted);
    }
    return std::nullopt;
  }
  // As many as the bed takes of those chosen, which depends on their spacing (or as a bed of so
  // many plants `wanted` does); more where their kinship would leave one over its share, or weeks
  // without a flower.
  [[nodiscard]] std::vector<FillKind> chosenWith(double spacing, double wanted) const {
    ChooseRequest choose = request_.choose;
    choose.spacing = spacing;
    if (wanted > 0.0) choose.count = countFor(wanted);
    std::vector<FillKind> chosen;
    std::size_t added = 0;
    for (int round = 0; round < kProposeRounds; ++round) {
      chosen = chosenBy(choose);
      const double plants = plantsOf(chosen);
      std::size_t count = wanted > 0.0 ? choose.count : countFor(plants);
      if (round > 0) count = std::max(choose.count, count);
      if (count == choose.count && !sharesKept(chosen, plants)) count += 2;
      if (count == choose.count && added < kMostAdded) {
        const WeekSet lacking = weeksLacking(chosen);
        choose.lacking |= lacking;
        if (lacking != 0) ++count, ++added;
      }
      if (count == choose.count || chosen.size() == kinds_.size()) break;
      choose.count = count;
    }
    return chosen;
  }
  [[nodiscard]] std::size_t countFor(double plants) const {
    return speciesFor(plants, request_.standing, request_.choose.wildness, limits_);
  }
  [[nodiscard]] std::vector<FillKind> chosenBy(const ChooseRequest& choose) const {
    Chance chance(request_.seed);
    std::vector<FillKind> chosen;
    for (const std::size_t i : chooseKinds(kinds_, request_.cells, choose, chance))
      chosen.push_back(kinds_[i]);
    return chosen;
  }
  [[nodiscard]] bool sharesKept(const std::vector<FillKind>& chosen, double plants) const {
    return plants + request_.standing < limits_.shareMinPlants || sharesCanBeKept(chosen, limits_);
  }
  // Weeks with too little in flower, as far as anything that suits the bed flowers then.
  [[nodiscard]] WeekSet weeksLacking(const std::vector<FillKind>& chosen) const {
    std::vector<WeekSet> flowering;
    for (const auto* kinds : {&chosen, &request_.beneath})
      for (const FillKind& kind : *kinds) flowering.push_back(kind.weeks);
    WeekSet all = 0, any = 0, lacking = 0;
    for (const WeekSet weeks : flowering) all |= weeks;
    for (const FillKind& kind : kinds_) any |= kind.weeks;
    const WeekSet bare = request_.choose.season & any & ~all;
    if (std::popcount(bare) > limits_.bloomGapWeeks) lacking |= bare;
    for (const WeekSet third : request_.thirds) {
      const auto species = std::count_if(flowering.begin(), flowering.end(),
                                         [&](WeekSet weeks) { return (weeks & third) != 0; });
      if (static_cast<double>(species) < limits_.bloomPerThird) lacking |= third & any;
    }
    return lacking;
  }

  const std::vector<FillKind>& kinds_;
  const ProposeRequest& request_;
  const FillLimits& limits_;
};

}  // namespace

std::vector<FillKind> proposeKinds(const std::vector<FillKind>& kinds,
                                   const ProposeRequest& request) {
  return Proposing(kinds, request).run();
}

double plantsOn(double squareMetres, const std::vector<FillKind>& kinds) {
  double ground = 0.0;
  for (const FillKind& kind : kinds) ground += kind.ground;
  return ground > 0.0 ? squareMetres * static_cast<double>(kinds.size()) / ground : 0.0;
}

}  // namespace tussock
