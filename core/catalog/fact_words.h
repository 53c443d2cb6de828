// SPDX-License-Identifier: MIT
// Values of the plant table as people read and write them: sizes in the units of the yard, months
// by name, words in place of the table's own. In the table and its files they stay as they are.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/units/measure_text.h"

namespace tussock {

// What the table holds, as text for people. What is no value of the column is given back as it is.
[[nodiscard]] std::string shownFact(std::string_view column, std::string_view value,
                                    UnitSystem units);

// What was typed, as the table holds it: as `shownFact` has it, in either system of units, or in
// the table's own words. What the table itself refuses is left to be refused there.
struct TypedFact {
  std::string value;
  std::string trouble;  // what to write instead, a whole sentence; empty when it can be read
};
[[nodiscard]] TypedFact readFact(std::string_view column, std::string_view typed, UnitSystem units);

// The words to choose from, as they are shown; none where any text or a figure may stand.
[[nodiscard]] std::vector<std::string> factChoices(std::string_view column);

}  // namespace tussock
