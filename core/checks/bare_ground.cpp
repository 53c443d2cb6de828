// SPDX-License-Identifier: MIT
#include "core/checks/bare_ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/checks/wording.h"
#include "core/planting/free_ground.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

struct MainLayer {
  int plants = 0;
  Area taken;
};

MainLayer mainLayerOf(const Yard& yard, const Bed& bed) {
  MainLayer main;
  for (const Drift* drift : driftsIn(yard, bed.id))
    if (drift->layer == Layer::Main) main.plants += static_cast<int>(drift->plants.size());
  main.taken = totalsOf(yard, bed).taken;
  return main;
}

bool listsMain(const FillResult& result, const Catalogue& catalogue) {
  return std::any_of(result.plants.begin(), result.plants.end(), [&](const ListedSpecies& listed) {
    const Species* known = catalogue.find(listed.species);
    return listed.matrix || (known != nullptr && known->usualLayer() == Layer::Main);
  });
}

std::string remedy(const FillRequest& request, const FillResult& result) {
  if (result.cutShort) return "Allow more time, or fill the gaps after it.";
  if (request.what == FillWhat::EmptyPart)
    return "List plants of smaller spacing, or set some out by hand.";
  return request.plants.empty()
             ? "Fill the gaps, or list plants of smaller spacing."
             : "Fill the gaps with the same list, or list plants of smaller spacing.";
}

}  // namespace

std::string bareGround(const Yard& planted, const Catalogue& catalogue, const FillRequest& request,
                       const FillResult& result) {
  constexpr double kLarge = 50.0;  // spacings²; the edges of smaller beds cost too much
  const Bed* bed = planted.beds.find(request.bed);
  if (bed == nullptr || request.what == FillWhat::OneSpecies) return {};
  const MainLayer main = mainLayerOf(planted, *bed);
  if (main.plants == 0)
    return listsMain(result, catalogue)
               ? std::string(
                     "Nothing of the main layer was planted: the ground lies bare but for "
                     "ground covers and bulbs. List plants that suit the bed.")
               : "The list names no plants of the main layer, and ground covers and bulbs beside "
                 "nothing else are set out thinly: most of the ground lies bare. Add plants of the "
                 "main layer, or list a ground cover as matrix.";
  const double spacing =
      std::sqrt(main.taken.squareMetres() / main.plants * 2.0 / std::numbers::sqrt3);
  const Area ground = surfaceOf(planted, *bed);
  if (ground.squareMetres() <= kLarge * spacing * spacing || main.taken >= ground * kGroundTaken)
    return {};
  const Area free = freeGround(planted, *bed, spacing);
  if (main.taken >= free * kGroundTaken) return {};
  return fmt::format(
      "The plants take {} of the ground; {} lie bare. {}", percent(main.taken / free),
      unbroken(formatArea(free - main.taken, planted.settings.units)), remedy(request, result));
}

}  // namespace tussock
