// SPDX-License-Identifier: MIT
// A locked drift takes no edit; whoever tries one is told, so that nothing seems to be broken.
#pragma once

#include <vector>

#include "app/canvas/canvas.h"

namespace tussock {

[[nodiscard]] QString lockedWords();
// Says so on the canvas when the drift is locked; false when it is not.
bool tellIfLocked(Canvas& canvas, Id<Drift> drift);
// The locked drifts among the refs, but for those whose bed is among them too.
[[nodiscard]] std::vector<ObjectRef> lockedAmong(const Yard& yard,
                                                 const std::vector<ObjectRef>& refs);

}  // namespace tussock
