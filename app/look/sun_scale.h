// SPDX-License-Identifier: MIT
// Colours of hours of sun: from deep blue-violet (none) through grey to warm straw (14 h and more,
// as much as a season's mean comes to outside the polar circles). Lightness rises all along, three
// quarters of the way up to kSunScaleBend, where plants tell hours apart; the hue runs along the
// blue-yellow axis, which the common forms of colour blindness keep.
#pragma once

#include <QColor>
#include <QList>

#include "app/look/theme.h"

namespace tussock {

inline constexpr double kSunScaleTop = 14.0;  // hours; more looks the same
inline constexpr double kSunScaleBend = 8.0;

[[nodiscard]] QColor sunColour(double hours);
// How strongly a map lies over the plan, 0 to 1, and what its colours look like there on open
// ground.
[[nodiscard]] double sunMapStrength(const Theme& theme);
[[nodiscard]] QColor sunColourOnGround(double hours, const Theme& theme);
// Ready-made steps of 0.1 h from 0 to kSunScaleTop, for painting maps.
[[nodiscard]] QList<QRgb> sunRamp();

}  // namespace tussock
