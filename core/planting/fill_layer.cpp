// SPDX-License-Identifier: MIT
#include "core/planting/fill_layer.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <set>

#include "core/planting/bed_grain.h"
#include "core/planting/fill_anneal.h"
#include "core/planting/fill_caps.h"
#include "core/planting/fill_knit.h"
#include "core/planting/fill_plant.h"
#include "core/planting/fill_quota.h"
#include "core/planting/fill_rhythm.h"
#include "core/planting/fill_spots.h"
#include "core/planting/fill_standing.h"
#include "core/planting/plant_count.h"
#include "core/units/date.h"

namespace tussock {

namespace {

// Of the free ground that the plants take: edges and seams cost some, and a bed that is filled
// takes what the triangular tables give.
constexpr double kDensity = 0.985;

// How the drifts of a fill lie: their slant, length and liveliness.
struct Manner {
  BedGrain grain;
  Angle lean;            // to the grain
  double apart = 0.0;    // radians that leans differ by, to each side
  double stretch = 3.2;  // on average
  double bend = 0.5;
};

// In a narrow bed drifts lie flatter, so that they run past each other.
Manner mannerFor(const LayerTask& task, Chance& chance) {
  Manner manner{BedGrain(task.bed), {}};
  const bool flat = manner.grain.narrow() && !task.blunt;
  const Angle lean = Angle::degrees(flat ? 22 : 30);
  manner.lean = chance.share() < 0.5 ? lean : -lean;
  manner.apart = (0.06 + 0.16 * task.wildness) * (flat ? 0.5 : 1.0);
  manner.stretch = flat ? 4.0 : manner.grain.narrow() ? 2.6 : 3.3;
  manner.bend = 0.35 + 0.9 * task.wildness;
  return manner;
}

class LayerFill {
 public:
  LayerFill(const LayerTask& task, const FillGround& ground, Chance& chance, const WorkWatch& watch)
      : task_(task),
        ground_(ground),
        chance_(chance),
        watch_(watch),
        manner_(mannerFor(task, chance)) {
    for (const Drift* drift : driftsIn(task.yard, task.bed.id))
      if (drift->layer == Layer::Main && task.layer == Layer::Main && !drift->plants.empty())
        if (const Species* species = task.catalogue.find(drift->species))
          kept_.push_back(drift), keptSpecies_.push_back(species);
  }

  std::vector<KeptDrift> run() {
    plan();
    if (planned_.empty()) return {};
    tell(0.02);
    spread();
    setOutRhythm();
    tell(0.06);
    hand(2.5, 1e9);
    shareAnew(18);
    setOutRhythm();
    tell(0.2);
    hand(1.5, 1.5);
    shareAnew(12);
    setOutRhythm();
    knitTogether();
    tell(0.28);
    hand(0.8, 1.25);
    shareAnew(10);
    knitTogether();
    hand(0.4, 1.15);
    tell(0.36);
    partMasses();
    tell(kUntilPlanted);
    return plant();
  }
  [[nodiscard]] std::string again() const {
    return again_ ? task_.kinds[*again_].species->botanicalName : std::string();
  }

 private:
  static constexpr double kUntilPlanted = 0.42;  // of the time that all takes

  // Shares of the time that large beds take.
  void tell(double share) const {
    if (task_.told) task_.told(share, keptDrifts(sketched()));
  }
  // For the eye: a plant on each place of a lattice that lies in a drift's cell.
  [[nodiscard]] DriftPlaces sketched() const {
    DriftPlaces places(planned_.size());
    for (std::size_t i = 0; i < owners_.size(); ++i) {
      if (owners_[i] < 0) continue;
      const auto spot = static_cast<std::size_t>(owners_[i]);
      const double spacing = task_.kinds[planned_[drifts_[spot]].kind].spacing;
      const Point place = latticePlaceNear(ground_.cells()[i].at, spacing);
      if (ground_.at(place) == static_cast<int>(i)) places[spot].push_back(place);
    }
    return places;
  }
  static Point latticePlaceNear(Point p, double spacing) {
    const double apart = spacing * std::numbers::sqrt3 / 2.0;
    const double row = std::round(p.y / apart);
    const double shift = std::fmod(row, 2.0) == 0.0 ? 0.0 : spacing / 2.0;
    return {std::round((p.x - shift) / spacing) * spacing + shift, row * apart};
  }
  void plan() {
    const double area = ground_.area() * kDensity * task_.cover;
    const StandingPlants standing = standingIn(task_.yard, task_.catalogue, task_.kinds);
    const Quota quota =
        task_.one ? quotaOfOne() : quotaFor(task_.kinds, area, standing, task_.limits);
    if (task_.one)
      planned_ = {PlannedDrift{0, *task_.one}};
    else
      planDrifts({task_.kinds, quota, standing, area, task_.wildness, task_.limits,
                  task_.rhythm && task_.layer == Layer::Main});
    caps_.emplace(task_.kinds, standing, quota, task_.limits);
    std::vector<const Species*> all;
    for (const FillKind& kind : task_.kinds) all.push_back(kind.species);
    all.insert(all.end(), keptSpecies_.begin(), keptSpecies_.end());
    kinds_ = kindsOf(all, task_.yard.settings);
  }

