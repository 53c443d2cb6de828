// SPDX-License-Identifier: MIT
// What stands on the sheets of a plan, and whether pages are fit to hand out.
#pragma once

#include <string_view>
#include <variant>
#include <vector>

#include "core/sheets/plan.h"

namespace tussock::test {

inline constexpr double kPageEdge = 12.7;  // mm that home printers leave free

// Dated 14 April 2027.
[[nodiscard]] PlanOptions optionsFor(Paper paper);
// With smallCatalogue().
[[nodiscard]] Plan planOf(const Yard& yard, Paper paper = Paper::Letter);
[[nodiscard]] Plan planAt(const Yard& yard, int bedScale);

template <class Item>
[[nodiscard]] std::vector<Item> itemsOf(const Sheet& sheet) {
  std::vector<Item> result;
  for (const PaperItem& item : sheet.items)
    if (const auto* found = std::get_if<Item>(&item)) result.push_back(*found);
  return result;
}
[[nodiscard]] std::vector<PaperText> textsOf(const Sheet& sheet);  // of labels too
[[nodiscard]] bool hasText(const Sheet& sheet, std::string_view part);

// Labels, drawing and schedule, counted from what is on the pages, come to the yard's plants.
void expectAllAgree(const Yard& yard, const Plan& plan);
[[nodiscard]] int crossings(const Sheet& sheet);  // of leaders
void expectTextsApart(const Sheet& sheet);
// All inside the margins, no text on another, no leader across another.
void expectSoundPages(const Plan& plan);

}  // namespace tussock::test
