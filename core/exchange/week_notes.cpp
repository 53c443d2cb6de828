// SPDX-License-Identifier: MIT
#include "core/exchange/week_notes.h"

#include <charconv>
#include <optional>

#include <fmt/format.h>

#include "core/catalog/fact_words.h"
#include "core/catalog/week_range.h"

namespace tussock {

namespace {

std::optional<int> wholeIn(const OwnSpecies& own, std::string_view column) {
  for (const OwnFact& fact : own.facts) {
    if (fact.column != column) continue;
    int value = 0;
    const char* end = fact.value.data() + fact.value.size();
    if (std::from_chars(fact.value.data(), end, value).ptr == end) return value;
  }
  return std::nullopt;
}

bool hasDayIn(int week, int month) {
  return static_cast<int>(unsigned(firstDayOf(week - 1).month())) == month ||
         static_cast<int>(unsigned(lastDayOf(week - 1).month())) == month;
}

}  // namespace

void addWeekNotes(const OwnSpecies& own, const Species* published, std::string_view fileName,
                  std::size_t line, std::vector<std::string>& notes) {
  for (const bool first : {true, false}) {
    const char* weekColumn = first ? "bloom_start_week" : "bloom_end_week";
    const char* monthColumn = first ? "bloom_start_month" : "bloom_end_month";
    const auto week = wholeIn(own, weekColumn);
    auto month = wholeIn(own, monthColumn);
    if (!month && published != nullptr)
      month = first ? published->bloomFirstMonth : published->bloomLastMonth;
    if (!week || !month || hasDayIn(*week, *month)) continue;
    const std::string shownMonth =
        shownFact(monthColumn, std::to_string(*month), UnitSystem::Metres);
    notes.push_back(
        fmt::format("{}, line {}, {}: week {} lies outside of {}, which {} gives. The week counts; "
                    "mend one of the two if that is not meant.",
                    fileName, line, weekColumn, *week, shownMonth, monthColumn));
  }
}

}  // namespace tussock
