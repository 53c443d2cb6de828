// SPDX-License-Identifier: MIT
#include "core/units/typed_size.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace tussock {

namespace {

std::string_view withoutSpace(std::string_view text) {
  constexpr std::string_view kSpace = " \t";
  const auto first = text.find_first_not_of(kSpace);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kSpace) - first + 1);
}

std::optional<UnitSystem> areaUnit(std::string_view word, UnitSystem bare) {
  constexpr std::array kMetres{"m²", "m2", "sq m", "square metres", "square meters"};
  constexpr std::array kFeet{"sq ft", "ft²", "ft2", "sq. ft.", "square feet"};
  if (word.empty()) return bare;
  if (std::find(kMetres.begin(), kMetres.end(), word) != kMetres.end()) return UnitSystem::Metres;
  if (std::find(kFeet.begin(), kFeet.end(), word) != kFeet.end()) return UnitSystem::FeetInches;
  return std::nullopt;
}

}  // namespace

std::optional<Area> parseArea(std::string_view text, UnitSystem bare) {
  text = withoutSpace(text);
  double value = 0.0;
  const auto [end, error] =
      std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  if (error != std::errc{} || !std::isfinite(value) || std::signbit(value)) return std::nullopt;
  const auto unit =
      areaUnit(withoutSpace(text.substr(static_cast<std::size_t>(end - text.data()))), bare);
  if (!unit) return std::nullopt;
  return *unit == UnitSystem::FeetInches ? Area::squareFeet(value) : Area::squareMetres(value);
}

std::optional<Length> parsePlantSize(std::string_view text, UnitSystem bare, Length least,
                                     Length most) {
  const auto asMetres = parseLength(text, UnitSystem::Metres);
  const auto asFeet = parseLength(text, UnitSystem::FeetInches);
  if (!asMetres || asMetres == asFeet) return asFeet;  // with its unit, or no length at all
  const double number = asMetres->metres();
  const Length shown =
      bare == UnitSystem::FeetInches ? Length::inches(number) : Length::centimetres(number);
  if (shown >= least && shown <= most) return shown;
  return bare == UnitSystem::FeetInches ? asFeet : asMetres;
}

}  // namespace tussock
