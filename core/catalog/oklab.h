// SPDX-License-Identifier: MIT
// OKLab, in which equal steps look equal (B. Ottosson, 2020, "A perceptual color space for image
// processing"), and OKLCH, the same as lightness, chroma and hue.
#pragma once

#include "core/catalog/species.h"

namespace tussock {

struct Oklab {
  double lightness = 0.0;  // 0 black to 1 white
  double a = 0.0;          // green to red
  double b = 0.0;          // blue to yellow
};
struct Srgb {
  double red = 0.0, green = 0.0, blue = 0.0;  // 0 to 1, encoded (IEC 61966-2-1)
};
[[nodiscard]] Oklab oklabOf(const Srgb& colour);
[[nodiscard]] Oklab oklabOf(Rgb colour);
[[nodiscard]] Srgb srgbOf(const Oklab& lab);  // clipped to sRGB

struct Oklch {
  double lightness = 0.0;
  double chroma = 0.0;  // 0 grey; sRGB reaches 0.32
  double hue = 0.0;     // degrees, 0 to below 360: 30 red, 110 yellow, 142 green, 264 blue
};
[[nodiscard]] Oklch oklchOf(const Oklab& lab);
[[nodiscard]] Oklab oklabOf(const Oklch& colour);

// So light and pale that a wash of it on white paper reads as bare ground: a lightness over 0.93
// and a chroma under 0.04, our own judgement.
[[nodiscard]] bool lostOnPaper(Rgb colour);

}  // namespace tussock
