// SPDX-License-Identifier: MIT
// Everything that can be wrong with a file's integrity, short of its placement rules.
#pragma once

#include <string>
#include <vector>

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/model/yard.h"

namespace tussock {

// `yard` is what the file is believed to hold. Sentences for people; empty when the file is sound.
[[nodiscard]] std::vector<std::string> faultsOf(SQLite::Database& database, const Yard& yard);

}  // namespace tussock
