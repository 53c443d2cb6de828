// SPDX-License-Identifier: MIT
#include "core/catalog/tolerances.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tussock {

namespace {

constexpr std::string_view kHeights = "the range of heights meets that of the source";
constexpr std::string_view kHalf = "at least half of it is what the source gives";
constexpr std::string_view kMonths =
    "at least half of the months in flower are those of the source";

constexpr std::array<std::pair<std::string_view, std::string_view>, 8> kTolerances{
    {{"height_min_cm", kHeights},
     {"height_max_cm", kHeights},
     {"spread_cm", "0.6 to 1.5 times the spread that the source gives"},
     {"sun", kHalf},
     {"moisture", kHalf},
     {"bloom_start_month", kMonths},
     {"bloom_end_month", kMonths},
     {"flower_color", "the colour of the source or one next to it"}}};

}  // namespace

std::string_view toleranceOf(std::string_view column) {
  const auto at = std::find_if(kTolerances.begin(), kTolerances.end(),
                               [&](const auto& one) { return one.first == column; });
  return at == kTolerances.end() ? std::string_view() : at->second;
}

}  // namespace tussock
