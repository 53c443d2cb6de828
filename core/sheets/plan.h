// SPDX-License-Identifier: MIT
// The planting plan: an overview sheet and one or more sheets per bed.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/sheets/sheet.h"

namespace tussock {

enum class Paper { Letter, A4 };
template <>
struct EnumWords<Paper> {
  static constexpr WordTable<Paper, 2> values{{{Paper::Letter, "letter"}, {Paper::A4, "a4"}}};
};

struct PlanOptions {
  Paper paper = Paper::Letter;
  std::optional<int> bedScale;  // 24 for 1:24; the largest usual one that fits when absent
  Date date;
  std::string revision = "A";
};

struct PlanTotals {
  int drawn = 0;      // plants in the yard to be planted or standing
  int labelled = 0;   // sum of the labels of the bed sheets
  int scheduled = 0;  // sum of the schedule of the overview
  int existing = 0;   // of these, what stands there already and is not to be had
};

struct Plan {
  std::string yardName;
  std::vector<Sheet> sheets;
  PlanTotals totals;
};
[[nodiscard]] Plan makePlan(const Yard& yard, const Catalogue& facts, const PlanOptions& options);

// "1:24" and "1/2 in = 1 ft" both give 24; nothing when it is not a scale from 1:1 to 1:2000.
[[nodiscard]] std::optional<int> parseScale(std::string_view text);
[[nodiscard]] std::string describeScale(int scale, UnitSystem units);  // "1:24 (1/2 in = 1 ft)"

}  // namespace tussock
