// SPDX-License-Identifier: MIT
// Where the files that come with the program lie.
#pragma once

#include <filesystem>
#include <string>

namespace tussock {

// $TUSSOCK_RESOURCES when set; else the source tree's folder if it is there; else the installed
// one.
[[nodiscard]] std::filesystem::path resourceFolder();
// The whole of a file. Throws std::runtime_error naming the path.
[[nodiscard]] std::string readFile(const std::filesystem::path& path);

}  // namespace tussock
