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
    int minute = 0;       // on the clock
    bool hidden = false;  // behind the skyline or the slope
  };
  std::vector<std::vector<Step>> paths;  // stretches of the day with the sun up, in order
  std::vector<Mark> hours;               // along the path
  std::optional<Mark> rise, set;         // none in midnight sun and polar night
  SunPosition now;
  bool shining = false;        // on open ground, now
  std::vector<Angle> skyline;  // elevations all round from north, clockwise; empty without one
  double radius = 62.0;        // pixels, of the horizon
};
// For the day by the clock of the yard.
class CivilDay;
struct Settings;
[[nodiscard]] SunCompass sunCompassFor(const CivilDay& day, UtcTime now, const Settings& settings);

// Pixels: of the horizon, where there is room and where there is not, and of the plate around it.
inline constexpr double kCompassRadius = 62.0, kSmallCompass = 40.0, kCompassPlate = 42.0;
[[nodiscard]] QPointF onCompass(const SunCompass& compass, QPointF middle, const SunPosition& sun);
// Whether a press there, in pixels, takes hold of the sun or its path.
[[nodiscard]] bool holdsSun(const SunCompass& compass, QPointF middle, QPointF at);
// The minute of the day at which the sun comes nearest to there; nothing where it stays down.
[[nodiscard]] std::optional<int> minuteNear(const SunCompass& compass, QPointF middle, QPointF at);
void paintSunCompass(QPainter& painter, QPointF middle, const SunCompass& compass,
                     const Theme& theme);

}  // namespace tussock
