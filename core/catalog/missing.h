// SPDX-License-Identifier: MIT
// What a bed or plant list lacks, and the species that would fill it best.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/figures.h"
#include "core/catalog/rank.h"
#include "core/model/settings.h"

namespace tussock {

enum class Lack { Flowers, EarlyNectar, LateNectar, GroundLayer, Grasses, HostPlants };

struct Missing {
  Lack lack = Lack::Flowers;
  std::optional<WeekRange> weeks;  // for flowers and nectar
  std::string text;                // "Nothing is in flower from 29 July to 25 August."
};
// In the order of the enumeration, over the growing season of the yard and in its order; days
// before and after it are told of no more than in the findings. Nothing for an empty list, which
// lacks everything.
[[nodiscard]] std::vector<Missing> missingFrom(const PlantFigures& figures,
                                               const Settings& settings);

// Up to `count` species of `ranked` (see rankFor) that suit the place, are not planted yet and fill
// the lack: those that fill most of its weeks first, then as they are ranked.
[[nodiscard]] std::vector<Ranked> bestToFill(const Missing& missing,
                                             const std::vector<Ranked>& ranked,
                                             const std::vector<Portion>& planted,
                                             std::size_t count);

}  // namespace tussock
