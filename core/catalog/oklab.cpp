// SPDX-License-Identifier: MIT
#include "core/catalog/oklab.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tussock {

namespace {

// IEC 61966-2-1 transfer functions.
double linear(double value) {
  return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}
double encoded(double value) {
  const double v = std::clamp(value, 0.0, 1.0);
  return v <= 0.0031308 ? v * 12.92 : 1.055 * std::pow(v, 1.0 / 2.4) - 0.055;
}
double cubed(double value) {
  return value * value * value;
}

constexpr double kDegrees = 180.0 / std::numbers::pi;

}  // namespace

Oklab oklabOf(const Srgb& colour) {
  const double r = linear(colour.red), g = linear(colour.green), b = linear(colour.blue);
  const double l = std::cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const double m = std::cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const double s = std::cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return {0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
          1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
          0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s};
}

Oklab oklabOf(Rgb colour) {
  return oklabOf(Srgb{colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0});
}

Srgb srgbOf(const Oklab& lab) {
  const double l = cubed(lab.lightness + 0.3963377774 * lab.a + 0.2158037573 * lab.b);
  const double m = cubed(lab.lightness - 0.1055613458 * lab.a - 0.0638541728 * lab.b);
  const double s = cubed(lab.lightness - 0.0894841775 * lab.a - 1.2914855480 * lab.b);
  return {encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
          encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
          encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)};
}

Oklch oklchOf(const Oklab& lab) {
  const double hue = std::atan2(lab.b, lab.a) * kDegrees;
  return {lab.lightness, std::hypot(lab.a, lab.b), hue < 0.0 ? hue + 360.0 : hue};
}

Oklab oklabOf(const Oklch& colour) {
  const double angle = colour.hue / kDegrees;
  return {colour.lightness, colour.chroma * std::cos(angle), colour.chroma * std::sin(angle)};
}

bool lostOnPaper(Rgb colour) {
  constexpr double kLightest = 0.93, kPalest = 0.04;
  const Oklch seen = oklchOf(oklabOf(colour));
  return seen.lightness > kLightest && seen.chroma < kPalest;
}

}  // namespace tussock
