// SPDX-License-Identifier: MIT
#include "core/catalog/row_cells.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace tussock {

namespace {

template <class T>
std::optional<T> parsed(std::string_view text, int base = 10) {
  T value{};
  std::from_chars_result result{};
  if constexpr (std::is_floating_point_v<T>)
    result = std::from_chars(text.data(), text.data() + text.size(), value);
  else
    result = std::from_chars(text.data(), text.data() + text.size(), value, base);
  if (result.ec != std::errc{} || result.ptr != text.data() + text.size()) return std::nullopt;
  return value;
}

// Which mark a comma stands for differs between countries, so it is asked about, never guessed.
std::string_view commaHint(std::string_view cell) {
  return cell.find(',') == std::string_view::npos ? ""
                                                  : ", with a point for decimals and no commas";
}

}  // namespace

std::string_view trimmedCell(std::string_view text) {
  constexpr std::string_view kBlanks = " \t\r\n";
  const std::size_t first = text.find_first_not_of(kBlanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

std::string RowCells::name(std::string_view column) {
  std::string cell(text(column));
  if (cell.empty()) fail(column, "some text");
  return cell;
}

std::optional<int> RowCells::whole(std::string_view column, int least, int most) {
  const std::string_view cell = text(column);
  if (cell.empty()) return std::nullopt;
  const auto value = parsed<int>(cell);
  if (value && *value >= least && *value <= most) return value;
  fail(column, fmt::format("a whole number from {} to {}{}", least, most, commaHint(cell)));
  return std::nullopt;
}

std::optional<double> RowCells::number(std::string_view column, double least, double most) {
  const std::string_view cell = text(column);
  if (cell.empty()) return std::nullopt;
  const auto value = parsed<double>(cell);
  if (value && std::isfinite(*value) && *value >= least && *value <= most) return value;
  fail(column, fmt::format("a number from {:.10g} to {:.10g}{}", least, most, commaHint(cell)));
  return std::nullopt;
}

Length RowCells::centimetres(std::string_view column, double least, double most) {
  if (text(column).empty())
    fail(column, fmt::format("a number of centimetres from {:g} to {:g}", least, most));
  return Length::centimetres(number(column, least, most).value_or(least));
}

std::optional<Rgb> RowCells::colour(std::string_view column) {
  const std::string_view cell = text(column);
  if (cell.empty()) return std::nullopt;
  const auto value =
      cell.size() == 7 && cell.front() == '#' ? parsed<int>(cell.substr(1), 16) : std::nullopt;
  if (value && *value >= 0) return Rgb{*value >> 16, *value >> 8 & 255, *value & 255};
  fail(column, "a colour such as #8A7FC0");
  return std::nullopt;
}

std::vector<std::string> RowCells::parts(std::string_view column, char separator) const {
  const std::string_view cell = text(column);
  std::vector<std::string> result;
  for (std::size_t from = 0; from <= cell.size();) {
    const std::size_t to = std::min(cell.find(separator, from), cell.size());
    const std::string_view part = trimmedCell(cell.substr(from, to - from));
    if (!part.empty()) result.emplace_back(part);
    from = to + 1;
  }
  return result;
}

bool RowCells::sound(std::string_view low, std::string_view high) const {
  return std::none_of(failed_.begin(), failed_.end(),
                      [&](const std::string& column) { return column == low || column == high; });
}

void RowCells::fail(std::string_view column, std::string expected) {
  failed_.emplace_back(column);
  errors_.push_back({std::string(fileName_), line_, std::string(column), std::string(text(column)),
                     std::move(expected)});
}

}  // namespace tussock
