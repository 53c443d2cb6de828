// SPDX-License-Identifier: MIT
// The date that goes on paper.
#pragma once

#include "core/units/date.h"

namespace tussock {

// Today where the computer stands; in UTC it would be tomorrow in an American evening.
[[nodiscard]] Date localToday();

}  // namespace tussock
