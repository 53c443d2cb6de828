// SPDX-License-Identifier: MIT
#include "core/catalog/native_record.h"

namespace tussock {

std::string_view nativeRecordOf(const Species& species) {
  for (const FactSource& source : species.sources) {
    if (source.field != "native_states") continue;
    if (source.keys == "memory") return "from memory";
    if (source.keys == "own") return "by your own account";
  }
  return "USDA PLANTS";
}

}  // namespace tussock
