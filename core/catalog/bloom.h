// SPDX-License-Identifier: MIT
// What is in flower, week by week: for the year along the top, the drawing and the checks alike.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/units/date.h"

namespace tussock {

using WeekSet = std::uint64_t;  // bit w for week w of the year, 0 to 51

// Grasses and sedges flower too, but are not what people or bees mean by a flower.
[[nodiscard]] bool showsFlowers(const Species& species);
[[nodiscard]] WeekSet weeksInFlower(const Species& species);

// Ground of one plant at its spacing: s² in a square pattern, else s² √3/2, the triangular share.
[[nodiscard]] Area groundPerPlant(Pattern pattern, Length spacing);
// Ground that a drift covers at its spacing.
[[nodiscard]] Area groundOf(const Drift& drift);

// A species in flower and the ground its plants cover.
struct BloomSpan {
  const Species* species = nullptr;
  Area ground;
};
using BloomByWeek = std::array<std::vector<BloomSpan>, kWeeksInYear>;

// Species in flower each week in the yard, or in one bed of it, most ground first. Species that the
// catalogue does not know are left out. The spans point into the catalogue, which must live on.
[[nodiscard]] BloomByWeek bloomByWeek(const Yard& yard, const Catalogue& catalogue,
                                      std::optional<Id<Bed>> bed = std::nullopt);

}  // namespace tussock