  void planDrifts(const DriftsRequest& request) {
    planned_ = driftsFor(request, chance_);
    again_ = rhythmKind(request);
  }
  [[nodiscard]] Quota quotaOfOne() const {
    Quota quota;
    quota.plants.assign(task_.kinds.size(), 0.0);
    quota.plants.front() = quota.total = quota.most = *task_.one;
    return quota;
  }

  [[nodiscard]] double groundFor(std::size_t drift) const {
    return planned_[drift].count * task_.kinds[planned_[drift].kind].ground;
  }
  [[nodiscard]] DriftCell cellAt(Point middle) {
    DriftCell cell;
    cell.middle = middle;
    cell.lean = manner_.lean + Angle::radians(chance_.between(-manner_.apart, manner_.apart));
    stretches_.push_back(manner_.stretch * chance_.between(0.85, 1.25));
    return cell;
  }
  [[nodiscard]] Angle axisOf(std::size_t spot) const {
    return manner_.grain.at(cells_[spot].middle) + cells_[spot].lean;
  }
  // A few plants drawn out long would stand in single file: they make a clump.
  [[nodiscard]] double stretchFor(std::size_t spot) const {
    constexpr double kLeastWidth = 1.55;  // spacings; area n √3/2, width squared times stretch
    const double most = planned_[drifts_[spot]].count * 0.866 / (kLeastWidth * kLeastWidth);
    return std::min(stretches_[spot], std::max(1.5, most));
  }

  // Middles all over the bed, low drifts towards the viewers.
  void spread() {
    const Angle axis = manner_.grain.at(ground_.box().centre()) + manner_.lean;
    const double stretch = manner_.grain.bends() ? 1.0 : manner_.stretch;
    auto middles = spreadMiddles(ground_, planned_.size(), axis, stretch, chance_);
    drifts_.resize(planned_.size());
    std::iota(drifts_.begin(), drifts_.end(), std::size_t{0});
    std::vector<double> heights, depths;
    for (const PlannedDrift& drift : planned_)
      heights.push_back(task_.kinds[drift.kind].seen.height + chance_.between(0.0, 0.05));
    std::stable_sort(drifts_.begin(), drifts_.end(),
                     [&](std::size_t a, std::size_t b) { return heights[a] < heights[b]; });
    std::stable_sort(middles.begin(), middles.end(), [&](Point a, Point b) {
      return ground_.toViewersAt(a) < ground_.toViewersAt(b);
    });
    for (const Point middle : middles) cells_.push_back(cellAt(middle));
    const double size = ground_.area() / static_cast<double>(planned_.size());
    sharing_.emplace(ground_, manner_.grain, manner_.bend, std::sqrt(size * manner_.stretch),
                     chance_);
    share(16);
  }
  // Where the cells have come to lie by now.
  void setOutRhythm() {
    if (!again_ || !mayHand()) return;
    std::vector<Point> middles;
    for (const DriftCell& cell : cells_) middles.push_back(cell.middle);
    inRhythm_ = setRhythm({ground_, middles, planned_, *again_}, drifts_, chance_);
    share(8);
  }

  void share(int rounds) {
    double all = 0.0;
    for (std::size_t i = 0; i < planned_.size(); ++i) all += groundFor(i);
    for (std::size_t spot = 0; spot < cells_.size(); ++spot) {
      cells_[spot].area = groundFor(drifts_[spot]) * ground_.area() / all;
      cells_[spot].stretch = stretchFor(spot);
      const double fair = cells_[spot].area / std::numbers::pi;
      if (cells_[spot].weight == 0.0) cells_[spot].weight = fair;
    }
    owners_ = sharing_->share(cells_, rounds, watch_);
  }

