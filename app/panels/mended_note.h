// SPDX-License-Identifier: MIT
// What settling a drift could not mend, in words.
#pragma once

#include <QString>

#include "core/checks/mend_drift.h"

namespace tussock {

[[nodiscard]] QString mendedNote(const MendedDrift& mended);  // empty when all is mended

}  // namespace tussock
