// SPDX-License-Identifier: MIT
// A plant list as text: a species a line, botanical or common name, and if wanted its share of the
// plants after a comma, such as "Monarda fistulosa, 20 %", or the word matrix for a plant between
// the drifts of the others: "Carex pensylvanica, matrix 40 %". What follows a # at the
// start of a line or after a blank is a comment. Also as a spreadsheet saves it: with semicolons or
// tabs, quoted cells, a heading of names and shares, a byte order mark.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/bed.h"

namespace tussock {

struct PlantListFile {
  std::vector<ListedSpecies> plants;  // a share above 1 stands as it was written
};
// Throws std::runtime_error naming file, line and what was expected, for each line that is at
// fault; from the eleventh on their number.
[[nodiscard]] PlantListFile readPlantList(const std::filesystem::path& path,
                                          const Catalogue& facts);
// By its botanical name, a synonym, or a common name that no other species has, whatever the case.
struct SpeciesByName {
  const Species* species = nullptr;
  std::string trouble;  // "which the plant facts do not know. ...", when there is not one
};
[[nodiscard]] SpeciesByName speciesNamed(std::string_view name, const Catalogue& facts);

}  // namespace tussock
