// SPDX-License-Identifier: MIT
// Where a yard lies, in words, and reading what people type for it.
#pragma once

#include <optional>
#include <QString>

#include "core/model/settings.h"

namespace tussock {

[[nodiscard]] QString placeWords(const Settings& settings);  // "38.41° N, 86.94° W, zone 6b"
enum class Axis { Latitude, Longitude };
[[nodiscard]] QString coordinateWords(Angle angle, Axis axis);  // "38.4100° N"
// "38.41", "-86.9", "86.9 W", "38° 24' 36\" N"; nothing when it is none or out of range.
[[nodiscard]] std::optional<Angle> parseCoordinate(const QString& text, Axis axis);
// "20 April", "Apr 20", "04-20"; nothing when it is no day.
[[nodiscard]] std::optional<MonthDay> parseDay(const QString& text);

}  // namespace tussock
