// SPDX-License-Identifier: MIT
// The content hash by which pictures are kept.
#pragma once

#include <string>
#include <string_view>

namespace tussock {

// SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits.
[[nodiscard]] std::string sha256(std::string_view bytes);

}  // namespace tussock
