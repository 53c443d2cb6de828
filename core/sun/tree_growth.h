// SPDX-License-Identifier: MIT
// Trees as they will be, so that the sun of later years can be mapped.
#pragma once

#include "core/model/yard.h"

namespace tussock {

// After so many years at the tree's yearly growth, until its mature height. Crown and trunk widen
// in proportion to the height, and the clear trunk under the crown stays as long as it is (common
// practice; no tree keeps to it). Unchanged without growth, from the mature height on, and for
// years that are not above zero.
[[nodiscard]] Tree grownBy(const Tree& tree, double years);
// The yard with all its trees grown; nothing else changes.
[[nodiscard]] Yard grownBy(const Yard& yard, double years);

}  // namespace tussock
