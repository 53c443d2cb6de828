// SPDX-License-Identifier: MIT
#include "core/planting/fill_score.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>

#include "core/planting/bed_grain.h"
#include "core/planting/fill_costs.h"
#include "core/planting/fill_layer.h"
#include "core/planting/fill_quota.h"
#include "core/planting/fill_spots.h"
#include "core/planting/measures.h"
#include "core/planting/planted_kinds.h"

namespace tussock {

namespace {

// The angle between two lines, 0 to 90 degrees.
double degreesBetween(Angle a, Angle b) {
  const double turn = std::fmod(std::abs((a - b).degrees()), 180.0);
  return std::min(turn, 180.0 - turn);
}

double outside(double value, double low, double high, double slack) {
  return std::clamp(std::max(low - value, value - high) / slack, 0.0, 1.0);
}

class DriftTerms {
 public:
  DriftTerms(const PlantedKinds& scored, const Bed& bed, double wildness)
      : scored_(scored), grain_(bed) {
    usual_ = usualDriftSize(scored.plants, wildness);
  }

  void addTo(TermSums& sums, const Layout& layout) {
    for (std::size_t i = 0; i < scored_.drifts.size(); ++i) add(*scored_.drifts[i]);
    double alone = 0.0;
    for (const auto& touching : layout.touching)
      alone += touching.size() >= 2 ? 0.0 : touching.size() == 1 ? 0.5 : 1.0;
    const double count = static_cast<double>(scored_.drifts.size());
    at(sums, FillTerm::Interlocking) = count < 3 ? -1.0 : alone / count;
    at(sums, FillTerm::OddCounts) = counted_ > 0.0 ? even_ / counted_ : -1.0;
    at(sums, FillTerm::DriftSize) = size_ / count;
    at(sums, FillTerm::Proportions) = shaped_ > 0.0 ? proportions_ / shaped_ : -1.0;
    at(sums, FillTerm::Slant) = long_ > 0.0 ? slant_ / long_ : -1.0;
  }

 private:
  static double& at(TermSums& sums, FillTerm term) { return sums[static_cast<std::size_t>(term)]; }
  void add(const Drift& drift) {
    const double count = static_cast<double>(drift.plants.size());
    if (!drift.existing()) counted_ += 1.0, even_ += drift.plants.size() % 2 == 0 ? 1.0 : 0.0;
    // Half or twice the usual size is still that size.
    size_ += std::clamp(std::abs(std::log2(count / usual_)) - 1.0, 0.0, 2.0) / 2.0;
    const auto shape = rectangleOf(drift);
    if (!shape) return;
    const double ratio = shape->length / shape->width;
    shaped_ += 1.0, proportions_ += outside(ratio, 2.5, 5.0, 1.5);
    if (ratio < 1.5) return;
    long_ += 1.0,
        slant_ += outside(degreesBetween(shape->axis, grain_.at(shape->centre)), 20.0, 45.0, 20.0);
  }

