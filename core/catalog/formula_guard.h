// SPDX-License-Identifier: MIT
// Text that a spreadsheet would run as a formula, and making it harmless (OWASP, CSV Injection:
// cells that begin with =, +, -, @, tab or carriage return; line feed and the full-width forms of
// the four signs too, to be careful).
#pragma once

#include <string>
#include <string_view>

namespace tussock {

// A plain number such as -3.5 is no formula.
[[nodiscard]] bool runsAsFormula(std::string_view text);
// With an apostrophe before what would run, at the start and, as not all programs split at commas,
// after semicolons, tabs and line ends; all else as it is.
[[nodiscard]] std::string guarded(std::string_view text);
// False for most texts, which are as they were given to `guarded`.
[[nodiscard]] bool mayBeGuarded(std::string_view text);
// What `guarded` was given.
[[nodiscard]] std::string unguarded(std::string_view text);

}  // namespace tussock
