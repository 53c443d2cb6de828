// SPDX-License-Identifier: MIT
// The example yard as a file.
#pragma once

#include <filesystem>

#include "core/catalog/catalogue.h"

namespace tussock {

// Writes the example with its picture and no history. Throws StoreError, as YardFile::create does.
void writeExample(const std::filesystem::path& path, const Catalogue& facts);

}  // namespace tussock
