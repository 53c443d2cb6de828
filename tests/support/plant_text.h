// SPDX-License-Identifier: MIT
// Plant tables as text, for the readers' tests.
#pragma once

#include <map>
#include <string>

namespace tussock::test {

using Cells = std::map<std::string, std::string, std::less<>>;

// The line of all column names.
[[nodiscard]] std::string plantHeader();
// A sound row of Monarda fistulosa, with `values` in place of its own.
[[nodiscard]] std::string plantRow(const Cells& values);

}  // namespace tussock::test
