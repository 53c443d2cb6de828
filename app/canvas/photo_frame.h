// SPDX-License-Identifier: MIT
// Where the pixels of a photo lie on the site.
#pragma once

#include <QTransform>

#include "core/model/site.h"

namespace tussock {

// Pixels of the picture (y downwards) to site metres.
[[nodiscard]] QTransform photoTransform(const Photo& photo);
// The upright box about the photo, in site metres.
[[nodiscard]] Box boundsOf(const Photo& photo);
// The photo scaled about `a` so that a and b are `apart` from one another. a and b are site points.
[[nodiscard]] Photo scaledByTwoPoints(Photo photo, Point a, Point b, Length apart);
// The photo turned about `about`.
[[nodiscard]] Photo turned(Photo photo, Angle turn, Point about);

}  // namespace tussock
