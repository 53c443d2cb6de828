// SPDX-License-Identifier: MIT
// What the species of a bed come to together, as they are listed for it or as they stand in it, and
// what would make up for what they lack.
#pragma once

#include <optional>
#include <vector>

#include "core/catalog/colour_pairs.h"
#include "core/catalog/missing.h"
#include "core/model/yard.h"

namespace tussock {

enum class MixOf { List, Planted };

// Two species that go together by the hues of their flowers (analogous or complementary) in the
// weeks in which both are in flower.
struct ColourPair {
  const Species* one = nullptr;
  const Species* other = nullptr;
  ColourRelation relation = ColourRelation::Apart;
  int weeks = 0;
};

struct Remedy {
  Missing missing;
  std::vector<Ranked> species;  // that would fill it, best first; may be empty
};

struct BedMix {
  PlantFigures figures;
  WeekSet season = 0;  // weeks of the growing season
  std::vector<Remedy> remedies;
  std::vector<ColourPair> colours;  // complementary ones first, then by weeks together, most first
};

// As planted, colours pair only where drifts touch; in a list, any two may come to be neighbours.
// `sunHours` a day are the bed's. Everything points into the catalogue, which must live on.
[[nodiscard]] BedMix mixOf(const Yard& yard, const Catalogue& catalogue, const Bed& bed, MixOf what,
                           std::optional<double> sunHours);

}  // namespace tussock
