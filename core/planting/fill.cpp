// SPDX-License-Identifier: MIT
#include "core/planting/fill.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/catalog/plan_codes.h"
#include "core/geometry/lattice.h"
#include "core/planting/arrangements.h"
#include "core/planting/fill_exchange.h"
#include "core/planting/fill_layer.h"
#include "core/planting/fill_list.h"

namespace tussock {

namespace {

unsigned seedFor(int seed, int part) {
  return static_cast<unsigned>(seed) * 2654435761U + static_cast<unsigned>(part) * 40503U + 17U;
}

class Filling {
 public:
  Filling(const Yard& yard, const Catalogue& catalogue, const SunMap* sun,
          const FillRequest& request, const Bed& bed, const WorkWatch& watch,
          const FillProgressCall& progress)
      : yard_(yard),
        catalogue_(catalogue),
        sun_(sun),
        request_(request),
        bed_(bed),
        watch_(watch),
        progress_(progress),
        wildness_(std::clamp(request.wildness.value_or(bed.wildness), 0.0, 1.0)),
        kept_(yard) {}

  FillResult run(IdSource& ids) {
    takeOut();
    list_ = listFor({kept_, catalogue_, sun_, bed_, wildness_, request_});
    result_.notes = list_.notes;
    result_.plants = list_.plants;
    result_.proposed = list_.proposed;
    best_ = bestMain();
    addLayer(Layer::Ground, list_.ground);
    addLayer(Layer::Bulbs, list_.bulbs);
    write(ids);
    return std::move(result_);
  }

 private:
  [[nodiscard]] bool takesOut(const Drift& drift) const {
    if (drift.bed != bed_.id || !isFree(drift)) return false;
    switch (request_.what) {
      case FillWhat::WholeBed:
        return true;
      case FillWhat::EmptyPart:
        return false;
      case FillWhat::OneSpecies:
        return drift.species == request_.species;
    }
    return false;
  }
  void takeOut() {
    Draft draft(yard_);
    for (const Drift& drift : yard_.drifts)
      if (takesOut(drift)) draft.remove(drift.id);
    kept_ = draft.yard();
  }

  [[nodiscard]] LayerTask taskFor(const Yard& yard, Layer layer,
                                  const std::vector<FillKind>& kinds) const {
    LayerTask task{yard,  catalogue_, bed_, sun_,          layer,
                   kinds, wildness_,  1.0,  request_.size, request_.limits};
    return task;
  }

  void tell(double share) const {
    if (progress_) progress_({share, best_});
  }

