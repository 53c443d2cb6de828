// SPDX-License-Identifier: MIT
// Values as fields show them, and reading what is typed: each reader sets the value and gives an
// empty string, or leaves it and says what is expected.
#pragma once

#include <optional>
#include <QString>

#include "core/planting/totals.h"
#include "core/units/date.h"
#include "core/units/measure_text.h"

namespace tussock {

struct LengthBounds {
  Length least;
  Length most;
};

[[nodiscard]] QString lengthText(Length length, UnitSystem units);
[[nodiscard]] QString readLength(const QString& typed, UnitSystem units, LengthBounds bounds,
                                 Length& value);
[[nodiscard]] QString shareText(double share);      // "15 %"
[[nodiscard]] QString mannerText(double wildness);  // "40 % natural"
[[nodiscard]] QString readShare(const QString& typed, double& value);
[[nodiscard]] QString dayText(MonthDay day);
[[nodiscard]] QString readDay(const QString& typed, MonthDay& value);
// An empty text means not known.
[[nodiscard]] QString readOptionalDay(const QString& typed, std::optional<MonthDay>& value);
[[nodiscard]] QString degreesText(Angle angle);  // "30°"
[[nodiscard]] QString readDegrees(const QString& typed, Angle& value);
[[nodiscard]] QString hoursText(double hours);  // "7.1 h"
// "40 plants", or "37 to plant, 3 existing": orders are made from the first sum alone.
[[nodiscard]] QString plantCountText(const Totals& totals);

}  // namespace tussock
