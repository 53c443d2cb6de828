// SPDX-License-Identifier: MIT
// The rules of RFC 7946 that a reader may rely on, checked on text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tussock::test {

// What breaks the rules, each with its place; empty when all is well.
[[nodiscard]] std::vector<std::string> brokenGeoJsonRules(std::string_view text);

}  // namespace tussock::test
