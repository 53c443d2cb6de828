// SPDX-License-Identifier: MIT
#include "core/planting/fill_propose.h"

#include <algorithm>
#include <bit>

#include "core/planting/fill_layer.h"
#include "core/planting/fill_quota.h"

namespace tussock {

namespace {

constexpr int kProposeRounds = 12;
constexpr std::size_t kMostAdded = 4;  // species for a week without flowers

class Proposing {
 public:
  Proposing(const std::vector<FillKind>& kinds, const ProposeRequest& request)
      : kinds_(kinds), request_(request), limits_(request.choose.limits) {}

  // As many as the bed takes of those chosen, which depends on their spacing; more where their
  // kinship would leave one over its share, or weeks without a flower.
  std::vector<FillKind> run() const {
    ChooseRequest choose = request_.choose;
    std::vector<FillKind> chosen;
    std::size_t added = 0;
    for (int round = 0; round < kProposeRounds; ++round) {
      chosen = chosenBy(choose);
      const double plants = plantsOn(request_.choose.area, chosen);
      std::size_t count = countFor(plants);
      if (round > 0) count = std::max(choose.count, count);
      if (count == choose.count && !sharesKept(chosen, plants)) count += 2;
      if (count == choose.count) {
        const WeekSet lacking = weeksLacking(chosen);
        const bool known = (lacking & ~choose.lacking) == 0;  // others in their stead did not help
        choose.lacking |= lacking;
        if (lacking != 0 && !known) continue;
        if (lacking != 0 && added < kMostAdded) ++count, ++added;
      }
      if (count == choose.count || chosen.size() == kinds_.size()) break;
      choose.count = count;
    }
    return chosen;
  }

 private:
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
