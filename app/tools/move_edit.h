// SPDX-License-Identifier: MIT
// Moving whatever is selected, as one edit.
#pragma once

#include "core/edit/change.h"

namespace tussock {

// Drifts may land in another bed; a bed takes its drifts along.
[[nodiscard]] ChangeSet moveEdit(const Yard& yard, const std::vector<ObjectRef>& refs, Point step);
// The objects that such an edit moves: beds' drifts included, what is locked left out.
[[nodiscard]] std::vector<ObjectRef> movedBy(const Yard& yard, const std::vector<ObjectRef>& refs);

}  // namespace tussock
