// SPDX-License-Identifier: MIT
#include "core/planting/fill_exchange.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/planting/enlarge.h"
#include "core/planting/one_piece.h"

namespace tussock {

namespace {

class Exchange {
 public:
  Exchange(const ExchangeTask& task, const std::vector<Id<Drift>>& mine, Yard& yard,
           const WorkWatch& watch)
      : task_(task), mine_(mine), yard_(yard), watch_(watch), verdict_(task.judge(yard)) {
    score_ = task_.score(yard_);
  }

  PlantingWorth run() {
    if (verdict_.cost > 0.0 && task_.regrouped && !spent()) (void)tryYard(task_.regrouped(yard_));
    // Each drift gets its turn, again and again while something is gained.
    for (bool gained = true; gained && verdict_.cost > 0.0;) {
      gained = false;
      const std::vector<Id<Drift>> concerned = verdict_.concerned;
      for (const Id<Drift> id : concerned) {
        if (spent()) return {worth(), verdict_.cost, true, takers_};
        if (isMine(id) && better(id)) {
          gained = true;
          break;
        }
      }
    }
    return {worth(), verdict_.cost, false, takers_};
  }

 private:
  [[nodiscard]] double worth() const { return score_ - kVerdictWeight * verdict_.cost; }
  [[nodiscard]] bool spent() const { return tries_ >= task_.mostTries || watch_.halt(); }
  [[nodiscard]] bool isMine(Id<Drift> id) const {
    return std::find(mine_.begin(), mine_.end(), id) != mine_.end();
  }
  [[nodiscard]] bool isLast(const Drift& drift) const {
    return std::none_of(yard_.drifts.begin(), yard_.drifts.end(), [&](const Drift& other) {
      return other.id != drift.id && other.bed == drift.bed && other.species == drift.species &&
             !other.plants.empty();
    });
  }
  static bool sameSpacing(const Drift& drift, double metres) {
    return std::abs(drift.spacing.metres() - metres) < 1e-6;
  }

  bool better(Id<Drift> id) {
    const Drift drift = *yard_.drifts.find(id);
    if (drift.pattern == Pattern::Matrix) return false;
    const bool spare = !task_.keepAll || !isLast(drift);
    for (const FillKind& kind : task_.kinds)
      if (spare && sameSpacing(drift, kind.spacing) && !kind.matrix &&
          kind.species->botanicalName != drift.species &&
          tryWith({as(drift, kind.species->botanicalName)}))
        return true;
    for (const Id<Drift> other : mine_) {
      const Drift* found = yard_.drifts.find(other);
      if (found == nullptr || other == id || found->layer != drift.layer ||
          found->pattern == Pattern::Matrix || found->species == drift.species ||
          !sameSpacing(drift, found->spacing.metres()))
        continue;
      if (tryWith({as(drift, found->species), as(*found, drift.species)})) return true;
    }
    return fewer(drift);
  }
  // Where there are a few plants too many of a species, a pair goes from the end of a drift.
  bool fewer(Drift drift) {
    constexpr std::size_t kLeast = 5;
    if (drift.plants.size() < kLeast) return false;
    const GrowRequest request = requestOf(drift);
    const std::vector<std::size_t> kept = shrunk(request, positionsOf(drift));
    std::vector<Plant> plants;
    for (const std::size_t i : kept) plants.push_back(drift.plants[i]);
    drift.plants = std::move(plants);
    return inOnePiece(positionsOf(drift), drift.spacing) && tryWith({drift});
  }
  static GrowRequest requestOf(const Drift& drift) {
    GrowRequest request;
    request.spacing = drift.spacing;
    request.count = static_cast<int>(drift.plants.size()) - 2;
    for (const Point p : positionsOf(drift))
      request.at = request.at + p * (1.0 / static_cast<double>(drift.plants.size()));
    request.axis = drift.axis;
    request.stretch = drift.stretch;
    return request;
  }
  static Drift as(Drift drift, const std::string& species) {
    drift.species = species;
    return drift;
  }
  // Keeps the change if the planting is worth more with it.
  bool tryWith(const std::vector<Drift>& changed) {
    if (spent()) return false;
    Yard next = yard_;
    for (const Drift& drift : changed) next.drifts = next.drifts.with(drift);
    return tryYard(std::move(next));
  }
  bool tryYard(Yard next) {
    ++tries_;
    FillVerdict verdict = task_.judge(next);
    if (verdict.cost >= verdict_.cost - 1e-9) return false;
    const double score = task_.score(next);
    if (score - kVerdictWeight * verdict.cost <= worth() + 1e-9) return false;
    for (const Id<Drift> id : mine_)
      if (const Drift* drift = next.drifts.find(id);
          drift != nullptr && yard_.drifts.find(id)->species != drift->species)
        takers_.insert(drift->species);
    yard_ = std::move(next), verdict_ = std::move(verdict), score_ = score;
    return true;
  }

  const ExchangeTask& task_;
  const std::vector<Id<Drift>>& mine_;
  Yard& yard_;
  const WorkWatch& watch_;
  FillVerdict verdict_;
  double score_ = 0.0;
  int tries_ = 0;
  std::set<std::string> takers_;
};

}  // namespace

PlantingWorth exchangeSpecies(const ExchangeTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& yard, const WorkWatch& watch) {
  return Exchange(task, mine, yard, watch).run();
}

}  // namespace tussock
