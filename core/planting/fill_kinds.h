// SPDX-License-Identifier: MIT
// The facts of a species that a fill works with, looked up once.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/bloom.h"
#include "core/catalog/fit.h"
#include "core/model/settings.h"
#include "core/planting/sight.h"

namespace tussock {

// A flower's colour where hues are evenly spaced: OKLab (Ottosson 2020, from memory).
struct Hue {
  double a = 0.0, b = 0.0;  // green to red, blue to yellow
  [[nodiscard]] double strength() const;
};
[[nodiscard]] Hue hueOf(Rgb colour);

enum class Vigour { Low, Medium, High };

struct FillKind {
  const Species* species = nullptr;
  double spacing = 0.0;  // metres
  double ground = 0.0;   // square metres a plant takes
  SightOutline seen;
  WeekSet weeks = 0;  // in flower, for what shows flowers
  std::optional<Hue> hue;
  bool grassy = false;  // grasses and sedges
  bool leans = false;
  bool supports = false;  // holds up what leans on it
  bool diseaseProne = false;
  Vigour vigour = Vigour::Medium;
  HoursRange hours;
  std::size_t genus = 0, family = 0;  // equal numbers for equal names
  double share = 0.0;                 // of the plants, as listed; 0 when left open
  bool matrix = false;                // stands between the drifts of the others
};

// Kinds for the species of a list that the catalogue knows, in the list's order.
[[nodiscard]] std::vector<FillKind> kindsOf(const std::vector<const Species*>& species,
                                            const Settings& settings);

// The layer it is planted in, where there are others beside it.
[[nodiscard]] Layer layerOf(const FillKind& kind);
// Nothing of the main layer, and some ground cover.
[[nodiscard]] bool areCovers(const std::vector<FillKind>& kinds);

// Matrix plants without a share get what drifts leave them: two fifths, between the third and the
// half or more that books on matrix planting ask for (our own judgement).
[[nodiscard]] std::vector<FillKind> withMatrixShares(std::vector<FillKind> kinds);

[[nodiscard]] bool likes(const FillKind& kind, Moisture moisture);
// Hours of sun missing or too many; 0 where it suits.
[[nodiscard]] double hoursOff(const FillKind& kind, double hours);
// How far two kinds ask for different ground, 0 to 1: the part of the narrower range of moisture
// that the wider one lacks; 0 where a range is not known.
[[nodiscard]] double moistureApart(const FillKind& a, const FillKind& b);
// How ill two flower colours go side by side, 0 to 1; 0 when not in flower together.
[[nodiscard]] double colourClash(const FillKind& a, const FillKind& b);
// How much the stronger would overrun the weaker beside it, 0 to 1.
[[nodiscard]] double overrun(const FillKind& a, const FillKind& b);

}  // namespace tussock
