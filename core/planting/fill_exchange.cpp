// SPDX-License-Identifier: MIT
#include "core/planting/fill_exchange.h"

#include <algorithm>

#include "core/planting/fill_held.h"
#include "core/planting/fill_trades.h"

namespace tussock {

namespace {

class Exchange {
 public:
  Exchange(const ExchangeTask& task, const std::vector<Id<Drift>>& mine, Yard& yard,
           const WorkWatch& watch)
      : task_(task),
        mine_(mine),
        yard_(yard),
        watch_(watch),
        held_(task.kinds, mine, yard, task.spareGround, task.keepAll),
        verdict_(task.judge(yard)),
        score_(task.score(yard)) {}

  PlantingWorth run() {
    if (verdict_.cost > 0.0 && task_.regrouped && !spent()) (void)tryYard(task_.regrouped(yard_));
    bool done = true;
    for (const Offer offer : {offerOthers, offerFewer, offerPartners, offerRegrown})
      done = done && takeTurns(offer);
    return {worth(), verdict_.cost, !done, takers_};
  }

 private:
  using Offer = bool (*)(const TradeRequest&, const Drift&, const TakeTrade&);

  [[nodiscard]] double worth() const { return score_ - kVerdictWeight * verdict_.cost; }
  [[nodiscard]] bool spent() const { return tries_ >= task_.mostTries || watch_.halt(); }
  [[nodiscard]] bool isMine(Id<Drift> id) const {
    return std::find(mine_.begin(), mine_.end(), id) != mine_.end();
  }

  // Each drift that something is found about gets its turn, again and again while something is
  // gained; false when not every turn was taken.
  bool takeTurns(Offer offer) {
    const std::function<bool()> mayPlant = [this] {
      return !spent() && planted_++ < task_.mostTries;
    };
    const TradeRequest request{task_.kinds, mine_, yard_, task_.keepAll, mayPlant};
    const TakeTrade take = [this](const std::vector<Drift>& changed) { return tryWith(changed); };
    for (bool gained = true; gained && verdict_.cost > 0.0;) {
      gained = false;
      const std::vector<Id<Drift>> concerned = verdict_.concerned;
      for (const Id<Drift> id : concerned) {
        if (spent()) return false;
        if (!isMine(id)) continue;
        const Drift drift = *yard_.drifts.find(id);
        gained = drift.pattern != Pattern::Matrix && offer(request, drift, take);
        if (gained) break;
      }
    }
    return true;
  }
  // Keeps the change if the planting is worth more with it.
  bool tryWith(const std::vector<Drift>& changed) {
    if (spent()) return false;
    Yard next = yard_;
    for (const Drift& drift : changed) next.drifts = next.drifts.with(drift);
    return tryYard(std::move(next));
  }
  // What the score may lose for so much less that is found. A share a little too large comes down
  // by a pair at a time, of which each hardly counts.
  static double mayCost(double less) {
    constexpr double kSmallStep = 0.0005, kPatience = 10.0;
    return kVerdictWeight * std::max(less, std::min(kPatience * less, kSmallStep / kVerdictWeight));
  }
  bool tryYard(Yard next) {
    if (!held_.keptBy(next)) return false;
    ++tries_;
    if (task_.told) task_.told(std::min(1.0, static_cast<double>(tries_) / task_.mostTries));
    FillVerdict verdict = task_.judge(next);
    if (verdict.cost >= verdict_.cost - 1e-9) return false;
    const double score = task_.score(next);
    if (score_ - score >= mayCost(verdict_.cost - verdict.cost) - 1e-9) return false;
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
  HeldPlanting held_;
  FillVerdict verdict_;
  double score_;
  int tries_ = 0;
  int planted_ = 0;  // drifts, to see how they would be
  std::set<std::string> takers_;
};

}  // namespace

PlantingWorth exchangeSpecies(const ExchangeTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& yard, const WorkWatch& watch) {
  return Exchange(task, mine, yard, watch).run();
}

}  // namespace tussock
