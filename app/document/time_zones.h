// SPDX-License-Identifier: MIT
// What the system's time-zone database says about a yard's zone.
#pragma once

#include <optional>
#include <QTimeZone>
#include <string>

#include "core/units/length.h"

namespace tussock {

// The zone by its IANA name where it can be that of a place at the longitude, else UTC.
[[nodiscard]] std::string zoneFor(const QTimeZone& own, Angle longitude);
// The computer's own, by the same rule: what a new yard starts with.
[[nodiscard]] std::string ownZoneFor(Angle longitude);

// How the zone's clock stands to the sun at the longitude, in words.
[[nodiscard]] QString clockWords(const std::string& zone, Angle longitude);

}  // namespace tussock
