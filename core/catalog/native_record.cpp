// SPDX-License-Identifier: MIT
#include "core/catalog/native_record.h"

namespace tussock {

std::string_view nativeRecordOf(const Species& species) {
  const std::string_view keys = species.sourceOf("native_states");
  if (keys == "memory") return "from memory";
  if (keys == "own") return "by your own account";
  return "USDA PLANTS";
}

}  // namespace tussock
