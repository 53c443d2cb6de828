// SPDX-License-Identifier: MIT
// Sizes of solids that can be entered by hand, so that a slip of the pen is found out.
#pragma once

#include "core/units/length.h"

namespace tussock {

inline constexpr Length kLeastHeight = Length::centimetres(10);
inline constexpr Length kMostHeight = Length::metres(120);
inline constexpr Length kLeastCrownRadius = Length::centimetres(10);
inline constexpr Length kMostCrownRadius = Length::metres(30);

}  // namespace tussock
