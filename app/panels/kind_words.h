// SPDX-License-Identifier: MIT
// The word people use for a kind of object.
#pragma once

#include <QString>

#include "core/model/yard.h"

namespace tussock {

[[nodiscard]] QString kindHeading(ObjectRef ref);  // "Bed", "Height-limit area"

}  // namespace tussock
