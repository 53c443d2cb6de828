// SPDX-License-Identifier: MIT
#include "core/sun/survey_reading.h"

#include <cmath>

#include <fmt/format.h>

#include "core/sun/position.h"

namespace tussock {

namespace {

constexpr double kClockReading = 0.25;  // hours; common practice

bool knowsPlace(const Settings& settings) {
  return std::isfinite(settings.latitude.radians()) && std::isfinite(settings.longitude.radians());
}

}  // namespace

double mostSunSeen(Date day, const Settings& settings) {
  const Daylight light = daylight(day, settings.latitude, settings.longitude);
  return std::min(24.0, light.hours + kClockReading);
}

std::optional<std::string> readingProblem(const SunReading& reading, const Settings& settings) {
  if (!isFinite(reading.at)) return "It has no place in the yard. Put it where you watched.";
  if (!reading.day.ok()) return "It has no day. Write the day you watched.";
  if (!(reading.hours >= 0.0 && reading.hours <= 24.0))
    return "Its hours are none. Write hours from 0 to 24.";
  if (!knowsPlace(settings) || reading.hours <= mostSunSeen(reading.day, settings))
    return std::nullopt;
  return fmt::format(
      "On {} the sun is up for {:.1f} h at this place, so {:g} h cannot have been seen. Write "
      "fewer hours, or another day.",
      formatDate(reading.day), daylight(reading.day, settings.latitude, settings.longitude).hours,
      std::round(reading.hours * 100.0) / 100.0);
}

}  // namespace tussock
