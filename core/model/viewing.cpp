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

std::optional<Angle> parseSide(std::string_view token) {
  for (std::size_t i = 0; i < kPoints.size(); ++i)
    if (kPoints[i] == token) return Angle::degrees(kDegreesPerPoint * static_cast<double>(i));
  double degrees = 0.0;
  const auto [end, error] = std::from_chars(token.data(), token.data() + token.size(), degrees);
  if (error != std::errc{} || end != token.data() + token.size()) return std::nullopt;
  if (!(degrees >= 0.0 && degrees < 360.0)) return std::nullopt;
  return Angle::degrees(degrees);
}

std::size_t nearestPoint(Angle side) {
  return static_cast<std::size_t>(std::lround(side.degrees() / kDegreesPerPoint)) % kPoints.size();
}

std::string formatSide(Angle side) {
  const std::size_t i = nearestPoint(side);
  if (Angle::degrees(kDegreesPerPoint * static_cast<double>(i)) == side)
    return std::string(kPoints[i]);
  return fmt::format("{}", side.degrees());
}

}  // namespace

std::optional<Viewing> parseViewing(std::string_view text) {
  Viewing result;
  if (text == "all") result.allRound = true;
  if (text.empty() || text == "all") return result;
  while (true) {
    const std::size_t end = text.find(';');
    const auto side = parseSide(text.substr(0, end));
    if (!side) return std::nullopt;
    result.from.push_back(*side);
    if (end == std::string_view::npos) return result;
    text.remove_prefix(end + 1);
  }
}

std::string formatViewing(const Viewing& viewing) {
  if (viewing.allRound) return "all";
  std::string out;
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
