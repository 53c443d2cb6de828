// SPDX-License-Identifier: MIT
// Plants of the user's own as comma-separated values: the columns of the plant table, of which a
// file may leave out all but the name.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/exchange/row_notes.h"
#include "core/model/own_species.h"

namespace tussock {

struct OwnPlantsReading {
  std::vector<OwnSpecies> plants;  // without ids, by name
  std::vector<Species> species;    // each as it holds over the published one (mergePlants)
  std::vector<std::size_t> lines;  // of each plant in the file
  std::vector<std::string> names;  // of each as the file has it: its own, or a synonym
  // A column that is not known is an error of the first line alone, and its cells are left out; so
  // is one that new plants need and the table does not have, however many rows want it.
  std::vector<CatalogueError> errors;
  std::set<std::size_t> rowsLeft;   // lines of the rows that cannot be used; the rest is kept
  std::size_t rowsWithoutNews = 0;  // have the name alone, or say what is published already
  // The rows could be read by their names, so that the table can be written anew around those that
  // cannot be used and around columns that are not known.
  bool canBeRewritten = false;
};
// A row adds to the published species of its name, or is a new one that must then be whole. Cells
// that say what is published already are left out, so that a whole table that came from here can
// be given back with a few values changed.
[[nodiscard]] OwnPlantsReading readOwnPlants(std::string_view csv, std::string_view fileName,
                                             const Catalogue& published);

// What a file has to give to the personal plants there are.
struct BroughtIn {
  std::vector<OwnSpecies> taken;     // to go over those of their names, by name
  std::vector<std::string> gaveWay;  // personal plants that lose a value to them; by name
  std::vector<CatalogueError> errors;
  std::set<std::size_t> rowsLeft;   // lines of the rows left out
  std::size_t rowsWithoutNews = 0;  // as of OwnPlantsReading
  // Of rows that are taken: weeks in flower that lie in another month than the one given, names
  // that are synonyms of the plant that gets the values, families that were not checked.
  std::vector<RowNote> notes = {};
};
// As readOwnPlants, but a row of a personal plant adds to that one, and need not be whole either;
// it is left out where the personal values that stay beside it would not go with it, for the two
// would be refused when they are next read. So is what a person cannot have meant (EntryChecks).
[[nodiscard]] BroughtIn bringInPlants(std::string_view csv, std::string_view fileName,
                                      const Catalogue& published,
                                      const std::vector<OwnSpecies>& personal);

// What to know of so many personal plants: they are read at each start of the window and by each
// command, a second for some 8,000 with every column filled. Empty for 20,000 and fewer.
[[nodiscard]] std::string manyPlantsWords(std::size_t plants);

// Of those lines of a table, where rows stand that cannot be used, those of the plants: by what
// stands where the name should be.
[[nodiscard]] std::set<std::size_t> rowsOf(const std::vector<OwnSpecies>& plants,
                                           std::string_view csv,
                                           const std::set<std::size_t>& lines);

// The filled columns only, in the order of the plant table.
[[nodiscard]] std::string ownPlantsCsv(const std::vector<OwnSpecies>& plants);
[[nodiscard]] std::vector<std::string> filledColumns(const std::vector<OwnSpecies>& plants);
// Every column, by name.
[[nodiscard]] std::string plantsCsv(const Catalogue& catalogue);

}  // namespace tussock
