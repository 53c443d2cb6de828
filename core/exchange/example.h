// SPDX-License-Identifier: MIT
// The example yard: the forecourt of an invented public library in an invented town, put together
// from the files in resources/example through the same import and planting that people use.
#pragma once

#include <string>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"

namespace tussock {

struct Example {
  Yard yard;
  std::string picture;  // the bytes of the yard's one photo (PNG), drawn to look like an aerial
};

// Throws std::runtime_error, naming the file, when one of the files is missing or does not fit the
// plant facts.
[[nodiscard]] Example buildExample(const Catalogue& facts);

}  // namespace tussock
