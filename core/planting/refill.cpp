// SPDX-License-Identifier: MIT
#include "core/planting/refill.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/edit/draft.h"
#include "core/planting/arrangements.h"
#include "core/planting/disc_grid.h"

namespace tussock {

namespace {

constexpr double kOffered = 1.5;  // spacings from where a plant stood: its own ground and one more
constexpr double kLoose = 1.08;  // of the ground that the plants take: they are not to be wedged in

int oddAtMost(std::size_t count) {
  const auto plants = static_cast<int>(count);
  return plants % 2 == 0 ? plants - 1 : plants;
}

class Refilling {
 public:
  Refilling(const LayerTask& task, const FillGround& ground, const std::vector<Drift>& takenOut)
      : task_(task),
        ground_(ground),
        takenOut_(takenOut),
        kind_(task.kinds.front()),
        yard_(task.yard),
        ids_(largestId(task.yard) + 1),
        before_(ground.box(), kOffered * kind_.spacing),
        now_(ground.box(), kind_.spacing) {
    for (std::size_t i = 0; i < takenOut.size(); ++i)
      for (const Plant& plant : takenOut[i].plants) before_.add(plant.at), owners_.push_back(i);
  }

  std::vector<KeptDrift> run(Chance& chance, const WorkWatch& watch) {
    std::vector<KeptDrift> result;
    for (std::size_t i = 0; i < takenOut_.size() && !watch.halt(); ++i) {
      const int count = oddAtMost(takenOut_[i].plants.size());
      if (count < 1) continue;
      FillGround own = ground_;
      own.keepOnly(groundOf(i, count));
      const LayerTask one{yard_,       task_.catalogue, task_.bed,   task_.sun,  task_.layer,
                          task_.kinds, task_.wildness,  task_.cover, task_.size, task_.limits,
                          task_.blunt, false,           count};
      for (KeptDrift& drift : fillLayer(one, own, chance, watch).drifts) {
        drift.axis = takenOut_[i].axis, drift.stretch = takenOut_[i].stretch;
        stand(drift);
        result.push_back(std::move(drift));
      }
    }
    return result;
  }

 private:
  // Nearest first to where its plants stood, and nearer to those than to others', as much as it
  // takes.
  [[nodiscard]] std::vector<bool> groundOf(std::size_t drift, int count) const {
    const std::vector<FillCell>& cells = ground_.cells();
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const auto [away, owner] = nearestBefore(cells[i].at);
      if (owner == drift && !taken(cells[i].at)) order.emplace_back(away, i);
    }
    std::sort(order.begin(), order.end());
    const auto most =
        static_cast<std::size_t>(std::ceil(kLoose * count * kind_.ground / ground_.cellArea()));
    std::vector<bool> keep(cells.size(), false);
    for (std::size_t i = 0; i < std::min(most, order.size()); ++i) keep[order[i].second] = true;
    return keep;
  }
  [[nodiscard]] std::pair<double, std::size_t> nearestBefore(Point p) const {
    double least = kOffered * kind_.spacing;
    std::size_t owner = takenOut_.size();
    before_.near(p, least, [&](std::size_t i) {
      if (const double away = distance(p, before_.at(i)); away < least)
        least = away, owner = owners_[i];
      return true;
    });
    return {least, owner};
  }
  [[nodiscard]] bool taken(Point p) const {
    return !now_.near(p, kind_.spacing / 2.0, [](std::size_t) { return false; });
  }
  void stand(const KeptDrift& drift) {
    for (const Point p : drift.places) now_.add(p);
    Draft draft(yard_);
    draft.put(planted(drift, task_.bed.id, ids_));
    yard_ = draft.yard();
  }

  const LayerTask& task_;
  const FillGround& ground_;
  const std::vector<Drift>& takenOut_;
  const FillKind& kind_;
  Yard yard_;  // with what is planted anew
  IdSource ids_;
  DiscGrid before_, now_;
  std::vector<std::size_t> owners_;  // of the places before, by number in takenOut_
};

}  // namespace

std::vector<KeptDrift> refilled(const LayerTask& task, const FillGround& ground,
                                const std::vector<Drift>& takenOut, Chance& chance,
                                const WorkWatch& watch) {
  if (task.kinds.empty()) return {};
  return Refilling(task, ground, takenOut).run(chance, watch);
}

int countToRefill(const std::vector<Drift>& takenOut) {
  int count = 0;
  for (const Drift& drift : takenOut) count += std::max(0, oddAtMost(drift.plants.size()));
  return count;
}

}  // namespace tussock
