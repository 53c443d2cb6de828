// SPDX-License-Identifier: MIT
#include "core/planting/fill.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/format.h>

#include "core/catalog/plan_codes.h"
#include "core/edit/draft.h"
#include "core/geometry/lattice.h"
#include "core/planting/arrangements.h"
#include "core/planting/drift_plants.h"
#include "core/planting/enlarge.h"
#include "core/planting/fill_gaps.h"
#include "core/planting/fill_improve.h"
#include "core/planting/fill_lacks.h"
#include "core/planting/fill_layer.h"
#include "core/planting/fill_list.h"
#include "core/planting/fill_rhythm.h"
#include "core/planting/fill_scatter.h"
#include "core/planting/fill_tries.h"
#include "core/planting/fill_under.h"
#include "core/planting/fill_words.h"
#include "core/planting/free_ground.h"
#include "core/planting/laid_flat.h"
#include "core/planting/refill.h"

namespace tussock {

namespace {

unsigned seedFor(int seed, int part) {
  return static_cast<unsigned>(seed) * 2654435761U + static_cast<unsigned>(part) * 40503U + 17U;
}

class Filling {
 public:
  Filling(const Yard& yard, const Catalogue& catalogue, const SunMap* sun,
          const FillRequest& request, const Bed& bed, WorkWatch& watch,
          const FillProgressCall& progress)
      : yard_(yard),
        catalogue_(catalogue),
        sun_(sun),
        request_(request),
        bed_(bed),
        watch_(watch),
        progress_(progress),
        wildness_(std::clamp(request.wildness.value_or(bed.wildness), 0.0, 1.0)),
        slope_(yard.settings),
        kept_(yard) {}

  FillResult run(IdSource& ids) {
    takeOut();
    const auto begun = std::chrono::steady_clock::now();
    list_ = listFor({flat_, catalogue_, sun(), flatBed(flat_), wildness_, request_});
    reserve(std::chrono::steady_clock::now() - begun);
    result_.notes = list_.notes;
    result_.plants = list_.plants;
    result_.suiting = list_.suiting;
    result_.proposed = list_.proposed;
    plantMain();
    tell(kMainShare, best_);
    addLayer(Layer::Ground, list_.ground);
    tell(0.5 * (kMainShare + 1.0), best_);
    addLayer(Layer::Bulbs, list_.bulbs);
    write(ids);
    return std::move(result_);
  }

 private:
  // The layers under the main one get their part of the time: its tries would use up all.
  void plantMain() {
    constexpr double kEachLayer = 0.1;  // of the time
    const WorkWatch all = watch_;
    const double layers = (list_.ground.empty() ? 0.0 : 1.0) + (list_.bulbs.empty() ? 0.0 : 1.0);
    watch_.reserveShare(kEachLayer * layers);
    best_ = bestMain();
    closeMatrices();
    result_.cutShort = watch_.overdue();
    watch_ = all;
  }
  void takeOut() {
    kept_ = withoutTakenOut(yard_, request_);
    flat_ = laidFlat(kept_);
    if (request_.what != FillWhat::OneSpecies) return;
    for (const Drift& drift : laidFlat(yard_).drifts)  // a matrix takes what others leave, anywhere
      if (takesOut(request_, drift) && drift.pattern != Pattern::Matrix) before_.push_back(drift);
  }
  // Planting what has grown when the time is up, scoring, checking and telling take about as long
  // as looking at the ground for the list did, and so much for each plant.
  void reserve(std::chrono::steady_clock::duration looked) {
    constexpr double kEach = 0.06;  // milliseconds
    const double spacing = meanSpacing(list_.main);
    const double plants = areaOf(flatBed(flat_).outline).squareMetres() / (spacing * spacing);
    watch_.reserve(std::chrono::duration_cast<std::chrono::milliseconds>(looked) +
                   std::chrono::milliseconds(std::lround(kEach * plants)));
  }
  [[nodiscard]] const Bed& flatBed(const Yard& flat) const { return *flat.beds.find(bed_.id); }
  [[nodiscard]] FillSun sun() const { return sunOn(slope_, sun_); }
  [[nodiscard]] std::vector<KeptDrift> onPlan(std::vector<KeptDrift> drifts) const {
    for (KeptDrift& drift : drifts)
      for (Point& place : drift.places) place = slope_.onPlan(place);
    return drifts;
  }