  // What lies beside what has changed with the cells: drifts of a disease-prone species that have
  // come together change places with others once more, at the cost of some ground.
  void partMasses() {
    if (!massesMeet()) return;
    hand(0.4, 1.15);
    shareAnew(4);
    hand(0.3, 1.12);
  }
  [[nodiscard]] bool massesMeet() const {
    if (!mayHand()) return false;
    const auto kindAt = [&](std::size_t spot) { return planned_[drifts_[spot]].kind; };
    for (const auto& [a, b] : touchingCells(ground_, owners_))
      if (kindAt(a) == kindAt(b) && task_.kinds[kindAt(a)].diseaseProne) return true;
    return false;
  }
  // Whether there is anything to choose.
  [[nodiscard]] bool mayHand() const {
    return !watch_.halt() && task_.layer == Layer::Main && !task_.one;
  }
  // Places of the right size for the hands.
  void shareAnew(int rounds) {
    if (mayHand()) share(rounds);
  }
  void knitTogether() {
    if (mayHand()) knit(ground_, *sharing_, cells_, owners_, chance_, watch_);
  }
  // Better hands for the places. Drifts change places when the ground they ask for differs by less,
  // as a ratio.
  void hand(double warmth, double likeness) {
    if (!mayHand()) return;
    const Layout layout = layoutOf({task_.yard, task_.bed, task_.sun, task_.limits.sight, kept_},
                                   ground_, owners_, planned_.size());
    FillCosts costs(layout, kinds_, seasonOf(task_.yard.settings), task_.limits, task_.wildness);
    Assignment kinds;
    for (const std::size_t drift : drifts_) kinds.push_back(planned_[drift].kind);
    for (std::size_t i = 0; i < kept_.size(); ++i) kinds.push_back(task_.kinds.size() + i);
    joinSameSpecies(kinds);
    costs.rankHeights(kinds);
    const auto alike = [&](std::size_t a, std::size_t b) {
      if (isInRhythm(a) || isInRhythm(b)) return false;
      const double one = groundFor(drifts_[a]), other = groundFor(drifts_[b]);
      return std::max(one, other) <= likeness * std::min(one, other);
    };
    anneal(costs, planned_.size(), {warmth, annealingSteps(planned_.size()), alike}, chance_,
           drifts_, kinds, watch_);
  }
  [[nodiscard]] bool isInRhythm(std::size_t spot) const { return inRhythm_.contains(spot); }
  // A kept drift of a species of the list is that kind.
  void joinSameSpecies(Assignment& kinds) const {
    for (std::size_t i = 0; i < kept_.size(); ++i)
      for (std::size_t kind = 0; kind < task_.kinds.size(); ++kind)
        if (task_.kinds[kind].species == keptSpecies_[i]) kinds[planned_.size() + i] = kind;
  }

  // The one drift of its species.
  [[nodiscard]] bool isOnly(std::size_t spot) const {
    const std::size_t kind = planned_[drifts_[spot]].kind;
    return std::count_if(planned_.begin(), planned_.end(),
                         [kind](const PlannedDrift& drift) { return drift.kind == kind; }) == 1;
  }
  // The odd count that the cell really has room for, near what was planned.
  [[nodiscard]] int countFor(std::size_t spot, double ground) const {
    const PlannedDrift& drift = planned_[drifts_[spot]];
    const double room = ground * kDensity * task_.cover / task_.kinds[drift.kind].ground;
    if (room < 0.5) return isOnly(spot) ? 1 : 0;
    const double off = isInRhythm(spot) ? 3.0 : 1.2;  // groups of a rhythm are alike
    if (std::abs(room - drift.count) < off) return drift.count;
    const int odd = oddNear(room);
    const FillKind& kind = task_.kinds[drift.kind];
    if (!kind.diseaseProne) return odd;
    const double fewer = kind.species->massThatMatters(task_.limits.diseaseMass) - 2.0;
    return std::min(odd, std::max(drift.count, static_cast<int>(fewer)));
  }

