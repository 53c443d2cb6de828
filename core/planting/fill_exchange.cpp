// SPDX-License-Identifier: MIT
#include "core/planting/fill_exchange.h"

#include <algorithm>

#include "core/planting/fill_held.h"
#include "core/planting/fill_random.h"
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
    const bool done = takeAllTurns();
    takeDetours();
    return {worth(), verdict_.cost, !done, takers_};
  }

 private:
  using Offer = bool (*)(const TradeRequest&, const Drift&, const TakeTrade&);

  [[nodiscard]] double worth() const { return score_ - kVerdictWeight * verdict_.cost; }
  [[nodiscard]] bool spent() const { return tries_ >= task_.mostTries || watch_.halt(); }
  [[nodiscard]] bool isMine(Id<Drift> id) const {
    return std::find(mine_.begin(), mine_.end(), id) != mine_.end();
  }

  bool takeAllTurns() {
    bool done = true;
    for (const Offer offer : {offerOthers, offerFewer, offerPartners, offerRegrown})
      done = done && takeTurns(offer);
    return done;
  }
  [[nodiscard]] TradeRequest trading() const {
    return {task_.kinds, mine_, yard_, task_.keepAll, mayPlant_};
  }
  // Each drift that something is found about gets its turn, again and again while something is
  // gained; false when not every turn was taken.
  bool takeTurns(Offer offer) {
    const TradeRequest request = trading();
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

  // Where no change by itself helps, one for the worse may open the way to several that do; what
  // does not come out better is taken back.
  void takeDetours() {
    Chance chance(task_.seed);
    for (int i = 0; i < task_.mostDetours && verdict_.cost > 0.0 && !spent(); ++i) {
      const Yard yard = yard_;
      const FillVerdict verdict = verdict_;
      const double score = score_;
      const std::set<std::string> takers = takers_;
      if (setOut(chance)) takeTurns(offerOthers), takeTurns(offerPartners);
      const double less = verdict.cost - verdict_.cost;
      if (less > 1e-9 && score - score_ < mayCost(less) - 1e-9) continue;
      yard_ = yard, verdict_ = verdict, score_ = score, takers_ = takers;
    }
  }
  // Takes any trade of a drift that something is found about, if it is not much worse.
  bool setOut(Chance& chance) {
    constexpr double kMostWorse = 3.0;  // in cost
    std::vector<Id<Drift>> concerned = verdict_.concerned;
    std::erase_if(concerned, [this](Id<Drift> id) { return !isMine(id); });
    if (concerned.empty()) return false;
    const Drift drift = *yard_.drifts.find(concerned[chance.below(concerned.size())]);
    std::vector<std::vector<Drift>> trades;
    const TakeTrade note = [&](const std::vector<Drift>& changed) {
      trades.push_back(changed);
      return false;
    };
    if (drift.pattern != Pattern::Matrix)
      offerOthers(trading(), drift, note), offerPartners(trading(), drift, note);
    if (trades.empty()) return false;
    return takeYard(changedBy(trades[chance.below(trades.size())]),
                    [](const Yard&, double less) { return less > -kMostWorse; });
  }
  [[nodiscard]] Yard changedBy(const std::vector<Drift>& changed) const {
    Yard next = yard_;
    for (const Drift& drift : changed) next.drifts = next.drifts.with(drift);
    return next;
  }
  // Keeps the change if the planting is worth more with it.
  bool tryWith(const std::vector<Drift>& changed) {
    return !spent() && tryYard(changedBy(changed));
  }
  // What the score may lose for so much less that is found. A share a little too large comes down
  // by a pair at a time, of which each hardly counts.
  static double mayCost(double less) {
    constexpr double kSmallStep = 0.0005, kPatience = 10.0;
    return kVerdictWeight * std::max(less, std::min(kPatience * less, kSmallStep / kVerdictWeight));
  }
  bool tryYard(Yard next) {
    return takeYard(std::move(next), [this](const Yard& yard, double less) {
      return less > 1e-9 && score_ - task_.score(yard) < mayCost(less) - 1e-9;
    });
  }
  // Where the yard holds what is held, and is `good` when so much less is found in it.
  template <class Good>
  bool takeYard(Yard next, Good good) {
    if (!held_.keptBy(next)) return false;
    ++tries_;
    if (task_.told) task_.told(std::min(1.0, static_cast<double>(tries_) / task_.mostTries));
    FillVerdict verdict = task_.judge(next);
    if (!good(next, verdict_.cost - verdict.cost)) return false;
    for (const Id<Drift> id : mine_)
      if (const Drift* drift = next.drifts.find(id);
          drift != nullptr && yard_.drifts.find(id)->species != drift->species)
        takers_.insert(drift->species);
    yard_ = std::move(next), verdict_ = std::move(verdict), score_ = task_.score(yard_);
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
  // Whether another drift may be planted to see how it would be.
  const std::function<bool()> mayPlant_ = [this] {
    return !spent() && planted_++ < task_.mostTries;
  };
};

}  // namespace

PlantingWorth exchangeSpecies(const ExchangeTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& yard, const WorkWatch& watch) {
  return Exchange(task, mine, yard, watch).run();
}

}  // namespace tussock