  [[nodiscard]] LayerTask taskFor(const Yard& yard, Layer layer,
                                  const std::vector<FillKind>& kinds) const {
    return {yard,  catalogue_, flatBed(yard), sun(),         layer,
            kinds, wildness_,  1.0,           request_.size, request_.limits};
  }

  // The work itself is told up to so much; what is left is scoring and writing.
  static constexpr double kMainShare = 0.9;
  static constexpr int kMostDetours = 24;  // from the best, where something is found in it

  // Where the time may be up before the work is done, the share is that of the time.
  void tell(double share, const std::vector<KeptDrift>& best,
            std::vector<KeptDrift> grown = {}) const {
    if (!progress_ || watch_.cancelled()) return;
    share_ = std::max({share_, share, kMainShare * std::min(1.0, watch_.timeUsed())});
    progress_({share_, best, std::move(grown), &result_});
  }
  // Several tries, the best kept: as many as a small bed takes in a moment.
  std::vector<KeptDrift> bestMain() {
    full_ = !list_.main.empty() && isFull();
    if (list_.main.empty() || full_) return {};
    const double spacing = leastSpacing(list_.main);
    FillGround ground(flat_, flatBed(flat_), Layer::Main, spacing,
                      cellSizeFor(bed_, meanSpacing(list_.main)));
    ground.lookAt(sun(), request_.limits.sight);
    ground.setToTake(groundLeft(flat_, flatBed(flat_), meanSpacing(list_.main)));
    const FillTries tries = triesFor(ground.area() / std::pow(meanSpacing(list_.main), 2.0));
    LayerTask task = taskFor(flat_, Layer::Main, list_.main);
    for (int i = 0; goesOn(tries, i); ++i) {
      tryMain(task, ground, tries, i);
      if (watch_.cancelled()) return {};
      tell(kMainShare * tries.share(i + 1), best_);
      if (watch_.overdue()) break;
      // Planned for a little less, what is planned finds room more surely.
      task.cover = i % 2 == 0 ? 0.97 : 1.0;
      task.blunt = i + 1 >= tries.planned;
      task.rhythm = i + 1 < tries.planned || i % 3 != 0;  // it may be what stands in the way
    }
    if (found_ > 0.0 && best_.size() <= kManyDrifts)
      result_.takers.merge(improved(best_, again_, ground.toTake(), {}, kMostDetours).takers);
    return best_;
  }
  [[nodiscard]] bool goesOn(const FillTries& tries, int i) const {
    return i < tries.planned ||
           (lacking_ && i < tries.most && i <= lastBetter_ + FillTries::kPatience);
  }
  // One of the tries, kept if it is better than those before.
  void tryMain(LayerTask& task, const FillGround& ground, const FillTries& tries, int i) {
    constexpr double kPlantedAt = 0.7;  // of a try; the rest is exchanging species
    Chance chance(seedFor(request_.seed, i));
    if (progress_)
      task.told = [&](double part, std::vector<KeptDrift> grown) {
        if (!best_.empty()) grown.clear();
        tell(kMainShare * tries.share(i + kPlantedAt * part), {}, onPlan(std::move(grown)));
      };
    LayerPlanting grown = oneTry(task, ground, chance);
    std::vector<KeptDrift> next = onPlan(std::move(grown.drifts));
    // What follows takes long in a large bed.
    if (best_.empty()) tell(kMainShare * tries.share(i + kPlantedAt), next);
    // What is cut short is not judged, and so no match for what was.
    if (watch_.cancelled() || (watch_.halt() && !best_.empty())) return;
    const PlantingWorth improvement =
        improved(next, grown.again, ground.toTake(), [&](double part) {
          tell(kMainShare * tries.share(i + kPlantedAt + (1.0 - kPlantedAt) * part), {});
        });
    PlantingLacks lacks = lacksOf(next, wanted(), sharesOf(next, ground), watch_);
    const double worth = improvement.worth - lacks.cost - (task.rhythm ? 0.0 : lackOfRhythm());
    if (worth <= most_) return;
    most_ = worth, lastBetter_ = i, best_ = std::move(next), again_ = std::move(grown.again);
    result_.untried = improvement.untried, result_.takers = improvement.takers;
    found_ = improvement.found, lacking_ = found_ > 0.0 || lacks.any;
    missing_ = std::move(lacks.missing);
  }
  [[nodiscard]] GroundShares sharesOf(const std::vector<KeptDrift>& drifts,
                                      const FillGround& ground) const {
    if (!before_.empty()) return {shareRefilled(drifts), 1.0};
    const double taken = groundTakenBy(drifts) / std::max(1e-6, ground.toTake());
    return {taken, watch_.halt() ? 1.0 : coveredBy(drifts, ground, flat_, bed_.id)};
  }
  // In the layer of the task.
  [[nodiscard]] LayerPlanting oneTry(const LayerTask& task, const FillGround& ground,
                                     Chance& chance) const {
    return before_.empty() ? fillLayer(task, ground, chance, watch_)
                           : LayerPlanting{refilled(task, ground, before_, chance, watch_)};
  }
  // Off the score of a formal bed: less than a hint.
  [[nodiscard]] double lackOfRhythm() const { return wildness_ > kLeastWildRhythm ? 0.0 : 0.02; }
  [[nodiscard]] double shareRefilled(const std::vector<KeptDrift>& drifts) const {
    return static_cast<double>(plantsIn(drifts)) / std::max(1, countToRefill(before_));
  }
  bool isFull() {
    if (request_.what != FillWhat::EmptyPart) return false;
    const auto taken = takenWithoutGaps(kept_, flat_, bed_.id, meanSpacing(list_.main));
    if (!taken) return false;
    result_.notes = {fmt::format(
        "There is no room left for a group of the main layer: it takes {:.0f} % of the ground.",
        *taken * 100.0)};
    return true;
  }
  // What is to be planted at all costs: in gaps there is not room for everything, and a list of
  // ours may give up a species for a better bed.
  [[nodiscard]] std::vector<FillKind> wanted() const {
    const bool open = request_.what == FillWhat::EmptyPart || list_.proposed;
    return open ? std::vector<FillKind>() : list_.main;
  }
  [[nodiscard]] double scoreOf(const Yard& planted) const {
    return scoreBed(planted, catalogue_, sun_, bed_.id, wildness_, request_.limits).total;
  }
  // All but the drifts of the species `again` may change.
  [[nodiscard]] PlantingWorth improved(std::vector<KeptDrift>& drifts, const std::string& again,
                                       double area, const std::function<void(double)>& told,
                                       int detours = 0) const {
    IdSource ids(largestId(yard_) + 1);
    std::vector<Id<Drift>> mine, changing;
    if (watch_.halt() && best_.empty()) return {};  // there is nothing to compare with
    Yard planted = withDrifts(drifts, ids, &mine).yard();
    if (!request_.judge || watch_.halt()) return {scoreOf(planted), 0.0};
    for (std::size_t i = 0; i < mine.size(); ++i)
      if (drifts[i].species != again) changing.push_back(mine[i]);
    const PlantingWorth worth = improvePlanting(
        {catalogue_, sun_, bed_.id, wildness_, request_.limits, list_.main, request_.judge,
         request_.judgeOfSection, !wanted().empty(), spareGround(groundTakenBy(drifts), area),
         seedFor(request_.seed, 50), detours, told},
        changing, planted, watch_);
    for (std::size_t i = 0; i < drifts.size(); ++i) {
      const Drift& drift = *planted.drifts.find(mine[i]);
      drifts[i].species = drift.species;
      drifts[i].spacing = drift.spacing;
      drifts[i].places = positionsOf(drift);
    }
    return worth;
  }

