// SPDX-License-Identifier: MIT
// The one tolerance of distances, so that a plant exactly at its limit passes everywhere.
#pragma once

#include "core/units/length.h"

namespace tussock {

inline constexpr Length kTolerance = Length::millimetres(1.0);

[[nodiscard]] constexpr bool atLeast(Length measured, Length required) {
  return measured + kTolerance >= required;
}

}  // namespace tussock
