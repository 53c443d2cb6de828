// SPDX-License-Identifier: MIT
#include "core/model/sun_hours_text.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>

namespace tussock {

namespace {

constexpr double kMinutes = 60.0;

std::optional<double> numberIn(const std::string& text) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return std::isfinite(value) && value >= 0.0 ? std::optional(value) : std::nullopt;
}

}  // namespace

std::optional<double> parseSunHours(std::string_view text) {
  std::string plain(text);
  std::erase_if(plain, [](char c) { return c == ' ' || c == '\t'; });
  std::replace(plain.begin(), plain.end(), ',', '.');
  for (const char* unit : {"min", "m"})
    if (plain.ends_with(unit)) plain.resize(plain.size() - std::string_view(unit).size());
  if (plain.ends_with('h')) plain.pop_back();
  const std::size_t parting = plain.find_first_of(":h");
  const auto whole = numberIn(plain.substr(0, parting));
  if (!whole) return std::nullopt;
  if (parting == std::string::npos) return *whole <= 24.0 ? whole : std::nullopt;
  const auto minutes = numberIn(plain.substr(parting + 1));
  if (!minutes || *minutes >= kMinutes || std::floor(*whole) != *whole) return std::nullopt;
  const double hours = *whole + *minutes / kMinutes;
  return hours <= 24.0 ? std::optional(hours) : std::nullopt;
}

}  // namespace tussock
