// SPDX-License-Identifier: MIT
// Colours of the window in OKLab: ramps and mixes are made in it.
#pragma once

#include <QColor>

#include "core/catalog/oklab.h"

namespace tussock {

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
