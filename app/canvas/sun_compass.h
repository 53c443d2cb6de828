// SPDX-License-Identifier: MIT
// True north and the sun's path over one day, as seen from above: the rim is the horizon, the
// middle straight overhead.
#pragma once

#include <optional>
#include <QPainter>
#include <QString>
#include <vector>

#include "app/look/theme.h"
#include "core/sun/position.h"

namespace tussock {

struct SunCompass {
  struct Mark {
    SunPosition sun;
    QString words;  // such as the time of sunrise
  };
  struct Step {
    SunPosition sun;
    int minute = 0;  // on the clock
  };
  std::vector<std::vector<Step>> paths;  // stretches of the day with the sun up, in order
  std::vector<Mark> hours;               // along the path
  std::optional<Mark> rise, set;         // none in midnight sun and polar night
  SunPosition now;
};
// For the day by the clock of the yard.
class CivilDay;
struct Settings;
[[nodiscard]] SunCompass sunCompassFor(const CivilDay& day, UtcTime now, const Settings& settings);

inline constexpr double kCompassRadius = 62.0;  // pixels, of the horizon
[[nodiscard]] QPointF onCompass(QPointF middle, const SunPosition& sun);
// Whether a press there, in pixels, takes hold of the sun or its path.
[[nodiscard]] bool holdsSun(const SunCompass& compass, QPointF middle, QPointF at);
// The minute of the day at which the sun comes nearest to there; nothing where it stays down.
[[nodiscard]] std::optional<int> minuteNear(const SunCompass& compass, QPointF middle, QPointF at);
void paintSunCompass(QPainter& painter, QPointF middle, const SunCompass& compass,
                     const Theme& theme);

}  // namespace tussock
