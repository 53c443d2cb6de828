// SPDX-License-Identifier: MIT
#include "app/look/sun_scale.h"

#include <algorithm>

#include "app/look/oklab.h"

namespace tussock {

namespace {

constexpr Oklab kNone{0.30, 0.035, -0.120};
constexpr Oklab kMiddle{0.61, 0.004, 0.004};
constexpr Oklab kFull{0.92, -0.004, 0.100};

Oklab between(const Oklab& p, const Oklab& q, double share) {
  return {p.lightness + (q.lightness - p.lightness) * share, p.a + (q.a - p.a) * share,
          p.b + (q.b - p.b) * share};
}

}  // namespace

QColor sunColour(double hours) {
  const double share = std::clamp(hours / kSunScaleTop, 0.0, 1.0);
  return fromOklab(share < 0.5 ? between(kNone, kMiddle, share * 2.0)
                               : between(kMiddle, kFull, share * 2.0 - 1.0));
}

QList<QRgb> sunRamp() {
  QList<QRgb> ramp;
  const int steps = int(kSunScaleTop * 10.0);
  for (int i = 0; i <= steps; ++i) ramp.append(sunColour(i / 10.0).rgb());
  return ramp;
}

}  // namespace tussock
