// SPDX-License-Identifier: MIT
// Botanical names as they are set: Latin in italics; cultivars, ranks and the hybrid sign upright
// (International Code of Nomenclature for Cultivated Plants, 9th ed., recommendation 14A).
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tussock {

struct BotanicalPart {
  std::string text;
  bool italic = true;

  bool operator==(const BotanicalPart&) const = default;
};
[[nodiscard]] std::vector<BotanicalPart> botanicalParts(std::string_view name);

}  // namespace tussock
