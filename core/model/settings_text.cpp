// SPDX-License-Identifier: MIT
#include "core/model/settings_text.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace tussock {

namespace {

constexpr int kLeastSeasonDays = 30;
constexpr double kMostHoursOffSun = 2.0;
constexpr std::string_view kStates =
    "AL AK AZ AR CA CO CT DE FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM "
    "NY NC ND OH OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY DC AS GU MP PR VI";

// Of ASCII only: the same whatever the locale.
char upper(char c) {
  return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}
bool isDigit(char c) {
  return c >= '0' && c <= '9';
}
bool isLetter(char c) {
  return upper(c) >= 'A' && upper(c) <= 'Z';
}

// Going forward through the year from `first`; both ends belong to the span.
bool holds(MonthDay first, MonthDay last, MonthDay day) {
  return first <= last ? first <= day && day <= last : first <= day || day <= last;
}

int daysFrom(MonthDay first, MonthDay last) {
  const int days = dayOfYear(last) - dayOfYear(first);
  return days < 0 ? days + 365 : days;
}

bool isZonePart(std::string_view part) {
  return !part.empty() && isLetter(part.front()) &&
         std::all_of(part.begin(), part.end(), [](char c) {
           return isLetter(c) || isDigit(c) || c == '_' || c == '+' || c == '-';
         });
}

}  // namespace

std::optional<std::string> parseState(std::string_view text) {
  std::string state(text);
  std::transform(state.begin(), state.end(), state.begin(), upper);
  if (state.empty()) return state;
  const bool known = state.size() == 2 && isLetter(state[0]) && isLetter(state[1]) &&
                     kStates.find(state) != std::string_view::npos;
  return known ? std::optional(state) : std::nullopt;
}

std::optional<std::string> parseHardinessZone(std::string_view text) {
  if (text.empty()) return std::string();
  const char half = upper(text.back()) == 'A' ? 'a' : upper(text.back()) == 'B' ? 'b' : '\0';
  const std::string_view digits = half != '\0' ? text.substr(0, text.size() - 1) : text;
  if (digits.empty() || digits.size() > 2 || digits.front() == '0' ||
      !std::all_of(digits.begin(), digits.end(), isDigit))
    return std::nullopt;
  const std::string number(digits);
  if (std::stoi(number) > 13) return std::nullopt;
  return half != '\0' ? number + half : number;
}

bool looksLikeTimeZone(std::string_view text) {
  for (int part = 1; part <= 3; ++part) {
    const std::size_t slash = text.find('/');
    if (!isZonePart(text.substr(0, slash))) return false;
    if (slash == std::string_view::npos) return true;
    text.remove_prefix(slash + 1);
  }
  return false;
}

std::string frostTrouble(const Settings& settings) {
  using namespace std::chrono;
  if (!settings.lastFrost || !settings.firstFrost) return {};
  const bool southern = hemisphereOf(settings) == Hemisphere::South;
  const MonthDay last = *settings.lastFrost, first = *settings.firstFrost;
  if (!holds(last, first, southern ? January / 21 : July / 21))
    return fmt::format(
        "From a last frost on {} to a first frost on {} there is no summer {} of the equator. "
        "There the last frost comes in spring, such as {}, and the first in autumn, such as {}. "
        "Correct the two dates or the latitude, or swap them.",
        readableMonthDay(last), readableMonthDay(first), southern ? "south" : "north",
        southern ? "5 October" : "20 April", southern ? "25 April" : "18 October");
  if (const int days = daysFrom(last, first); days < kLeastSeasonDays)
    return fmt::format(
        "From a last frost on {} to a first frost on {} are only {} days. Correct the two dates, "
        "or leave both empty where frost may come in any month.",
        readableMonthDay(last), readableMonthDay(first), days);
  const auto winterFrom = southern ? June / 15 : December / 15;
  const auto winterTo = southern ? August / 15 : February / 15;
  if (!holds(first, last, winterFrom) && !holds(winterFrom, winterTo, first))
    return fmt::format(
        "With a first frost on {} and a last frost on {}, the depth of winter would be free of "
        "frost. Correct the two dates or the latitude.",
        readableMonthDay(first), readableMonthDay(last));
  return {};
}

bool zoneSuits(std::chrono::seconds standardOffset, Angle longitude) {
  return std::abs(hoursAheadOfSun(standardOffset, longitude)) <= kMostHoursOffSun;
}

double hoursAheadOfSun(std::chrono::seconds standardOffset, Angle longitude) {
  const double clock = static_cast<double>(standardOffset.count()) / 3600.0;
  return std::remainder(clock - longitude.degrees() / 15.0, 24.0);
}

}  // namespace tussock
