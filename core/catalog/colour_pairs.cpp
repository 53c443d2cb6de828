// SPDX-License-Identifier: MIT
#include "core/catalog/colour_pairs.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

// Our own limits. Below this chroma people see a tint of white or grey rather than a hue.
constexpr double kNeutralChroma = 0.04;
constexpr double kAlike = 15.0;               // degrees
constexpr double kAnalogous = 60.0;           // neighbours on a wheel of six hues
constexpr double kComplementaryFrom = 150.0;  // within 30 degrees of the hue across

}  // namespace

double complementOf(double hue) {
  return std::fmod(hue + 180.0, 360.0);
}

double hueDistance(Rgb a, Rgb b) {
  const double turn = std::abs(oklchOf(oklabOf(a)).hue - oklchOf(oklabOf(b)).hue);
  return std::min(turn, 360.0 - turn);
}

ColourRelation relationOf(Rgb a, Rgb b) {
  const double chroma = std::min(oklchOf(oklabOf(a)).chroma, oklchOf(oklabOf(b)).chroma);
  if (chroma < kNeutralChroma) return ColourRelation::Neutral;
  const double distance = hueDistance(a, b);
  if (distance <= kAlike) return ColourRelation::Alike;
  if (distance <= kAnalogous) return ColourRelation::Analogous;
  return distance >= kComplementaryFrom ? ColourRelation::Complementary : ColourRelation::Apart;
}

}  // namespace tussock
