// SPDX-License-Identifier: MIT
#include "core/planting/fill_improve.h"

#include <algorithm>

#include "core/planting/fill_held.h"
#include "core/planting/fill_regroup.h"
#include "core/planting/fill_score.h"
#include "core/planting/fill_sections.h"
#include "core/planting/planted_kinds.h"

namespace tussock {

namespace {

class Improvement {
 public:
  Improvement(const ImproveTask& task, const std::vector<Id<Drift>>& mine, Yard& planted,
              const WorkWatch& watch)
      : task_(task), mine_(mine), planted_(planted), watch_(watch) {}

  PlantingWorth run() {
    if (mine_.size() <= kManyDrifts || !task_.judgeOfSection) return whole(triesOfAll(), 0.0);
    (void)whole(1, 0.0);  // only as many species as can be changed at once
    const double sections = inSections();
    return whole(triesOfAll(), sections);
  }

 private:
  static constexpr double kSectionsShare = 0.7;  // of the work

  // Each try looks at the whole bed.
  [[nodiscard]] int triesOfAll() const {
    std::size_t plants = 1;
    for (const Id<Drift> id : mine_) plants += planted_.drifts.find(id)->plants.size();
    return static_cast<int>(std::clamp<std::size_t>(1'600'000 / plants, 60, 800));
  }

  PlantingWorth whole(int tries, double done) {
    const BedScorer scorer(planted_, task_.catalogue, task_.sun, task_.bed, task_.wildness,
                           task_.limits);
    const std::function<double(const Yard&)> score = [&](const Yard& yard) {
      return scorer.score(yard).total;
    };
    const auto regroup = [&](const Yard& yard) {
      Chance chance(task_.seed);
      return regrouped(
          {task_.catalogue, task_.bed, scorer.layout(), mine_, task_.limits, task_.wildness}, yard,
          chance, watch_);
    };
    const auto told = [&](double part) {
      if (task_.told) task_.told(done + (1.0 - done) * part);
    };
    const FillJudge judge = withNeighbours(task_.judge, scorer.layout());
    return exchangeSpecies({task_.kinds, judge, score, tries, task_.keepAll, task_.spareGround,
                            regroup, told, task_.mostDetours, task_.seed},
                           mine_, planted_, watch_);
  }

  // Drifts of one species that touch read as one: no check finds it, and nobody wants it.
  [[nodiscard]] FillJudge withNeighbours(const FillJudge& judge, const Layout& layout) const {
    constexpr std::size_t kFew = 5;  // species that do not part every two drifts
    if (task_.kinds.size() < kFew) return judge;
    return [this, &judge, &layout](const Yard& yard) {
      constexpr double kTouching = 0.5;  // half a hint
      FillVerdict verdict = judge(yard);
      const PlantedKinds now = plantedKinds(yard, task_.catalogue, task_.bed);
      if (now.drifts.size() != layout.touching.size()) return verdict;
      for (std::size_t i = 0; i < now.drifts.size(); ++i)
        for (const std::size_t other : layout.touching[i]) {
          if (other < i || now.assignment[other] != now.assignment[i]) continue;
          verdict.cost += kTouching;
          verdict.concerned.push_back(now.drifts[i]->id);
          verdict.concerned.push_back(now.drifts[other]->id);
        }
      return verdict;
    };
  }

  // The share of the work that this is.
  double inSections() {
    const auto sections = sectionsOf(planted_, mine_);
    const HeldPlanting held(task_.kinds, mine_, planted_, task_.spareGround, task_.keepAll);
    for (std::size_t i = 0; i < sections.size() && !watch_.halt(); ++i) {
      Yard next = changed(sections[i], 1.0 / static_cast<double>(sections.size()));
      if (held.keptBy(next)) planted_ = std::move(next);
      if (task_.told)
        task_.told(kSectionsShare * static_cast<double>(i + 1) /
                   static_cast<double>(sections.size()));
    }
    return kSectionsShare;
  }

  // The yard with what is better in one section, which may spend its part of the ground to spare.
  [[nodiscard]] Yard changed(const std::vector<Id<Drift>>& section, double part) const {
    constexpr int kMostTries = 200, kDetours = 6;
    Yard near = aroundSection(planted_, section, task_.limits.sight.hidesWithin);
    FillLimits limits = task_.limits;
    limits.shareMinPlants = 1e9;  // shares are those of the whole
    const BedScorer scorer(near, task_.catalogue, task_.sun, task_.bed, task_.wildness, limits);
    const std::function<double(const Yard&)> score = [&](const Yard& yard) {
      return scorer.score(yard).total;
    };
    const FillJudge judge = withNeighbours(task_.judgeOfSection, scorer.layout());
    exchangeSpecies({task_.kinds,
                     judge,
                     score,
                     kMostTries,
                     false,
                     part * task_.spareGround,
                     {},
                     {},
                     kDetours,
                     task_.seed},
                    section, near, watch_);
    Yard next = planted_;
    for (const Id<Drift> id : section)
      if (const Drift* drift = near.drifts.find(id); *drift != *next.drifts.find(id))
        next.drifts = next.drifts.with(*drift);
    return next;
  }

  const ImproveTask& task_;
  const std::vector<Id<Drift>>& mine_;
  Yard& planted_;
  const WorkWatch& watch_;
};

}  // namespace

PlantingWorth improvePlanting(const ImproveTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& planted, const WorkWatch& watch) {
  return Improvement(task, mine, planted, watch).run();
}

}  // namespace tussock