  // Several tries, the best kept: as many as a small bed takes in a moment.
  std::vector<KeptDrift> bestMain() {
    if (list_.main.empty()) return {};
    const double spacing = smallestSpacing(list_.main);
    FillGround ground(kept_, bed_, Layer::Main, spacing,
                      cellSizeFor(bed_, meanSpacing(list_.main)));
    ground.lookAt(sun_, request_.limits.sight);
    const int tries = triesFor(ground, list_.main);
    double most = -1e9;
    LayerTask task = taskFor(kept_, Layer::Main, list_.main);
    double found = 0.0;
    // Twice as many while something is still found in the best.
    for (int i = 0; i < tries || (found > 0.0 && i < 2 * tries); ++i) {
      Chance chance(seedFor(request_.seed, i));
      std::vector<KeptDrift> next = fillLayer(task, ground, chance, watch_);
      if (watch_.cancelled()) return {};
      const double taken = takenBy(next, ground);
      const PlantingWorth improvement = improved(next);
      const double worth = improvement.worth - 1.5 * std::max(0.0, kTaken - taken);
      if (worth > most) most = worth, found = improvement.found, best_ = std::move(next);
      tell(std::min(0.9, 0.9 * (i + 1) / tries));
      if (watch_.overdue()) break;
      // Planned for a little less, what is planned finds room more surely.
      task.cover = i % 2 == 0 ? 0.97 : 1.0;
    }
    return best_;
  }
  static constexpr double kTaken = 0.97;  // of the ground, that a fill strives for
  static double takenBy(const std::vector<KeptDrift>& drifts, const FillGround& ground) {
    double taken = 0.0;
    for (const KeptDrift& drift : drifts)
      taken +=
          static_cast<double>(drift.places.size()) * triangularGround(drift.spacing).squareMetres();
    return taken / std::max(1e-6, ground.area());
  }
  static int triesFor(const FillGround& ground, const std::vector<FillKind>& kinds) {
    const double plants = ground.area() / std::pow(meanSpacing(kinds), 2.0);
    return std::clamp(static_cast<int>(1'200.0 / std::max(plants, 1.0)), 2, 6);
  }
  static double smallestSpacing(const std::vector<FillKind>& kinds) {
    double least = 1e9;
    for (const FillKind& kind : kinds) least = std::min(least, kind.spacing);
    return least;
  }
  [[nodiscard]] double scoreOf(const Yard& planted) const {
    return scoreBed(planted, catalogue_, sun_, bed_.id, wildness_, request_.limits).total;
  }
  // Exchanges species where something is found.
  [[nodiscard]] PlantingWorth improved(std::vector<KeptDrift>& drifts) const {
    IdSource ids(largestId(yard_) + 1);
    std::vector<Id<Drift>> mine;
    Yard planted = withDrifts(drifts, ids, &mine).yard();
    if (!request_.judge || watch_.halt()) return {scoreOf(planted), 0.0};
    const std::function<double(const Yard&)> score = [this](const Yard& yard) {
      return scoreOf(yard);
    };
    const int tries = std::clamp(static_cast<int>(60'000 / (drifts.size() + 20)), 60, 800);
    const PlantingWorth worth =
        exchangeSpecies({list_.main, request_.judge, score, tries}, mine, planted, watch_);
    for (std::size_t i = 0; i < drifts.size(); ++i)
      drifts[i].species = planted.drifts.find(mine[i])->species;
    return worth;
  }

  void addLayer(Layer layer, const std::vector<FillKind>& kinds) {
    if (kinds.empty() || watch_.halt()) return;
    IdSource ids(largestId(yard_) + 1);
    const Yard planted = withDrifts(best_, ids).yard();
    LayerTask task = taskFor(planted, layer, kinds);
    FillGround ground(planted, bed_, layer, smallestSpacing(kinds),
                      cellSizeFor(bed_, meanSpacing(kinds)));
    ground.lookAt(sun_, request_.limits.sight);
    Chance chance(seedFor(request_.seed, 100 + static_cast<int>(layer)));
    for (KeptDrift& drift : fillLayer(task, ground, chance, watch_))
      best_.push_back(std::move(drift));
  }

  // Tells the ids of the drifts if asked.
  [[nodiscard]] Draft withDrifts(const std::vector<KeptDrift>& drifts, IdSource& ids,
                                 std::vector<Id<Drift>>* tell = nullptr) const {
    Draft draft(yard_);
    for (const Drift& drift : yard_.drifts)
      if (takesOut(drift)) draft.remove(drift.id);
    for (const KeptDrift& kept : drifts) {
      takeCode(draft, kept.species, ids);
      Drift drift = planted(kept, bed_.id, ids);
      if (tell != nullptr) tell->push_back(drift.id);
      draft.put(std::move(drift));
    }
    return draft;
  }

  void write(IdSource& ids) {
    for (const KeptDrift& drift : best_) result_.planted += static_cast<int>(drift.places.size());
    result_.cutShort = watch_.overdue();
    if (result_.cutShort)
      result_.notes.push_back(
          "The time was up before all was tried. Allow more time for a better filling.");
    if (best_.empty()) return;
    const Draft draft = withDrifts(best_, ids);
    result_.score = scoreBed(draft.yard(), catalogue_, sun_, bed_.id, wildness_, request_.limits);
    result_.edit = draft.finish(bed_.name.empty() ? "Fill bed" : fmt::format("Fill {}", bed_.name));
    tell(1.0);
  }

  const Yard& yard_;
  const Catalogue& catalogue_;
  const SunMap* sun_;
  const FillRequest& request_;
  const Bed& bed_;
  const WorkWatch& watch_;
  const FillProgressCall& progress_;
  double wildness_;
  Yard kept_;  // without what is taken out
  FillList list_;
  std::vector<KeptDrift> best_;
  FillResult result_;
};

}  // namespace

std::optional<FillResult> fillBed(const Yard& yard, const Catalogue& catalogue, const SunMap* sun,
                                  const FillRequest& request, IdSource& ids, std::stop_token stop,
                                  const FillProgressCall& progress) {
  const Bed* bed = yard.beds.find(request.bed);
  if (bed == nullptr) {
    FillResult none;
    none.notes.push_back("There is no such bed. Choose one of the yard's beds.");
    return none;
  }
  const WorkWatch watch(std::move(stop), request.timeLimit);
  FillResult result = Filling(yard, catalogue, sun, request, *bed, watch, progress).run(ids);
  if (watch.cancelled()) return std::nullopt;
  return result;
}

}  // namespace tussock
