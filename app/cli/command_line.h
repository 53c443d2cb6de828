// SPDX-License-Identifier: MIT
// The command line: the same functions as the window, for scripts and machines without a screen.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace tussock {

// Exit codes: 0 done, 1 findings not accepted, 2 wrong usage, 3 the file cannot be used.
enum class ExitCode { Done = 0, Findings = 1, Usage = 2, File = 3 };

// True when the arguments (without the program's name) ask for a window: none at all, or one yard
// file, there already or named .yard. Anything else is a command, if perhaps a misspelt one.
[[nodiscard]] bool asksForWindow(const std::vector<std::string>& arguments);

// Results go to `out`, messages to `err`.
[[nodiscard]] ExitCode runCommandLine(const std::vector<std::string>& arguments, std::ostream& out,
                                      std::ostream& err);

}  // namespace tussock
