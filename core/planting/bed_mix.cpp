// SPDX-License-Identifier: MIT
#include "core/planting/bed_mix.h"

#include <algorithm>
#include <bit>
#include <set>

#include "core/catalog/bed_request.h"
#include "core/catalog/season_weeks.h"
#include "core/catalog/usual_flowers.h"
#include "core/planting/fill_spots.h"

namespace tussock {

namespace {

constexpr std::size_t kSpeciesForEach = 3;
// A week that one month ends and the next begins in counts for both, and is no meeting.
constexpr int kWeeksTogether = 2;

// In order of names, each two once.
using SpeciesPairs = std::set<std::pair<const Species*, const Species*>>;

SpeciesPairs pairsOfList(const std::vector<Portion>& portions) {
  SpeciesPairs pairs;
  for (std::size_t i = 0; i < portions.size(); ++i)
    for (std::size_t j = i + 1; j < portions.size(); ++j)
      pairs.insert(std::minmax(portions[i].species, portions[j].species));
  return pairs;
}

SpeciesPairs pairsThatTouch(const Yard& yard, const Catalogue& catalogue, Id<Bed> bed) {
  const std::vector<const Drift*> drifts = driftsIn(yard, bed);
  SpeciesPairs pairs;
  for (const auto& [i, j] : touchingDrifts(drifts)) {
    const Species* one = catalogue.find(drifts[i]->species);
    const Species* other = catalogue.find(drifts[j]->species);
    if (one != nullptr && other != nullptr && one != other) pairs.insert(std::minmax(one, other));
  }
  return pairs;
}

std::vector<ColourPair> colourPairs(const SpeciesPairs& pairs) {
  std::vector<ColourPair> found;
  for (const auto& [one, other] : pairs) {
    if (!showsFlowers(*one) || !showsFlowers(*other)) continue;
    const auto ofOne = flowerColourOf(*one), ofOther = flowerColourOf(*other);
    if (!ofOne || !ofOther) continue;
    const ColourRelation relation = relationOf(*ofOne, *ofOther);
    const int weeks = std::popcount(weeksInFlower(*one) & weeksInFlower(*other));
    const bool together =
        relation == ColourRelation::Analogous || relation == ColourRelation::Complementary;
    if (together && weeks >= kWeeksTogether) found.push_back({one, other, relation, weeks});
  }
  std::stable_sort(found.begin(), found.end(), [](const ColourPair& a, const ColourPair& b) {
    if (a.relation != b.relation) return a.relation == ColourRelation::Complementary;
    return a.weeks > b.weeks;
  });
  return found;
}

}  // namespace

BedMix mixOf(const Yard& yard, const Catalogue& catalogue, const Bed& bed, MixOf what,
             std::optional<double> sunHours) {
  RankRequest request = requestFor(yard, catalogue, bed, sunHours);
  if (what == MixOf::List) request.planted = portionsOf(bed.plantList, catalogue);
  BedMix mix;
  mix.figures = figuresOf(request.planted);
  mix.season = setOf(request.season);
  mix.colours = colourPairs(what == MixOf::List ? pairsOfList(request.planted)
                                                : pairsThatTouch(yard, catalogue, bed.id));
  const std::vector<Missing> lacks = missingFrom(mix.figures, yard.settings);
  if (lacks.empty()) return mix;
  const std::vector<Ranked> ranked = rankFor(catalogue, request);
  for (const Missing& missing : lacks)
    mix.remedies.push_back(
        {missing, bestToFill(missing, ranked, request.planted, kSpeciesForEach)});
  return mix;
}

}  // namespace tussock
