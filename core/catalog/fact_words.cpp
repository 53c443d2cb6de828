// SPDX-License-Identifier: MIT
#include "core/catalog/fact_words.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/catalog/fact_choices.h"
#include "core/catalog/fact_figures.h"
#include "core/catalog/species_row.h"

namespace tussock {

namespace {

enum class Kind { Text, Height, Width, Month, Week, Seeds, Names, States, Counted };

struct ColumnKind {
  std::string_view column;
  Kind kind;
  std::string_view counted = {};  // what the figure counts, as it is shown after it
};
constexpr std::array<ColumnKind, 23> kKinds{
    {{"height_min_cm", Kind::Height},
     {"height_max_cm", Kind::Height},
     {"foliage_height_min_cm", Kind::Height},
     {"foliage_height_max_cm", Kind::Height},
     {"spread_cm", Kind::Width},
     {"spacing_cm", Kind::Width},
     {"bloom_start_month", Kind::Month},
     {"bloom_end_month", Kind::Month},
     {"bloom_start_week", Kind::Week},
     {"bloom_end_week", Kind::Week},
     {"up_by_week", Kind::Week},
     {"seeds_per_gram", Kind::Seeds},
     {"synonyms", Kind::Names},
     {"other_names", Kind::Names},
     {"native_states", Kind::States},
     {"sun_hours_min", Kind::Counted, "hours"},
     {"sun_hours_max", Kind::Counted, "hours"},
     {"stratification_days_cold_moist", Kind::Counted, "days"},
     {"warm_first_days", Kind::Counted, "days"},
     {"germination_min_pct", Kind::Counted, "%"},
     {"germination_max_pct", Kind::Counted, "%"},
     {"disease_mass_plants", Kind::Counted, "plants"},
     {"sociability_level", Kind::Counted, "of 5"}}};

ColumnKind kindOf(std::string_view column) {
  const auto at = std::find_if(kKinds.begin(), kKinds.end(),
                               [&](const ColumnKind& one) { return one.column == column; });
  return at == kKinds.end() ? ColumnKind{column, Kind::Text} : *at;
}

bool isBlank(char c) {
  return c == ' ' || c == '\t';
}

std::string trimmed(std::string_view text) {
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return std::string(text);
}

std::string lowered(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

std::vector<std::string> partsOf(std::string_view text, std::string_view marks) {
  std::vector<std::string> parts;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find_first_of(marks, from), text.size());
    if (std::string part = trimmed(text.substr(from, to - from)); !part.empty())
      parts.push_back(std::move(part));
    from = to + 1;
  }
  return parts;
}

std::string joined(const std::vector<std::string>& parts, std::string_view by) {
  return fmt::format("{}", fmt::join(parts, by));
}

// A list as one writes it: commas, semicolons, "or", "and".
std::vector<std::string> listOf(std::string text) {
  for (const std::string_view word : {" or ", " and "})
    for (auto at = text.find(word); at != std::string::npos; at = text.find(word))
      text.replace(at, word.size(), ";");
  return partsOf(text, ",;");
}

std::string shownWord(std::string_view column, const std::string& word) {
  for (const FactWord& one : factWords(column))
    if (one.word == word) return std::string(one.shown);
  return word;
}

// Null when it is none of the words.
const FactWord* wordMeant(std::string_view column, const std::string& typed) {
  const std::string word = lowered(trimmed(typed));
  for (const FactWord& one : factWords(column))
    if (one.word == word || one.shown == word) return &one;
  return nullptr;
}

TypedFact readWords(std::string_view column, std::string_view typed) {
  const bool several = holdsSeveral(column);
  const auto typedWords =
      several ? listOf(lowered(std::string(typed))) : std::vector{std::string(typed)};
  std::vector<std::string> words;
  for (const std::string& one : typedWords) {
    const FactWord* meant = wordMeant(column, one);
    if (!meant)
      return {{},
              fmt::format("Write {} of: {}.", several ? "one or more" : "one",
                          joined(factChoices(column), ", "))};
    words.emplace_back(meant->word);
  }
  return {joined(words, ";"), {}};
}

std::string upper(std::string text) {
  for (char& c : text)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return text;
}

// The figure alone, for the table to judge; whatever follows it is left out when it is the word
// that is shown there, or the start of it.
std::string figureOf(std::string_view typed, std::string_view counted) {
  const std::size_t end = std::min(typed.find_first_not_of("0123456789.,-"), typed.size());
  const std::string after = lowered(trimmed(typed.substr(end)));
  return counted.starts_with(after) ? trimmed(typed.substr(0, end)) : std::string(typed);
}

}  // namespace

std::string shownFact(std::string_view column, std::string_view value, UnitSystem units) {
  if (value.empty()) return {};
  if (!factWords(column).empty()) {
    std::vector<std::string> words = partsOf(value, ";");
    for (std::string& word : words) word = shownWord(column, word);
    return joined(words, ", ");
  }
  const ColumnKind kind = kindOf(column);
  switch (kind.kind) {
    case Kind::Height:
    case Kind::Width:
      return shownSize(value, units);
    case Kind::Month:
      return shownMonth(value);
    case Kind::Week:
      return shownWeek(value);
    case Kind::Seeds:
      return shownSeeds(value, units);
    case Kind::Names:
      return joined(partsOf(value, ";"), ", ");
    case Kind::States:
      return joined(partsOf(value, " "), ", ");
    case Kind::Counted:
      return fmt::format("{} {}", value, kind.counted);
    case Kind::Text:
      break;
  }
  return std::string(value);
}

TypedFact readFact(std::string_view column, std::string_view typed, UnitSystem units) {
  const std::string text = trimmed(typed);
  if (text.empty()) return {};
  if (!factWords(column).empty()) return readWords(column, text);
  const ColumnKind kind = kindOf(column);
  switch (kind.kind) {
    case Kind::Height:
      return readSize(text, units, Length::centimetres(kTallestPlant));
    case Kind::Width:
      return readSize(text, units, Length::centimetres(kWidestPlant));
    case Kind::Month:
      return readMonth(text);
    case Kind::Week:
      return readWeek(text);
    case Kind::Seeds:
      return readSeeds(text);
    case Kind::Names:
      return {joined(partsOf(text, ",;"), ";"), {}};
    case Kind::States:
      return {joined(partsOf(upper(text), " ,;"), " "), {}};
    case Kind::Counted:
      return {figureOf(text, kind.counted), {}};
    case Kind::Text:
      break;
  }
  return {text, {}};
}

std::vector<std::string> factChoices(std::string_view column) {
  std::vector<std::string> choices;
  for (const FactWord& one : factWords(column)) choices.emplace_back(one.shown);
  return choices;
}

}  // namespace tussock
