// SPDX-License-Identifier: MIT
// Comma-separated values (RFC 4180).
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tussock {

// One record with CRLF. Text that a spreadsheet would run as a formula is made harmless by a
// leading apostrophe; fields that need quoting are quoted.
[[nodiscard]] std::string csvRecord(const std::vector<std::string>& fields);

}  // namespace tussock