  // In gaps, which no planting fills well, a pair less is better than a species too many.
  [[nodiscard]] double spareGround(double taken, double area) const {
    constexpr double kInGaps = 0.3;
    const double least = request_.what == FillWhat::EmptyPart ? kInGaps * taken : 0.0;
    return std::max(least, taken - kLeastGroundTaken * area);
  }

  // A matrix plant also takes the holes that the drifts of larger plants left.
  void closeMatrices() {
    for (std::size_t i = 0; i < best_.size() && !watch_.halt(); ++i) {
      if (best_[i].pattern != Pattern::Matrix) continue;
      IdSource ids(largestId(yard_) + 1);
      std::vector<Id<Drift>> mine;
      const Yard planted = withDrifts(best_, ids, &mine).yard();
      const GrowRequest request = requestFor(*planted.drifts.find(mine[i]), kAsManyAsFit);
      best_[i].places = enlarged(planted, request, std::move(best_[i].places));
    }
  }

  void addLayer(Layer layer, const std::vector<FillKind>& kinds) {
    if (kinds.empty() || watch_.halt()) return;
    IdSource ids(largestId(yard_) + 1);
    const Yard planted = laidFlat(withDrifts(best_, ids).yard());
    LayerTask task = taskFor(planted, layer, kinds);
    task.wildness *= 0.5;  // a calm floor
    FillGround ground(planted, flatBed(planted), layer, leastSpacing(kinds),
                      cellSizeFor(bed_, meanSpacing(kinds)));
    ground.lookAt(sun(), request_.limits.sight);
    Chance chance(seedFor(request_.seed, 100 + static_cast<int>(layer)));
    const double asked = plantsUnder(list_, layer, inMainLayer());
    const double plants = asked - standingIn(layer);
    if (before_.empty())
      keepSomeGround(ground, plants,
                     triangularGround(Length::metres(meanSpacing(kinds))).squareMetres(), chance);
    if (list_.proposed && (plants <= 0.0 || (full_ && standingIn(layer) > 0.0))) return;
    std::vector<KeptDrift> some = onPlan(oneTry(task, ground, chance).drifts);
    if (before_.empty()) some = scattered(std::move(some), ofEach(kinds, asked), ground, chance);
    for (KeptDrift& drift : some) best_.push_back(std::move(drift));
  }
  // Plants of a layer that are kept.
  [[nodiscard]] double standingIn(Layer layer) const {
    double plants = 0.0;
    for (const Drift& drift : kept_.drifts)
      if (drift.bed == bed_.id && drift.layer == layer)
        plants += static_cast<double>(drift.plants.size());
    return plants;
  }
  // Of each species of a layer, less what stands there.
  [[nodiscard]] std::map<std::string, double> ofEach(const std::vector<FillKind>& kinds,
                                                     double plants) const {
    std::map<std::string, double> each = plantsOfEach(kinds, plants);
    for (const Drift& drift : kept_.drifts)
      if (const auto own = each.find(drift.species); drift.bed == bed_.id && own != each.end())
        own->second -= static_cast<double>(drift.plants.size());
    return each;
  }
  [[nodiscard]] double inMainLayer() const {
    double main = standingIn(Layer::Main);
    for (const KeptDrift& drift : best_)
      if (drift.layer == Layer::Main) main += static_cast<double>(drift.places.size());
    return main;
  }
  // Tells the ids of the drifts if asked.
  [[nodiscard]] Draft withDrifts(const std::vector<KeptDrift>& drifts, IdSource& ids,
                                 std::vector<Id<Drift>>* tell = nullptr) const {
    Draft draft(kept_);
    for (const KeptDrift& kept : drifts) {
      takeCode(draft, kept.species, ids);
      Drift drift = planted(kept, bed_.id, ids);
      if (tell != nullptr) tell->push_back(drift.id);
      draft.put(std::move(drift));
    }
    return draft;
  }

