// SPDX-License-Identifier: MIT
#include "core/exchange/row_notes.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/catalog/fact_words.h"
#include "core/catalog/search.h"
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

std::string leadWords(const RowNote& first) {
  switch (first.of) {
    case RowNote::Of::Week:
      return fmt::format("A week outside of its month is in {} also on", first.column);
    case RowNote::Of::Synonym:
      return "A synonym is used also on";
    case RowNote::Of::Family:
      return "Nor was the family checked on";
  }
  return {};
}

// " A synonym is used also on lines 4, 7 and 9."
std::string furtherWords(const RowNote& first, std::vector<std::size_t> lines, std::size_t most) {
  if (lines.empty()) return {};
  const std::size_t all = lines.size(), last = lines.back();
  std::string where;
  if (all > most) {
    lines.resize(most);
    where =
        fmt::format("lines {} and {} more up to line {}", fmt::join(lines, ", "), all - most, last);
  } else if (all == 1) {
    where = fmt::format("line {}", last);
  } else {
    lines.pop_back();
    where = fmt::format("lines {} and {}", fmt::join(lines, ", "), last);
  }
  return fmt::format(" {} {}.", leadWords(first), where);
}

}  // namespace

void addWeekNotes(const OwnSpecies& own, const Species* published, std::string_view fileName,
                  std::size_t line, std::vector<RowNote>& notes) {
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
        {RowNote::Of::Week, line, weekColumn,
         fmt::format(
             "{}, line {}, {}: week {} lies outside of {}, which {} gives. The week counts; "
             "mend one of the two if that is not meant.",
             fileName, line, weekColumn, *week, shownMonth, monthColumn)});
  }
}

void addSynonymNote(std::string_view written, const OwnSpecies& own, std::string_view fileName,
                    std::size_t line, std::vector<RowNote>& notes) {
  if (searchWords(written) == searchWords(own.botanicalName)) return;
  notes.push_back(
      {RowNote::Of::Synonym, line, "botanical_name",
       fmt::format("{}, line {}: {} is a synonym of {}; your values are for that plant.", fileName,
                   line, written, own.botanicalName)});
}

void addFamilyNote(const OwnSpecies& own, std::string_view fileName, std::size_t line,
                   std::vector<RowNote>& notes) {
  const auto family = std::ranges::find(own.facts, "family", &OwnFact::column);
  if (family == own.facts.end()) return;
  notes.push_back({RowNote::Of::Family, line, "family",
                   fmt::format("{}, line {}, family: whether {} is in the {} was not checked, for "
                               "the genus is not known here.",
                               fileName, line, genusOf(own.botanicalName), family->value)});
}

std::vector<std::string> toldTogether(const std::vector<RowNote>& notes, std::size_t mostLines) {
  std::vector<std::string> told;
  std::vector<bool> done(notes.size(), false);
  for (std::size_t i = 0; i < notes.size(); ++i) {
    if (done[i]) continue;
    std::vector<std::size_t> lines;
    for (std::size_t j = i + 1; j < notes.size(); ++j) {
      if (notes[j].of != notes[i].of || notes[j].column != notes[i].column) continue;
      done[j] = true;
      lines.push_back(notes[j].line);
    }
    std::ranges::sort(lines);
    told.push_back(notes[i].text + furtherWords(notes[i], lines, mostLines));
  }
  return told;
}

}  // namespace tussock
