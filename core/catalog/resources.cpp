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
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error("Cannot read " + path.string() + ".");
  return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace tussock