  void write(IdSource& ids) {
    std::set<std::string> species;
    for (const KeptDrift& drift : best_) {
      result_.planted += static_cast<int>(drift.places.size());
      species.insert(drift.species);
    }
    result_.drifts = best_.size(), result_.species = species.size();
    result_.cutShort = result_.cutShort || watch_.overdue();
    if (result_.cutShort) result_.notes.emplace_back(kTimeUp);
    if (best_.empty()) return tellNothingFits();
    if (const int asked = countToRefill(before_); result_.planted < asked)
      result_.notes.push_back(fewerAnew(result_.planted, asked, request_.species));
    if (!missing_.empty()) result_.notes.push_back(noRoomFor(missing_, catalogue_));
    tellUnderneath();
    const auto instead = [this](const Drift& drift) { return takesOut(request_, drift); };
    const std::string label = labelOf(request_, bed_, catalogue_);
    result_.edit = plantKept(yard_, bed_.id, best_, instead, label, ids);
    result_.unchanged = result_.edit.empty();
    if (result_.unchanged) result_.notes.emplace_back(kStandsSo);
    result_.score =
        scoreBed(apply(yard_, result_.edit), catalogue_, sun_, bed_.id, wildness_, request_.limits);
    tell(1.0, best_);
  }

  // What is listed for under the main layer and is not there.
  void tellUnderneath() {
    if (list_.proposed || request_.what != FillWhat::WholeBed) return;
    std::vector<FillKind> under = list_.ground;
    under.insert(under.end(), list_.bulbs.begin(), list_.bulbs.end());
    const std::vector<const Species*> missing = missingFrom(best_, under);
    if (missing.empty()) return;
    result_.notes.push_back(watch_.overdue() ? noTimeFor(missing, catalogue_)
                                             : noRoomFor(missing, catalogue_));
  }

