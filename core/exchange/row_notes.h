// SPDX-License-Identifier: MIT
// What to know of rows that are taken: nothing is wrong enough with them to leave them out.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/own_species.h"

namespace tussock {

struct RowNote {
  enum class Of { Week, Synonym, Family };

  Of of = Of::Week;
  std::size_t line = 0;
  std::string column;
  std::string text;  // a sentence or two, with file and line
};

// Adds one for each week that has no day in the month of the same end; the month is that of the
// row, else the published one. `published` may be null; the row must be one that can be used.
void addWeekNotes(const OwnSpecies& own, const Species* published, std::string_view fileName,
                  std::size_t line, std::vector<RowNote>& notes);
// Adds one where the row has the plant under a synonym, `written`.
void addSynonymNote(std::string_view written, const OwnSpecies& own, std::string_view fileName,
                    std::size_t line, std::vector<RowNote>& notes);
// Adds one where the row has a family that nothing known here could be held against.
void addFamilyNote(const OwnSpecies& own, std::string_view fileName, std::size_t line,
                   std::vector<RowNote>& notes);

// Of those of one kind and column the first, and which lines the others are of, `mostLines` of them
// by number: a sentence or more for each kind, in the order of the first ones.
[[nodiscard]] std::vector<std::string> toldTogether(const std::vector<RowNote>& notes,
                                                    std::size_t mostLines);

}  // namespace tussock
