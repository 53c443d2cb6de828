// SPDX-License-Identifier: MIT
#include "core/catalog/fact_figures.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/catalog/search.h"
#include "core/catalog/species_row.h"
#include "core/catalog/week_range.h"

namespace tussock {

namespace {

constexpr Length kSmallest = Length::centimetres(1);  // as the table has it
constexpr double kGramsInOunce = 28.349523125;
constexpr std::array<std::string_view, 12> kMonths{"January",   "February", "March",    "April",
                                                   "May",       "June",     "July",     "August",
                                                   "September", "October",  "November", "December"};

template <class T>
std::optional<T> numberFrom(std::string_view text) {
  T value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

// As short as it can be without losing a hundredth.
std::string plainNumber(double value) {
  return fmt::format("{}", std::round(value * 100.0) / 100.0);
}

// To two figures: counts of one species differ between lots by far more than that.
long twoFigures(double value) {
  double step = 1.0;
  while (value / step >= 100.0) step *= 10.0;
  return std::lround(value / step) * std::lround(step);
}

// By its first three letters or more; 0 when it is no month.
int monthNamed(const std::string& word) {
  constexpr std::size_t kShortest = 3;
  for (std::size_t i = 0; i < kMonths.size(); ++i)
    if (word.size() >= kShortest && searchWords(kMonths[i]).front().starts_with(word))
      return static_cast<int>(i) + 1;
  return 0;
}

// "30 April" or "April 30".
std::optional<int> weekOfDay(const std::vector<std::string>& words) {
  if (words.size() != 2) return std::nullopt;
  for (const auto& [name, number] :
       {std::pair(words[1], words[0]), std::pair(words[0], words[1])}) {
    const int month = monthNamed(name);
    const auto day = numberFrom<unsigned>(number);
    if (month == 0 || !day) continue;
    const MonthDay on{std::chrono::month(static_cast<unsigned>(month)), std::chrono::day{*day}};
    if (on.ok()) return weekOf(on) + 1;
  }
  return std::nullopt;
}

bool isOneOf(const std::string& word, std::initializer_list<std::string_view> words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

}  // namespace

std::string shownSize(std::string_view centimetres, UnitSystem units) {
  const auto value = numberFrom<double>(centimetres);
  return value ? formatPlantSize(Length::centimetres(*value), units) : std::string(centimetres);
}

bool isNegative(std::string_view typed) {
  for (const std::string_view sign : {"-", "\u2212"})
    if (typed.starts_with(sign)) {
      typed.remove_prefix(sign.size());
      typed.remove_prefix(std::min(typed.find_first_not_of(' '), typed.size()));
      return !typed.empty() && (typed[0] == '.' || (typed[0] >= '0' && typed[0] <= '9'));
    }
  return false;
}

TypedFact readSize(std::string_view typed, UnitSystem units, Length most) {
  if (isNegative(typed))
    return {{},
            fmt::format("Write a size from {} to {}; it must not be negative.",
                        formatLength(kSmallest, units), formatLength(most, units))};
  const auto read = parseLength(typed, UnitSystem::Metres);
  if (!read || read != parseLength(typed, UnitSystem::FeetInches))
    return {{},
            fmt::format("Write a size with its unit, such as {}.", units == UnitSystem::FeetInches
                                                                       ? "18 in, 2' 6\" or 45 cm"
                                                                       : "45 cm, 1.2 m or 18 in")};
  if (*read < kSmallest || *read > most)
    return {{},
            fmt::format("Write a size from {} to {}.", formatLength(kSmallest, units),
                        formatLength(most, units))};
  return {plainNumber(read->metres() * 100.0), {}};
}

std::string shownMonth(std::string_view number) {
  const auto month = numberFrom<std::size_t>(number);
  return month && *month >= 1 && *month <= kMonths.size() ? std::string(kMonths[*month - 1])
                                                          : std::string(number);
}

TypedFact readMonth(std::string_view typed) {
  if (isNegative(typed))
    return {{}, "Write a month by its name, such as June; it must not be negative."};
  const auto words = searchWords(typed);
  if (words.size() == 1) {
    if (const int month = monthNamed(words.front()); month > 0) return {std::to_string(month), {}};
    const auto number = numberFrom<std::size_t>(words.front());
    if (number && *number >= 1 && *number <= kMonths.size()) return {words.front(), {}};
  }
  return {{}, "Write a month by its name, such as June."};
}

std::string shownWeek(std::string_view number) {
  const auto week = numberFrom<int>(number);
  if (!week || *week < 1 || *week > kWeeksInYear) return std::string(number);
  return fmt::format("week {}, from {}", *week, readableMonthDay(firstDayOf(*week - 1)));
}

TypedFact readWeek(std::string_view typed) {
  if (isNegative(typed)) return {{}, "Write a week from 1 to 52; it must not be negative."};
  auto words = searchWords(typed);
  if (const auto week = weekOfDay(words)) return {std::to_string(*week), {}};
  if (!words.empty() && words.front() == "week") words.erase(words.begin());
  const auto week = words.empty() ? std::nullopt : numberFrom<int>(words.front());
  const bool alone = words.size() == 1 || (words.size() > 1 && words[1] == "from");
  if (week && alone && *week >= 1 && *week <= kWeeksInYear) return {std::to_string(*week), {}};
  return {{}, "Write a week from 1 to 52 or a day, such as week 18 or 30 April."};
}

std::string shownSeeds(std::string_view perGram, UnitSystem units) {
  const auto value = numberFrom<double>(perGram);
  if (!value) return std::string(perGram);
  if (units == UnitSystem::Metres) return fmt::format("{} in a gram", perGram);
  return fmt::format("{} in an ounce", twoFigures(*value * kGramsInOunce));
}

TypedFact readSeeds(std::string_view typed) {
  if (isNegative(typed))
    return {
        {},
        fmt::format("Write how many seeds are in a gram, from {:g} to {:.0f}, or in an ounce; they "
                    "must not be negative.",
                    kFewestSeeds, kMostSeeds)};
  const std::size_t end = std::min(typed.find_first_not_of("0123456789."), typed.size());
  const auto number = numberFrom<double>(typed.substr(0, end));
  auto words = searchWords(typed.substr(end));
  std::erase_if(words, [](const std::string& word) {
    return isOneOf(word, {"in", "to", "a", "an", "the", "per", "seeds"});
  });
  if (number && !words.empty() && isOneOf(words.front(), {"gram", "g"}))
    return {plainNumber(*number), {}};
  if (number && !words.empty() && isOneOf(words.front(), {"ounce", "oz"}))
    return {plainNumber(*number / kGramsInOunce), {}};
  return {{},
          "Write how many seeds are in a gram or an ounce, such as 300 in a gram or 8500 in an "
          "ounce."};
}

}  // namespace tussock
