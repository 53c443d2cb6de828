// SPDX-License-Identifier: MIT
// OKLab, in which equal steps look equal (B. Ottosson, 2020, "A perceptual color space for image
// processing"). Ramps and mixes of the window and the sheets are made in it.
#pragma once

#include <QColor>

namespace tussock {

struct Oklab {
  double lightness = 0.0;  // 0 black to 1 white
  double a = 0.0;          // green to red
  double b = 0.0;          // blue to yellow
};
[[nodiscard]] Oklab toOklab(const QColor& colour);
[[nodiscard]] QColor fromOklab(const Oklab& lab);  // clipped to sRGB, opaque

// `hue` in degrees: 30 red, 110 yellow, 142 green, 264 blue.
[[nodiscard]] QColor fromOklch(double lightness, double chroma, double hue);
// 0 gives `from`, 1 gives `to`.
[[nodiscard]] QColor mixed(const QColor& from, const QColor& to, double share);
// The same hue lighter or darker by a step of OKLab lightness.
[[nodiscard]] QColor lightened(const QColor& colour, double step);
[[nodiscard]] QColor withAlpha(QColor colour, double alpha);

}  // namespace tussock
