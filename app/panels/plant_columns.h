// SPDX-License-Identifier: MIT
// The columns of the plant table as people name them, in groups.
#pragma once

#include <QString>
#include <span>
#include <string_view>

namespace tussock {

struct PlantColumn {
  std::string_view column;  // of the plant table
  const char* label;        // to be translated, with its unit
  bool needed = false;      // a new plant must have it
};
struct PlantColumnGroup {
  const char* title;
  std::span<const PlantColumn> columns;
};
// Every column but the name and the sources, each once.
[[nodiscard]] std::span<const PlantColumnGroup> plantColumnGroups();
[[nodiscard]] QString labelOf(const PlantColumn& column);
[[nodiscard]] QString titleOf(const PlantColumnGroup& group);

}  // namespace tussock
