// SPDX-License-Identifier: MIT
// The words of the plant table that stand for a choice, and what people call them.
#pragma once

#include <span>
#include <string_view>

namespace tussock {

struct FactWord {
  std::string_view word;   // in the table
  std::string_view shown;  // to people
};
// Empty for a column that holds no such words.
[[nodiscard]] std::span<const FactWord> factWords(std::string_view column);
// Whether a cell of the column may hold several of them.
[[nodiscard]] bool holdsSeveral(std::string_view column);

}  // namespace tussock
