// SPDX-License-Identifier: MIT
#include "core/planting/fill_exchange.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/geometry/lattice.h"
#include "core/planting/enlarge.h"
#include "core/planting/fill_regrow.h"
#include "core/planting/one_piece.h"

namespace tussock {

namespace {

class Exchange {
 public:
  Exchange(const ExchangeTask& task, const std::vector<Id<Drift>>& mine, Yard& yard,
           const WorkWatch& watch)
      : task_(task), mine_(mine), yard_(yard), watch_(watch), verdict_(task.judge(yard)) {
    score_ = task_.score(yard_);
    ground_ = groundOf(yard_), counts_ = countsIn(yard_);
  }

  PlantingWorth run() {
    if (verdict_.cost > 0.0 && task_.regrouped && !spent()) (void)tryYard(task_.regrouped(yard_));
    // What moves no plant comes first: it costs least.
    const bool done = takeTurns(&Exchange::better) && takeTurns(&Exchange::regrown);
    return {worth(), verdict_.cost, !done, takers_};
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
  [[nodiscard]] double groundOf(const Yard& yard) const {
    double ground = 0.0;
    for (const Id<Drift> id : mine_)
      if (const Drift* drift = yard.drifts.find(id))
        ground += static_cast<double>(drift->plants.size()) *
                  triangularGround(drift->spacing).squareMetres();
    return ground;
  }
  // Of each kind, in the kinds' order, and of all drifts together.
  [[nodiscard]] std::vector<double> countsIn(const Yard& yard) const {
    std::map<std::string, double> bySpecies;
    double all = 0.0;
    for (const Id<Drift> id : mine_)
      if (const Drift* drift = yard.drifts.find(id)) {
        bySpecies[drift->species] += static_cast<double>(drift->plants.size());
        all += static_cast<double>(drift->plants.size());
      }
    std::vector<double> counts;
    for (const FillKind& kind : task_.kinds)
      counts.push_back(bySpecies[kind.species->botanicalName]);
    counts.push_back(all);
    return counts;
  }
  // What was asked for stays about as it was shared out.
  [[nodiscard]] bool keepsShares(const Yard& next) const {
    constexpr double kMostOff = 0.02;  // of all plants
    constexpr double kLeastOff = 2.0;  // plants, as drifts of one count or another change hands
    const std::vector<double> counts = countsIn(next);
    const double most = std::max(kLeastOff, kMostOff * counts_.back());
    for (std::size_t i = 0; i < task_.kinds.size(); ++i)
      if (task_.kinds[i].share > 0.0 && std::abs(counts[i] - counts_[i]) > most) return false;
    return true;
  }
  static bool sameSpacing(const Drift& drift, double metres) {
    return std::abs(drift.spacing.metres() - metres) < 1e-6;
  }

  // Each drift that something is found about gets its turn, again and again while something is
  // gained; false when not every turn was taken.
  bool takeTurns(bool (Exchange::*turn)(const Drift&)) {
    for (bool gained = true; gained && verdict_.cost > 0.0;) {
      gained = false;
      const std::vector<Id<Drift>> concerned = verdict_.concerned;
      for (const Id<Drift> id : concerned) {
        if (spent()) return false;
        if (!isMine(id)) continue;
        const Drift drift = *yard_.drifts.find(id);
        gained = drift.pattern != Pattern::Matrix && (this->*turn)(drift);
        if (gained) break;
      }
    }
    return true;
  }
  [[nodiscard]] bool isSpare(const Drift& drift) const { return !task_.keepAll || !isLast(drift); }

  bool better(const Drift& drift) {
    const Id<Drift> id = drift.id;
    const bool spare = isSpare(drift);
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
  // Species that stand closer or wider, on the drift's own ground.
  bool regrown(const Drift& drift) {
    if (drift.layer != Layer::Main) return false;
    const bool spare = isSpare(drift);
    for (const FillKind& kind : task_.kinds) {
      if (!spare || spent() || !mayRegrow(drift, kind)) continue;
      const auto next = regrownAs(yard_, drift, kind);
      if (next && tryWith({*next})) return true;
    }
    for (const Id<Drift> id : mine_) {
      const Drift* other = yard_.drifts.find(id);
      if (spent() || other == nullptr || other->layer != drift.layer) continue;
      if (tradeGround(drift, *other)) return true;
    }
    return false;
  }
  static bool mayRegrow(const Drift& drift, const FillKind& kind) {
    return !kind.matrix && drift.pattern != Pattern::Matrix && !sameSpacing(drift, kind.spacing) &&
           kind.species->botanicalName != drift.species;
  }
  [[nodiscard]] const FillKind* kindOf(const Drift& drift) const {
    const auto found = std::find_if(task_.kinds.begin(), task_.kinds.end(), [&](const FillKind& k) {
      return k.species->botanicalName == drift.species;
    });
    return found == task_.kinds.end() ? nullptr : &*found;
  }
  bool tradeGround(const Drift& one, const Drift& other) {
    const FillKind* ofOne = kindOf(one);
    const FillKind* ofOther = kindOf(other);
    if (ofOne == nullptr || ofOther == nullptr || !mayRegrow(one, *ofOther) ||
        !mayRegrow(other, *ofOne))
      return false;
    const auto first = regrownAs(yard_, one, *ofOther);
    if (!first) return false;
    Yard half = yard_;
    half.drifts = half.drifts.with(*first);
    const auto second = regrownAs(half, other, *ofOne);
    return second && tryWith({*first, *second});
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
    if (!keepsShares(next) || ground_ - groundOf(next) > task_.spareGround + 1e-9) return false;
    ++tries_;
    if (task_.told) task_.told(std::min(1.0, static_cast<double>(tries_) / task_.mostTries));
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
  double ground_ = 0.0;         // square metres taken at first
  std::vector<double> counts_;  // at first
  int tries_ = 0;
  std::set<std::string> takers_;
};

}  // namespace

PlantingWorth exchangeSpecies(const ExchangeTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& yard, const WorkWatch& watch) {
  return Exchange(task, mine, yard, watch).run();
}

}  // namespace tussock
