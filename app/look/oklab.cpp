// SPDX-License-Identifier: MIT
#include "app/look/oklab.h"

#include <algorithm>

namespace tussock {

Oklab toOklab(const QColor& colour) {
  const QColor c = colour.toRgb();
  return oklabOf(Srgb{c.redF(), c.greenF(), c.blueF()});
}

QColor fromOklab(const Oklab& lab) {
  const Srgb c = srgbOf(lab);
  return QColor::fromRgbF(float(c.red), float(c.green), float(c.blue));
}

QColor fromOklch(double lightness, double chroma, double hue) {
  return fromOklab(oklabOf(Oklch{lightness, chroma, hue}));
}

QColor mixed(const QColor& from, const QColor& to, double share) {
  const Oklab p = toOklab(from), q = toOklab(to);
  const auto between = [share](double x, double y) { return x + (y - x) * share; };
  return fromOklab({between(p.lightness, q.lightness), between(p.a, q.a), between(p.b, q.b)});
}

QColor lightened(const QColor& colour, double step) {
  Oklab lab = toOklab(colour);
  lab.lightness = std::clamp(lab.lightness + step, 0.0, 1.0);
  return fromOklab(lab);
}

QColor withAlpha(QColor colour, double alpha) {
  colour.setAlphaF(float(alpha));
  return colour;
}

}  // namespace tussock
