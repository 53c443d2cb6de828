// SPDX-License-Identifier: MIT
// Whether hours of sun that someone noted can be what they saw.
#pragma once

#include <optional>
#include <string>

#include "core/model/settings.h"
#include "core/model/site.h"

namespace tussock {

// From sunrise to sunset (-0.833 degrees) on the day at the yard's place, and a quarter of an hour
// for the reading of clocks; 24 in midnight sun.
[[nodiscard]] double mostSunSeen(Date day, const Settings& settings);
// What keeps a reading from being used, and what to do, as a sentence: no place, no day, hours that
// are none, or more of them than the day has. Nothing when all is well.
[[nodiscard]] std::optional<std::string> readingProblem(const SunReading& reading,
                                                        const Settings& settings);

}  // namespace tussock
