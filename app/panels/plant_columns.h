// SPDX-License-Identifier: MIT
// The columns of the plant table as people name them, in groups.
#pragma once

#include <QString>
#include <span>
#include <string_view>

namespace tussock {

struct PlantColumn {
  std::string_view column;  // of the plant table
  const char* label;        // to be translated
  bool needed = false;      // a new plant must have it
  bool prose = false;       // text that may be longer than a line
};
struct PlantColumnGroup {
  const char* title;
  std::span<const PlantColumn> columns;
};
// Every column but the name and the sources, each once.
[[nodiscard]] std::span<const PlantColumnGroup> plantColumnGroups();
// Null for one that is in no group.
[[nodiscard]] const PlantColumn* plantColumn(std::string_view column);
// With the labels in place of the names of columns.
[[nodiscard]] QString withLabels(QString words);
[[nodiscard]] QString labelOf(const PlantColumn& column);
[[nodiscard]] QString titleOf(const PlantColumnGroup& group);

}  // namespace tussock
