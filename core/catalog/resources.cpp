// SPDX-License-Identifier: MIT
#include "core/catalog/resources.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace tussock {

std::filesystem::path resourceFolder() {
  if (const char* chosen = std::getenv("TUSSOCK_RESOURCES")) return chosen;
  const std::filesystem::path source = TUSSOCK_SOURCE_RESOURCES;
  return std::filesystem::exists(source) ? source : TUSSOCK_INSTALLED_RESOURCES;
}

std::string readFile(const std::filesystem::path& path) {
  if (std::filesystem::is_directory(path))
    throw std::runtime_error(path.string() + " is a folder. Name a file.");
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error("Cannot read " + path.string() + ".");
  return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace tussock