  const PlantedKinds& scored_;
  BedGrain grain_;
  double usual_ = 7.0;
  double even_ = 0.0, counted_ = 0.0, size_ = 0.0;
  double proportions_ = 0.0, shaped_ = 0.0, slant_ = 0.0, long_ = 0.0;
};

// How far the largest group is above its limit, or above an even share where there are too few.
double excess(const std::map<std::size_t, double>& groups, double plants, double limit) {
  double most = 0.0;
  for (const auto& [group, count] : groups) most = std::max(most, count / plants);
  const double fair = std::max(limit, 1.0 / static_cast<double>(groups.size()));
  return std::clamp((most - fair) / fair, 0.0, 1.0);
}

void addShares(const PlantedKinds& scored, const FillLimits& limits, TermSums& sums) {
  std::map<std::size_t, double> species, genera, families;
  double grassy = 0.0;
  for (std::size_t i = 0; i < scored.drifts.size(); ++i) {
    const FillKind& kind = scored.kinds[scored.assignment[i]];
    const double count = static_cast<double>(scored.drifts[i]->plants.size());
    species[scored.assignment[i]] += count, genera[kind.genus] += count;
    families[kind.family] += count;
    if (kind.grassy) grassy += count;
  }
  const double share = grassy / scored.plants;
  sums[static_cast<std::size_t>(FillTerm::Grasses)] =
      std::clamp(std::max(0.2 - share, share - 0.5) / 0.2, 0.0, 1.0);
  sums[static_cast<std::size_t>(FillTerm::Shares)] =
      scored.plants < limits.shareMinPlants
          ? -1.0
          : std::max({excess(species, scored.plants, limits.speciesShare),
                      excess(genera, scored.plants, limits.genusShare),
                      excess(families, scored.plants, limits.familyShare)});
}

// Plants of disease-prone species that touch, beyond the limit.
double diseaseBadness(const PlantedKinds& scored, const Layout& layout, const FillLimits& limits) {
  double prone = 0.0, bad = 0.0;
  for (std::size_t i = 0; i < scored.drifts.size(); ++i) {
    if (!scored.kinds[scored.assignment[i]].diseaseProne) continue;
    double mass = static_cast<double>(scored.drifts[i]->plants.size());
    for (const std::size_t other : layout.touching[i])
      if (scored.assignment[other] == scored.assignment[i])
        mass += static_cast<double>(scored.drifts[other]->plants.size());
    prone += 1.0;
    const Species& species = *scored.kinds[scored.assignment[i]].species;
    if (mass >= species.massThatMatters(limits.diseaseMass)) bad += 1.0;
  }
  return prone > 0.0 ? bad / prone : -1.0;
}

FillScore scoreFrom(const TermSums& badness) {
  FillScore score;
  double weights = 0.0;
  for (const auto& [term, word] : EnumWords<FillTerm>::values) {
    const double bad = badness[static_cast<std::size_t>(term)];
    if (bad < 0.0) continue;
    const double weight = factsOf(term).weight;
    score.terms.push_back({term, weight, 1.0 - bad});
    score.total += weight * (1.0 - bad), weights += weight;
  }
  if (weights > 0.0) score.total /= weights;
  return score;
}

}  // namespace

std::optional<double> FillScore::of(FillTerm term) const {
  for (const TermScore& one : terms)
    if (one.term == term) return one.score;
  return std::nullopt;
}

BedScorer::BedScorer(const Yard& yard, const Catalogue& catalogue, const SunMap* sun, Id<Bed> id,
                     double wildness, const FillLimits& limits)
    : catalogue_(catalogue), bed_(id), wildness_(wildness), limits_(limits) {
  const Bed* bed = yard.beds.find(id);
  if (bed == nullptr) return;
  const PlantedKinds scored = plantedKinds(yard, catalogue, id);
  if (!scored.drifts.empty()) layout_ = layoutOf({yard, *bed, {sun}, limits.sight, scored.drifts});
}

FillScore BedScorer::score(const Yard& yard) const {
  const Bed* bed = yard.beds.find(bed_);
  if (bed == nullptr) return {};
  const PlantedKinds scored = plantedKinds(yard, catalogue_, bed_);
  if (scored.drifts.empty() || scored.drifts.size() != layout_.spots.size()) return {};
  FillCosts costs(layout_, scored.kinds, seasonOf(yard.settings), limits_, wildness_);
  costs.rankHeights(scored.assignment);
  TermSums sums = costs.badness(scored.assignment);
  DriftTerms(scored, *bed, wildness_).addTo(sums, layout_);
  addShares(scored, limits_, sums);
  sums[static_cast<std::size_t>(FillTerm::DiseaseMass)] = diseaseBadness(scored, layout_, limits_);
  return scoreFrom(sums);
}

FillScore scoreBed(const Yard& yard, const Catalogue& catalogue, const SunMap* sun, Id<Bed> id,
                   double wildness, const FillLimits& limits) {
  return BedScorer(yard, catalogue, sun, id, wildness, limits).score(yard);
}

}  // namespace tussock
