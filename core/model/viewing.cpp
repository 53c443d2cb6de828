// SPDX-License-Identifier: MIT
#include "core/model/viewing.h"

#include <array>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace tussock {

namespace {

constexpr std::array<std::string_view, 16> kPoints{"N",  "NNE", "NE", "ENE", "E",  "ESE",
                                                   "SE", "SSE", "S",  "SSW", "SW", "WSW",
                                                   "W",  "WNW", "NW", "NNW"};
constexpr std::array<std::string_view, 16> kWords{
    "north", "north-north-east", "north-east", "east-north-east",
    "east",  "east-south-east",  "south-east", "south-south-east",
    "south", "south-south-west", "south-west", "west-south-west",
    "west",  "west-north-west",  "north-west", "north-north-west"};
constexpr double kDegreesPerPoint = 22.5;

constexpr std::string_view kRadians = "rad";

std::optional<double> parseNumber(std::string_view text) {
  double number = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return number;
}

std::optional<Angle> parseSide(std::string_view token) {
  for (std::size_t i = 0; i < kPoints.size(); ++i)
    if (kPoints[i] == token) return Angle::degrees(kDegreesPerPoint * static_cast<double>(i));
  const bool radians = token.ends_with(kRadians);
  if (radians) token.remove_suffix(kRadians.size());
  const auto number = parseNumber(token);
  if (!number || !std::isfinite(*number)) return std::nullopt;
  if (radians) return Angle::radians(*number);
  if (!(*number >= 0.0 && *number < 360.0)) return std::nullopt;
  return Angle::degrees(*number);
}

std::size_t nearestPoint(Angle side) {
  return static_cast<std::size_t>(std::lround(side.degrees() / kDegreesPerPoint)) % kPoints.size();
}

// Not every angle is some number of degrees exactly; those are given in radians, so that what was
// written reads back the same.
std::string formatSide(Angle side) {
  std::string radians = fmt::format("{}{}", side.radians(), kRadians);
  if (!(side.degrees() >= 0.0 && side.degrees() < 360.0)) return radians;
  for (std::string text :
       {std::string(kPoints[nearestPoint(side)]), fmt::format("{:.12g}", side.degrees()),
        fmt::format("{}", side.degrees())})
    if (parseSide(text) == side) return text;
  return radians;
}

}  // namespace

std::optional<Viewing> parseViewing(std::string_view text) {
  Viewing result;
  if (text.empty()) return result;
  while (true) {
    const std::size_t end = text.find(';');
    const std::string_view token = text.substr(0, end);
    if (token == "all") {
      result.allRound = true;
    } else if (const auto side = parseSide(token)) {
      result.from.push_back(*side);
    } else {
      return std::nullopt;
    }
    if (end == std::string_view::npos) return result;
    text.remove_prefix(end + 1);
  }
}

std::string formatViewing(const Viewing& viewing) {
  std::string out = viewing.allRound ? "all" : "";
  for (const Angle side : viewing.from) out += (out.empty() ? "" : ";") + formatSide(side);
  return out;
}

std::string describeViewing(const Viewing& viewing) {
  if (viewing.allRound) return "all round";
  std::string out;
  for (const Angle side : viewing.from)
    out += fmt::format("{}the {}", out.empty() ? "" : " and ", kWords[nearestPoint(side)]);
  return out;
}

}  // namespace tussock
