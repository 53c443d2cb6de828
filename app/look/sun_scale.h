// SPDX-License-Identifier: MIT
// Colours of hours of sun: from deep blue-violet (none) through grey to warm straw (10 h and more).
// Lightness rises evenly and the hue runs along the blue-yellow axis, which the common forms of
// colour blindness keep.
#pragma once

#include <QColor>
#include <QList>

namespace tussock {

inline constexpr double kSunScaleTop = 10.0;  // hours; more looks the same

[[nodiscard]] QColor sunColour(double hours);
// Ready-made steps of 0.1 h from 0 to kSunScaleTop, for painting maps.
[[nodiscard]] QList<QRgb> sunRamp();

}  // namespace tussock
