// SPDX-License-Identifier: MIT
// What a bed's plants, or the plant list chosen for it, come to: shares, bloom, heights, diversity.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/catalog/bloom.h"
#include "core/catalog/diversity.h"

namespace tussock {

// One species in one layer, and how much of it: plants, or its share of a list.
struct Portion {
  const Species* species = nullptr;
  Layer layer = Layer::Main;
  double amount = 0.0;
};
// Plants of the yard or of one bed, by name and layer. Species that the catalogue does not know are
// left out. Portions point into the catalogue, which must live on.
[[nodiscard]] std::vector<Portion> portionsOf(const Yard& yard, const Catalogue& catalogue,
                                              std::optional<Id<Bed>> bed = std::nullopt);
// A plant list, each species in its usual layer. Species with an open share divide evenly what the
// others leave of 1, or have as much as the others' mean where nothing is left.
[[nodiscard]] std::vector<Portion> portionsOf(const std::vector<ListedSpecies>& list,
                                              const Catalogue& catalogue);

struct NamedShare {
  std::string name;
  double amount = 0.0;
  double share = 0.0;  // of all, 0 to 1
};

// Bands of height in which people speak of layers of a planting: up to 6 inches, to 2 feet, to
// 5 feet, above (University of Florida IFAS Extension, EP449, as ground, fore-, mid- and
// background).
enum class HeightBand { Ground, Front, Middle, Back };
template <>
struct EnumWords<HeightBand> {
  static constexpr WordTable<HeightBand, 4> values{{{HeightBand::Ground, "ground"},
                                                    {HeightBand::Front, "front"},
                                                    {HeightBand::Middle, "middle"},
                                                    {HeightBand::Back, "back"}}};
};
[[nodiscard]] HeightBand heightBandOf(const Species& species);

struct HeightStep {
  const Species* species = nullptr;
  Length low, high;  // in flower
  double share = 0.0;
};

struct PlantFigures {
  std::vector<NamedShare> bySpecies, byGenus, byFamily, byLayer;   // largest first, then by name
  Diversity diversity;                                             // of species
  double grassShare = 0.0;                                         // grasses and sedges, 0 to 1
  std::array<double, 4> heightBands{};                             // shares, by HeightBand
  std::vector<HeightStep> heights;                                 // tallest first
  std::vector<const Species*> hostPlants;                          // of caterpillars, by name
  std::array<std::vector<const Species*>, kWeeksInYear> inFlower;  // most first
  WeekSet bloomWeeks = 0;                                          // something is in flower
  WeekSet nectarWeeks = 0;  // something in flower is recorded as visited by insects or birds

  [[nodiscard]] bool empty() const { return bySpecies.empty(); }
};
[[nodiscard]] PlantFigures figuresOf(const std::vector<Portion>& portions);

}  // namespace tussock
