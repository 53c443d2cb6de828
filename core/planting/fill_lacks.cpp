// SPDX-License-Identifier: MIT
#include "core/planting/fill_lacks.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/geometry/lattice.h"
#include "core/planting/measures.h"

namespace tussock {

namespace {

constexpr double kTakenAtBest = 0.96;    // of the ground, that a fill strives for
constexpr double kMeanNearest = 0.902;   // of the spacing to the nearest plant, on average
constexpr double kLeastCovered = 0.991;  // a little over what is asked of beds
constexpr double kMissing = 0.05;        // off the score, for each species left out

std::string namesOf(const std::vector<const Species*>& missing, const Catalogue& catalogue) {
  constexpr std::size_t kNamed = 6;
  std::string names;
  for (std::size_t i = 0; i < missing.size() && i < kNamed; ++i)
    names += (i == 0 ? "" : ", ") + catalogue.nameApart(*missing[i]);
  if (missing.size() > kNamed) names += fmt::format(" and {} more", missing.size() - kNamed);
  return names;
}

}  // namespace

std::size_t plantsIn(const std::vector<KeptDrift>& drifts) {
  std::size_t plants = 0;
  for (const KeptDrift& drift : drifts) plants += drift.places.size();
  return plants;
}

double groundTakenBy(const std::vector<KeptDrift>& drifts) {
  double taken = 0.0;
  for (const KeptDrift& drift : drifts)
    taken +=
        static_cast<double>(drift.places.size()) * triangularGround(drift.spacing).squareMetres();
  return taken;
}

std::vector<const Species*> missingFrom(const std::vector<KeptDrift>& drifts,
                                        const std::vector<FillKind>& wanted) {
  std::vector<const Species*> missing;
  for (const FillKind& kind : wanted)
    if (std::none_of(drifts.begin(), drifts.end(), [&](const KeptDrift& drift) {
          return drift.species == kind.species->botanicalName;
        }))
      missing.push_back(kind.species);
  return missing;
}

std::string noRoomFor(const std::vector<const Species*>& missing, const Catalogue& catalogue) {
  return fmt::format(
      "No room was found in this arrangement for: {}. Ask for another arrangement, or list fewer "
      "species.",
      namesOf(missing, catalogue));
}

std::string noTimeFor(const std::vector<const Species*>& missing, const Catalogue& catalogue) {
  return fmt::format("There was no time left to plant: {}. Allow more time.",
                     namesOf(missing, catalogue));
}

double coveredBy(const std::vector<KeptDrift>& drifts, const FillGround& ground, const Yard& flat,
                 Id<Bed> bed) {
  constexpr double kLarge = 50.0;  // plants
  if (static_cast<double>(plantsIn(drifts)) < kLarge) return 1.0;
  const Slope slope(flat.settings);
  std::vector<Stand> stands;
  for (const Drift* kept : driftsIn(flat, bed))
    for (const Plant& plant : kept->plants)
      if (kept->layer == Layer::Main) stands.push_back({plant.at, kept->spacing.metres()});
  for (const KeptDrift& drift : drifts)
    for (const Point place : drift.places)
      stands.push_back({slope.onGround(place), drift.spacing.metres()});
  return coveredShare(ground, stands);
}

PlantingLacks lacksOf(const std::vector<KeptDrift>& drifts, const std::vector<FillKind>& wanted,
                      const GroundShares& ground, const WorkWatch& watch) {
  const double nearest = watch.halt() ? 1.0 : distancesOf(drifts).meanNearest;
  PlantingLacks lacks;
  lacks.missing = missingFrom(drifts, wanted);
  lacks.cost = kMissing * static_cast<double>(lacks.missing.size()) +
               1.5 * std::max(0.0, kTakenAtBest - ground.taken) +
               4.0 * std::max(0.0, kLeastGroundTaken - ground.taken) +
               4.0 * std::max(0.0, kLeastCovered - ground.covered) +
               4.0 * std::max(0.0, kMeanNearest - nearest);
  lacks.any = !lacks.missing.empty() || ground.taken < kLeastGroundTaken ||
              ground.covered < kLeastCovered || nearest < kMeanNearest;
  return lacks;
}

}  // namespace tussock
