// SPDX-License-Identifier: MIT
#include "tests/support/plant_text.h"

#include "core/catalog/species_row.h"

namespace tussock::test {

std::string plantHeader() {
  std::string line;
  for (const std::string_view column : kPlantColumns)
    line.append(line.empty() ? "" : ",").append(column);
  return line + "\r\n";
}

std::string plantRow(const Cells& values) {
  Cells cells{{"botanical_name", "Monarda fistulosa"},
              {"family", "Lamiaceae"},
              {"genus", "Monarda"},
              {"layer_form", "forb"},
              {"height_min_cm", "75"},
              {"height_max_cm", "120"},
              {"spread_cm", "75"},
              {"spacing_cm", "60"},
              {"sun", "full;part"},
              {"moisture", "dry;medium"}};
  for (const auto& [name, value] : values) cells[name] = value;
  std::string line;
  for (const std::string_view column : kPlantColumns) {
    if (column != kPlantColumns.front()) line += ",";
    const auto at = cells.find(column);
    if (at != cells.end()) line += at->second;
  }
  return line + "\r\n";
}

}  // namespace tussock::test
