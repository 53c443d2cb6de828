// SPDX-License-Identifier: MIT
#include "app/cli/plant_filters.h"

#include <algorithm>

#include <fmt/format.h>

#include "app/cli/commands.h"
#include "core/catalog/fact_words.h"
#include "core/catalog/native_record.h"

namespace tussock {

namespace {

// "feeds-caterpillars": a word that needs no quotes.
std::string hyphened(std::string_view word) {
  std::string text(word);
  std::replace(text.begin(), text.end(), ' ', '-');
  return text;
}

template <NamedEnum E>
std::vector<std::string> wordsOf() {
  std::vector<std::string> words;
  for (const auto& [value, word] : EnumWords<E>::values) words.push_back(hyphened(word));
  return words;
}

template <NamedEnum E>
std::optional<E> fromHyphened(const std::string& text) {
  for (const auto& [value, word] : EnumWords<E>::values)
    if (hyphened(word) == text) return value;
  return std::nullopt;
}

template <NamedEnum E>
std::set<E> valuesOf(const std::vector<std::string>& words) {
  std::set<E> values;
  for (const std::string& word : words)
    if (const auto value = fromHyphened<E>(word)) values.insert(*value);
  return values;
}

template <NamedEnum E>
void addChoice(CLI::App& command, const char* name, std::vector<std::string>& into,
               const char* says) {
  command.add_option(name, into, says)->delimiter(',')->check(CLI::IsMember(wordsOf<E>()));
}

// Of what the plants have, the one meant, whatever its case.
std::string wordAmong(const std::set<std::string>& known, const std::string& typed,
                      const char* option) {
  for (const std::string& word : known)
    if (CLI::detail::to_lower(word) == CLI::detail::to_lower(typed)) return word;
  throw UsageError(fmt::format("{} is '{}', which no plant has. There are: {}.", option, typed,
                               fmt::join(known, ", ")));
}

std::set<std::string> familiesOf(const Catalogue& facts) {
  std::set<std::string> families;
  for (const Species& species : facts.species()) families.insert(species.family);
  families.erase("");
  return families;
}

std::set<std::string> wordsAmong(const std::set<std::string>& known,
                                 const std::vector<std::string>& typed, const char* option) {
  std::set<std::string> chosen;
  for (const std::string& one : typed) chosen.insert(wordAmong(known, one, option));
  return chosen;
}

int monthFrom(const std::string& typed) {
  const TypedFact read = readFact("bloom_start_month", typed, UnitSystem::Metres);
  const int month = read.trouble.empty() ? std::atoi(read.value.c_str()) : 0;
  if (month >= 1 && month <= 12) return month;
  throw UsageError("--in-flower is '" + typed +
                   "', which is no month. Give one such as August or 8, or two as in 8-9.");
}

// Over New Year where the last comes before the first.
std::set<int> monthsFrom(const std::string& typed) {
  if (typed.empty()) return {};
  const auto dash = typed.find('-');
  const int first = monthFrom(typed.substr(0, dash));
  const int last = dash == std::string::npos ? first : monthFrom(typed.substr(dash + 1));
  std::set<int> months{last};
  for (int month = first; month != last; month = month % 12 + 1) months.insert(month);
  return months;
}

std::optional<Length> heightFrom(const std::string& typed, const char* option, UnitSystem units) {
  if (typed.empty()) return std::nullopt;
  const auto height = parseLength(typed, units);
  if (!height)
    throw UsageError(
        fmt::format("{} is '{}', which is no height. Write 4 ft, 30 in or 90 cm.", option, typed));
  return height;
}

// By its letters or its name, in whatever case.
std::string stateFrom(const std::string& typed, const Catalogue& facts) {
  if (typed.empty()) return {};
  std::set<std::string> known;
  for (const Species& species : facts.species())
    known.insert(species.nativeStates.begin(), species.nativeStates.end());
  for (const std::string& letters : known)
    if (CLI::detail::to_lower(std::string(stateName(letters))) == CLI::detail::to_lower(typed))
      return letters;
  return wordAmong(known, typed, "--recorded-in");
}

}  // namespace

void addPlantFilters(CLI::App& command, PlantFilterOptions& options) {
  addChoice<SunNeed>(command, "--sun", options.sun, "Sun that it takes");
  addChoice<Moisture>(command, "--moisture", options.moisture, "Ground that it takes");
  addChoice<Habit>(command, "--form", options.forms, "Growth form");
  addChoice<Layer>(command, "--layer", options.layers, "Its usual layer");
  addChoice<Trait>(command, "--trait", options.traits, "What it must have, all of them");
  command.add_option("--colour,--color", options.colours, "Flower colour")->delimiter(',');
  command.add_option("--family", options.families, "Family")->delimiter(',');
  command.add_option("--in-flower", options.inFlower,
                     "In flower in this month, or in one of several: August, 8 or 8-9");
  command.add_option("--lowest", options.lowest, "Least height in flower, such as '2 ft' or 60cm");
  command.add_option("--highest", options.highest, "Greatest height in flower");
  command.add_option(
      "--recorded-in", options.recordedIn,
      "State that it is recorded in as native (USDA PLANTS), such as IA or Iowa: a first filter");
  command.add_option("--order", options.order, "What comes first")
      ->check(CLI::IsMember(wordsOf<RankOrder>()));
}

PlantFilter filterFrom(const PlantFilterOptions& options, const Catalogue& facts,
                       UnitSystem units) {
  PlantFilter filter;
  filter.sun = valuesOf<SunNeed>(options.sun);
  filter.moisture = valuesOf<Moisture>(options.moisture);
  filter.habits = valuesOf<Habit>(options.forms);
  filter.layers = valuesOf<Layer>(options.layers);
  filter.traits = valuesOf<Trait>(options.traits);
  filter.colours = wordsAmong(coloursToChoose(facts), options.colours, "--colour");
  filter.families = wordsAmong(familiesOf(facts), options.families, "--family");
  filter.months = monthsFrom(options.inFlower);
  filter.lowest = heightFrom(options.lowest, "--lowest", units);
  filter.highest = heightFrom(options.highest, "--highest", units);
  if (filter.lowest && filter.highest && *filter.lowest > *filter.highest)
    throw UsageError(fmt::format(
        "--lowest is {}, which is above --highest, {}: no plant is both. Give the lower of the two "
        "as --lowest.",
        options.lowest, options.highest));
  filter.state = stateFrom(options.recordedIn, facts);
  return filter;
}

std::optional<RankOrder> orderFrom(const PlantFilterOptions& options) {
  return fromHyphened<RankOrder>(options.order);
}

}  // namespace tussock