  void tellNothingFits() {
    const bool inGaps = request_.what == FillWhat::EmptyPart && !full_ && !list_.main.empty();
    if (result_.notes.empty() || inGaps)
      result_.notes.push_back(noneFits(request_, bed_, list_, yard_.settings.units));
  }

  const Yard& yard_;
  const Catalogue& catalogue_;
  const SunMap* sun_;
  const FillRequest& request_;
  const Bed& bed_;
  WorkWatch& watch_;
  const FillProgressCall& progress_;
  double wildness_;
  Slope slope_;
  Yard kept_;                  // without what is taken out
  bool full_ = false;          // only the gaps are asked for, and there are none
  Yard flat_;                  // the same, laid flat: placing is done there
  std::vector<Drift> before_;  // what is to be planted anew where it stood, laid flat
  FillList list_;
  std::vector<KeptDrift> best_;
  std::string again_;                    // in the best, see LayerPlanting
  double most_ = -1e9;                   // what the best is worth
  int lastBetter_ = 0;                   // the try that it came from
  double found_ = 0.0;                   // in the best
  bool lacking_ = false;                 // something is found, or it takes too little
  std::vector<const Species*> missing_;  // of the list, from the best
  FillResult result_;
  mutable double share_ = 0.0;  // told so far
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
  WorkWatch watch(std::move(stop), request.timeLimit.value_or(usualTimeFor(areaOf(bed->outline))));
  FillResult result = Filling(yard, catalogue, sun, request, *bed, watch, progress).run(ids);
  if (watch.cancelled()) return std::nullopt;
  return result;
}

}  // namespace tussock
