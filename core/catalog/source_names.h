// SPDX-License-Identifier: MIT
// What the keys of sources stand for, as resources/plants-sources.md explains them.
#pragma once

#include <map>
#include <string>
#include <string_view>

namespace tussock {

// From key to explanation, of text in which an entry reads "**KEY** - explanation" and goes on to
// the next entry, the next item of the list, or an empty line.
using SourceNames = std::map<std::string, std::string, std::less<>>;
[[nodiscard]] SourceNames readSourceNames(std::string_view markdown);

// What a source is called in a line of a list: its explanation up to where that goes into details.
[[nodiscard]] std::string shortTitle(std::string_view explanation);

// Of the file that comes with the program, read once; empty when it is not there.
[[nodiscard]] const SourceNames& shippedSourceNames();

}  // namespace tussock
