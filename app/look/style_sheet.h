// SPDX-License-Identifier: MIT
// The one style sheet of the window. Widgets ask for a look by a dynamic property "look":
// "note", "heading", "large", "chip", "primary", "quiet", "rail", "figure", "error", "card".
#pragma once

#include <QString>

#include "app/look/theme.h"

namespace tussock {

[[nodiscard]] QString styleSheetFor(const Theme& theme);

}  // namespace tussock
