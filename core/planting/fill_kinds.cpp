// SPDX-License-Identifier: MIT
#include "core/planting/fill_kinds.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "core/catalog/usual_flowers.h"
#include "core/geometry/lattice.h"

namespace tussock {

namespace {

double linear(int channel) {  // IEC 61966-2-1, from memory
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

std::size_t numberOf(const std::string& name, std::vector<std::string>& names) {
  const auto at = std::find(names.begin(), names.end(), name);
  if (at != names.end() && !name.empty()) return static_cast<std::size_t>(at - names.begin());
  names.push_back(name);
  return names.size() - 1;
}

Vigour vigourOf(const Species& species) {
  if (species.competitiveness == Competitiveness::High) return Vigour::High;
  return species.competitiveness == Competitiveness::Low ? Vigour::Low : Vigour::Medium;
}

FillKind kindOf(const Species& species, const SunProfile& profile) {
  FillKind kind;
  kind.species = &species;
  kind.spacing = std::max(species.spacing.metres(), 0.05);
  kind.ground = triangularGround(Length::metres(kind.spacing)).squareMetres();
  const double spread = species.spread > Length() ? species.spread.metres() : kind.spacing;
  kind.seen = {species.height().metres(), spread / 2.0, isSeeThrough(species)};
  if (showsFlowers(species)) {
    kind.weeks = weeksInFlower(species);
    if (const auto colour = flowerColourOf(species)) kind.hue = hueOf(*colour);
  }
  kind.grassy = species.habit == Habit::Grass || species.habit == Habit::Sedge;
  kind.leans = species.needsSupport == Answer::Yes;
  kind.supports = !kind.leans && (kind.grassy || species.habit == Habit::Shrub ||
                                  vigourOf(species) != Vigour::Low);
  kind.diseaseProne = species.diseaseProne();
  kind.vigour = vigourOf(species);
  kind.hours = hoursWanted(species, profile);
  return kind;
}

}  // namespace

double Hue::strength() const {
  return std::hypot(a, b);
}

Hue hueOf(Rgb colour) {
  const double r = linear(colour.red), g = linear(colour.green), b = linear(colour.blue);
  const double l = std::cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const double m = std::cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const double s = std::cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return {1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
          0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s};
}

std::vector<FillKind> kindsOf(const std::vector<const Species*>& species,
                              const Settings& settings) {
  const SunProfile& profile = sunProfile(settings.sunProfile);
  std::vector<std::string> genera, families;
  std::vector<FillKind> kinds;
  for (const Species* one : species) {
    kinds.push_back(kindOf(*one, profile));
    kinds.back().genus = numberOf(one->genus, genera);
    kinds.back().family = numberOf(one->family, families);
  }
  return kinds;
}

Layer layerOf(const FillKind& kind) {
  return kind.matrix ? Layer::Main : kind.species->usualLayer();
}

bool areCovers(const std::vector<FillKind>& kinds) {
  const auto count = [&](Layer layer) {
    return std::count_if(kinds.begin(), kinds.end(),
                         [layer](const FillKind& kind) { return layerOf(kind) == layer; });
  };
  return count(Layer::Main) == 0 && count(Layer::Ground) > 0;
}

std::vector<FillKind> withMatrixShares(std::vector<FillKind> kinds) {
  constexpr double kShare = 0.4;
  double free = 1.0, matrices = 0.0;
  for (const FillKind& kind : kinds)
    free -= kind.share, matrices += kind.matrix && kind.share <= 0.0 ? 1.0 : 0.0;
  for (FillKind& kind : kinds)
    if (kind.matrix && kind.share <= 0.0)
      kind.share = std::max(0.05, std::min(kShare, 0.8 * free) / matrices);
  return kinds;
}

bool likes(const FillKind& kind, Moisture moisture) {
  const auto& liked = kind.species->moisture;
  return liked.empty() || std::find(liked.begin(), liked.end(), moisture) != liked.end();
}

double moistureApart(const FillKind& a, const FillKind& b) {
  const auto& one = a.species->moisture;
  const auto& other = b.species->moisture;
  if (one.empty() || other.empty()) return 0.0;
  const auto both = std::count_if(one.begin(), one.end(), [&](Moisture m) { return likes(b, m); });
  return 1.0 - static_cast<double>(both) / static_cast<double>(std::min(one.size(), other.size()));
}

double hoursOff(const FillKind& kind, double hours) {
  return std::max({0.0, kind.hours.least - hours, hours - kind.hours.most});
}

// Neighbours on the wheel are calm, opposites strengthen each other; between the two, about a
// quarter turn apart, colours quarrel, the more the stronger both are. One colour beside itself
// makes a blur of two drifts. White and green go with all.
double colourClash(const FillKind& a, const FillKind& b) {
  constexpr double kStrong = 0.15;
  if (!a.hue || !b.hue) return 0.0;
  const int together = std::popcount(a.weeks & b.weeks);
  const int shorter = std::min(std::popcount(a.weeks), std::popcount(b.weeks));
  if (together == 0 || shorter == 0) return 0.0;
  const double strength = std::min({1.0, a.hue->strength() / kStrong, b.hue->strength() / kStrong});
  const double product = std::max(1e-9, a.hue->strength() * b.hue->strength());
  const double cosine = (a.hue->a * b.hue->a + a.hue->b * b.hue->b) / product;
  const double quarrel = 1.0 - std::abs(cosine - 0.1) / 1.1;
  const double blur = cosine > 0.9 ? 0.4 : 0.0;
  return std::max(quarrel * quarrel, blur) * strength * together / shorter;
}

double overrun(const FillKind& a, const FillKind& b) {
  const auto [weak, strong] = std::minmax(a.vigour, b.vigour);
  if (strong != Vigour::High || weak == Vigour::High) return 0.0;
  return weak == Vigour::Low ? 1.0 : 0.3;
}

}  // namespace tussock