  [[nodiscard]] std::vector<KeptDrift> plant() {
    if (watch_.cancelled()) return {};
    for (const PlannedDrift& drift : planned_) caps_->add(drift.kind, drift.count);
    std::vector<double> grounds(planned_.size(), 0.0);
    for (const std::int32_t owner : owners_)
      if (owner >= 0) grounds[static_cast<std::size_t>(owner)] += ground_.cellArea();
    std::vector<DriftToPlant> toPlant;
    for (std::size_t spot = 0; spot < cells_.size(); ++spot) {
      const PlannedDrift& drift = planned_[drifts_[spot]];
      int count = countFor(spot, grounds[spot]);
      const int more = count - drift.count;
      if (more > 0 && caps_->room(drift.kind) < more) count = drift.count;
      caps_->add(drift.kind, count - drift.count);
      toPlant.push_back({task_.kinds[drift.kind].spacing, count, axisOf(spot), drift.kind});
    }
    PlantTold told;
    if (task_.told)
      told = [this](double share, const DriftPlaces& places) {
        task_.told(kUntilPlanted + (1.0 - kUntilPlanted) * share, keptDrifts(places));
      };
    return keptDrifts(plantDrifts({task_.yard, task_.bed, task_.layer, ground_}, owners_, toPlant,
                                  *caps_, chance_, watch_, told));
  }
  [[nodiscard]] std::vector<KeptDrift> keptDrifts(const DriftPlaces& places) const {
    std::vector<KeptDrift> result;
    for (std::size_t spot = 0; spot < places.size(); ++spot)
      if (!places[spot].empty()) result.push_back(keptDrift(spot, places[spot]));
    return matricesJoined(std::move(result));
  }
  // The groups of a matrix plant are one drift, in as many pieces as the others leave.
  static std::vector<KeptDrift> matricesJoined(std::vector<KeptDrift> drifts) {
    std::vector<KeptDrift> result, matrices;
    for (KeptDrift& drift : drifts) {
      if (drift.pattern != Pattern::Matrix) {
        result.push_back(std::move(drift));
        continue;
      }
      const auto same = std::find_if(matrices.begin(), matrices.end(), [&](const KeptDrift& one) {
        return one.species == drift.species;
      });
      if (same == matrices.end())
        matrices.push_back(std::move(drift));
      else
        same->places.insert(same->places.end(), drift.places.begin(), drift.places.end());
    }
    for (KeptDrift& matrix : matrices) {
      if (matrix.places.size() % 2 == 0) matrix.places.pop_back();
      result.push_back(std::move(matrix));
    }
    return result;
  }
  [[nodiscard]] KeptDrift keptDrift(std::size_t spot, const std::vector<Point>& places) const {
    const FillKind& kind = task_.kinds[planned_[drifts_[spot]].kind];
    KeptDrift drift;
    drift.species = kind.species->botanicalName;
    drift.layer = task_.layer;
    drift.spacing = Length::metres(kind.spacing);
    drift.size = task_.size;
    if (kind.matrix) drift.pattern = Pattern::Matrix;
    drift.axis = axisOf(spot);
    drift.stretch = cells_[spot].stretch;
    drift.places = places;
    return drift;
  }

  const LayerTask& task_;
  const FillGround& ground_;
  Chance& chance_;
  const WorkWatch& watch_;
  Manner manner_;
  std::vector<const Drift*> kept_;
  std::vector<const Species*> keptSpecies_;
  std::vector<FillKind> kinds_;  // the task's, then those of kept drifts
  std::vector<PlannedDrift> planned_;
  std::vector<std::size_t> drifts_;   // the planned drift at each spot
  std::optional<std::size_t> again_;  // the kind that comes again in rhythm
  std::set<std::size_t> inRhythm_;    // spots of its drifts
  std::vector<DriftCell> cells_;
  std::vector<double> stretches_;  // for each spot, where the drift is large enough
  std::optional<DriftCells> sharing_;
  std::optional<ShareCaps> caps_;
  Owners owners_;
};

}  // namespace

LayerPlanting fillLayer(const LayerTask& task, const FillGround& ground, Chance& chance,
                        const WorkWatch& watch) {
  if (task.kinds.empty() || ground.cells().empty()) return {};
  LayerFill fill(task, ground, chance, watch);
  std::vector<KeptDrift> drifts = fill.run();
  return {std::move(drifts), fill.again()};
}

WeekSet seasonOf(const Settings& settings) {
  const GrowingSeason season = growingSeason(settings);
  const int last = weekOf(season.last);
  WeekSet weeks = 0;
  for (int week = weekOf(season.first);; week = (week + 1) % kWeeksInYear) {
    weeks |= WeekSet{1} << week;
    if (week == last) return weeks;
  }
}

double meanSpacing(const std::vector<FillKind>& kinds) {
  double sum = 0.0;
  for (const FillKind& kind : kinds) sum += kind.spacing;
  return kinds.empty() ? 0.3 : sum / static_cast<double>(kinds.size());
}

double leastSpacing(const std::vector<FillKind>& kinds) {
  double least = 1e9;
  for (const FillKind& kind : kinds) least = std::min(least, kind.spacing);
  return least;
}

}  // namespace tussock
