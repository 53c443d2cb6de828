// SPDX-License-Identifier: MIT
// A sun map as a table, and what the table was computed from.
#pragma once

#include <string>
#include <vector>

#include "core/exchange/sun_notes.h"
#include "core/sun/map.h"

namespace tussock {

// The header x_m,y_m,hours,before_noon,after_noon; then cell centres in site coordinates, south to
// north and west to east, with mean hours of direct sun a day to three places, in all and on both
// sides of solar noon. Cells under buildings, cells that were not asked for, and
// cells with their centre past the edge of the map's area are left out.
[[nodiscard]] std::string sunMapToCsv(const SunMap& map);

// The notes and the columns as JSON, for a file that stands beside the table and bears its name
// with kCsvMetadataSuffix (W3C, Metadata Vocabulary for Tabular Data, 2015). `table` is the table's
// name.
inline constexpr const char* kCsvMetadataSuffix = "-metadata.json";
[[nodiscard]] std::string sunCsvMetadata(const std::string& table,
                                         const std::vector<SunNote>& notes);

}  // namespace tussock
