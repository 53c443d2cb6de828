// SPDX-License-Identifier: MIT
// The rows of a plant table that can be read at all, before any value is looked at.
#pragma once

#include <cstddef>
#include <functional>
#include <string_view>
#include <vector>

#include "core/catalog/species_row.h"
#include "core/model/own_species.h"

namespace tussock {

// A whole table has a column for every fact. One that only adds to another needs the names alone.
enum class ColumnsAsked { All, NameOnly };

// Rows without any value, and columns without a heading, are passed over; one of these that has a
// value is told.
struct PlantTable {
  ColumnPlaces places;
  std::vector<TableRow> rows;  // as many cells as columns, in UTF-8
  std::vector<CatalogueError> errors;
  std::size_t headerLine = 0;  // of the column names; 0 when there are none to be read
};
[[nodiscard]] PlantTable readPlantTable(std::string_view csv, std::string_view fileName,
                                        ColumnsAsked asked);
// The same without holding the rows of a long table: each is given as it is read, with the table as
// it is known by then; `rows` stays empty.
using PlantRowTaker = std::function<void(TableRow row, const PlantTable& table)>;
[[nodiscard]] PlantTable readPlantTable(std::string_view csv, std::string_view fileName,
                                        ColumnsAsked asked, const PlantRowTaker& take);
// By line, those of one line as they are.
void sortByLine(std::vector<CatalogueError>& errors);
// The filled cells of a row by their columns, in their order, without guards; those of columns that
// are not known too. Its name may be empty; it has no id.
[[nodiscard]] OwnSpecies ownPlantOf(TableRow row, const ColumnPlaces& places);

}  // namespace tussock
