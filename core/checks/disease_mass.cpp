// SPDX-License-Identifier: MIT
#include <map>
#include <numeric>

#include "core/checks/checks.h"
#include "core/checks/near_pairs.h"
#include "core/planting/grow.h"

namespace tussock {

namespace {

struct Stem {
  Point at;
  const Drift* drift;
  Id<Plant> plant;
  std::size_t number;
};

// Which plants hang together, by union and find (Tarjan 1975) with path halving.
class Pieces {
 public:
  explicit Pieces(std::size_t count) : parent_(count) {
    std::iota(parent_.begin(), parent_.end(), std::size_t{0});
  }
  std::size_t rootOf(std::size_t i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }
  void join(std::size_t a, std::size_t b) { parent_[rootOf(b)] = rootOf(a); }

 private:
  std::vector<std::size_t> parent_;
};

using Mass = std::vector<Stem>;

std::vector<Mass> massesOf(std::vector<Stem> spots, Length largestSpacing) {
  Pieces pieces(spots.size());
  forEachNearPair(spots, kTouch * largestSpacing.metres(), [&](const Stem& a, const Stem& b) {
    const double touch = kTouch * 0.5 * (a.drift->spacing + b.drift->spacing).metres();
    if (squaredDistance(a.at, b.at) < touch * touch) pieces.join(a.number, b.number);
  });
  std::map<std::size_t, Mass> byRoot;
  for (const Stem& spot : spots) byRoot[pieces.rootOf(spot.number)].push_back(spot);
  std::vector<Mass> masses;
  masses.reserve(byRoot.size());
  for (auto& [root, mass] : byRoot) masses.push_back(std::move(mass));
  return masses;
}

// The limit of the settings is told with the finding only where it is the one that was used.
Finding findingFor(const Mass& mass, const Species& species, double required) {
  Finding finding;
  finding.check = CheckId::DiseaseMass;
  finding.unit = Quantity::Count;
  finding.measured = static_cast<double>(mass.size());
  finding.required = required;
  if (!species.diseaseMass) finding.thresholdId = "disease_mass";
  finding.about = species.botanicalName;
  Box place;
  for (const Stem& spot : mass) {
    place.include(spot.at);
    finding.plants.push_back(spot.plant);
    finding.subjects.push_back(refTo(spot.drift->id));
  }
  std::sort(finding.plants.begin(), finding.plants.end());
  std::sort(finding.subjects.begin(), finding.subjects.end());
  finding.subjects.erase(std::unique(finding.subjects.begin(), finding.subjects.end()),
                         finding.subjects.end());
  finding.place = {placeAround(place, mass.front().drift->spacing * 0.5)};
  return finding;
}

struct Prone {
  const Species* species = nullptr;
  std::vector<const Drift*> drifts;
};

std::map<std::string_view, Prone> diseaseProne(const SurveyedBed& bed) {
  std::map<std::string_view, Prone> bySpecies;
  for (const SurveyedDrift& drift : bed.drifts)
    if (drift.seen() && drift.species->diseaseProne()) {
      Prone& prone = bySpecies[drift.drift->species];
      prone.species = drift.species;
      prone.drifts.push_back(drift.drift);
    }
  return bySpecies;
}

}  // namespace

std::vector<Finding> checkDiseaseMass(const Survey& survey, const SurveyedBed& bed) {
  const double usual = survey.limit("disease_mass");
  std::vector<Finding> findings;
  for (const auto& [name, prone] : diseaseProne(bed)) {
    const double tooMany = prone.species->massThatMatters(usual);
    std::vector<Stem> spots;
    Length largest;
    for (const Drift* drift : prone.drifts) {
      largest = std::max(largest, drift->spacing);
      for (const Plant& plant : drift->plants)
        spots.push_back({plant.at, drift, plant.id, spots.size()});
    }
    if (static_cast<double>(spots.size()) < tooMany) continue;
    for (const Mass& mass : massesOf(std::move(spots), largest))
      if (static_cast<double>(mass.size()) >= tooMany)
        findings.push_back(findingFor(mass, *prone.species, tooMany));
  }
  return findings;
}

}  // namespace tussock
