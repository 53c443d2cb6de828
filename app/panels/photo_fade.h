// SPDX-License-Identifier: MIT
// Fade of a photo as the window shows it: 0 % is the photo in full, 100 % is nothing of it.
#pragma once

#include <cmath>

#include "core/model/site.h"

namespace tussock {

inline constexpr int kMostFade = 100;

[[nodiscard]] inline int fadeOf(const Photo& photo) {
  return int(std::lround((1.0 - photo.opacity) * kMostFade));
}

inline void setFade(Photo& photo, int percent) {
  photo.opacity = 1.0 - double(percent) / kMostFade;
}

}  // namespace tussock
