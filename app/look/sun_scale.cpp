// SPDX-License-Identifier: MIT
#include "app/look/sun_scale.h"

#include <algorithm>

#include "app/look/oklab.h"

namespace tussock {

namespace {

constexpr double kShareAtBend = 0.75;
constexpr double kStrength = 0.66;
constexpr double kStrengthInDark = 0.46;  // so that light words with dark edges do not stand out

constexpr Oklab kNone{0.30, 0.035, -0.120};
constexpr Oklab kMiddle{0.61, 0.004, 0.004};
constexpr Oklab kFull{0.92, -0.004, 0.100};

Oklab between(const Oklab& p, const Oklab& q, double share) {
  return {p.lightness + (q.lightness - p.lightness) * share, p.a + (q.a - p.a) * share,
          p.b + (q.b - p.b) * share};
}

}  // namespace

QColor sunColour(double hours) {
  const double low = std::clamp(hours / kSunScaleBend, 0.0, 1.0);
  const double high =
      std::clamp((hours - kSunScaleBend) / (kSunScaleTop - kSunScaleBend), 0.0, 1.0);
  const double share = low * kShareAtBend + high * (1.0 - kShareAtBend);
  return fromOklab(share < 0.5 ? between(kNone, kMiddle, share * 2.0)
                               : between(kMiddle, kFull, share * 2.0 - 1.0));
}

double sunMapStrength(const Theme& theme) {
  return theme.dark ? kStrengthInDark : kStrength;
}

QColor sunColourOnGround(double hours, const Theme& theme) {
  const QColor map = sunColour(hours);
  const double strength = sunMapStrength(theme);
  const auto mixed = [strength](int over, int under) {
    return qRound(over * strength + under * (1.0 - strength));
  };
  return {mixed(map.red(), theme.lawn.red()), mixed(map.green(), theme.lawn.green()),
          mixed(map.blue(), theme.lawn.blue())};
}

QList<QRgb> sunRamp() {
  QList<QRgb> ramp;
  const int steps = int(kSunScaleTop * 10.0);
  for (int i = 0; i <= steps; ++i) ramp.append(sunColour(i / 10.0).rgb());
  return ramp;
}

}  // namespace tussock
