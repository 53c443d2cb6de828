// SPDX-License-Identifier: MIT
// What every object in a file must be, whatever a person may do: shapes valid, numbers finite,
// ids its own.
#pragma once

#include <string>
#include <vector>

#include "core/edit/change.h"

namespace tussock {

// What is wrong, each as a sentence naming the object; empty when nothing is.
[[nodiscard]] std::vector<std::string> faultsOf(const Object& object);
[[nodiscard]] std::vector<std::string> faultsOf(const Yard& yard);  // also ids given twice

// The largest id of an object or plant, before or after; 1 at least.
[[nodiscard]] std::int64_t largestId(const ChangeSet& edit);

}  // namespace tussock
