// SPDX-License-Identifier: MIT
#include "core/sheets/scale.h"

#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/sheets/plan.h"

namespace tussock {

namespace {

constexpr double kLargestScale = 2000.0;

// "1/2", "1 1/2", "3": inches as a rule shows them, or nothing when not in 32nds.
std::optional<std::string> ruleInches(int scale) {
  if (384 % scale != 0 && 12 * 32 % scale != 0) return std::nullopt;
  int above = 12 * 32 / scale, below = 32;
  while (above % 2 == 0 && below > 1) above /= 2, below /= 2;
  if (below == 1) return fmt::format("{}", above);
  if (above < below) return fmt::format("{}/{}", above, below);
  return fmt::format("{} {}/{}", above / below, above % below, below);
}

std::string describeFeet(int scale) {
  const auto inches = ruleInches(scale);
  if (inches && scale % 10 != 0) return fmt::format("{} in = 1 ft", *inches);
  const bool inTenths = scale % 12 != 0 && 120 % scale == 0;  // as an engineers' rule shows them
  if (inTenths) return fmt::format("{:.1f} in = 1 ft", 12.0 / scale);
  return fmt::format("1 in = {:.4g} ft", scale / 12.0);
}

std::string describeMetres(int scale) {
  const double centimetres = 100.0 / scale;
  if (centimetres >= 0.1) return fmt::format("{:.4g} cm = 1 m", centimetres);
  return fmt::format("1 cm = {:.4g} m", scale / 100.0);
}

std::optional<int> wholeScale(double scale) {
  const double whole = std::round(scale);
  if (!(whole >= 1.0 && whole <= kLargestScale) || std::abs(scale - whole) > 1e-6 * whole)
    return std::nullopt;
  return static_cast<int>(whole);
}

std::optional<Length> paperOrGround(std::string_view text) {
  std::string spaced(text);
  for (char& c : spaced)
    if (c == '-') c = ' ';
  while (!spaced.empty() && spaced.back() == ' ') spaced.pop_back();
  return parseLength(spaced, UnitSystem::FeetInches);
}

std::optional<double> number(std::string_view text) {
  const auto length = parseLength(text, UnitSystem::Metres);
  const bool bare = text.find_first_not_of("0123456789. ") == std::string_view::npos;
  return length && bare ? std::optional(length->metres()) : std::nullopt;
}

}  // namespace

std::optional<int> parseScale(std::string_view text) {
  if (const auto colon = text.find(':'); colon != std::string_view::npos) {
    const auto paper = number(text.substr(0, colon)), ground = number(text.substr(colon + 1));
    if (!paper || !ground || *paper <= 0.0) return std::nullopt;
    return wholeScale(*ground / *paper);
  }
  const auto equals = text.find('=');
  if (equals == std::string_view::npos) return std::nullopt;
  const auto paper = paperOrGround(text.substr(0, equals));
  const auto ground = paperOrGround(text.substr(equals + 1));
  if (!paper || !ground || paper->metres() <= 0.0) return std::nullopt;
  return wholeScale(*ground / *paper);
}

std::string describeScale(int scale, UnitSystem units) {
  return fmt::format("1:{} ({})", scale,
                     units == UnitSystem::FeetInches ? describeFeet(scale) : describeMetres(scale));
}

const std::vector<int>& bedScales(UnitSystem units) {
  static const std::vector<int> feet{24, 32, 36, 40, 48, 60, 64, 72, 96};
  static const std::vector<int> metres{20, 25, 40, 50, 75, 100};
  return units == UnitSystem::FeetInches ? feet : metres;
}

const std::vector<int>& siteScales(UnitSystem units) {
  static const std::vector<int> feet{24,  32,  36,  40,  48,  60,   64,   72,   96,    120,  192,
                                     240, 360, 480, 600, 720, 1200, 2400, 6000, 12000, 24000};
  static const std::vector<int> metres{20,  25,  40,   50,   75,   100,   200,
                                       250, 500, 1000, 2000, 5000, 10000, 20000};
  return units == UnitSystem::FeetInches ? feet : metres;
}

ScaleBar scaleBar(double scale, UnitSystem units, double millimetres) {
  struct Step {
    double length;
    int parts;
  };
  static constexpr std::array<Step, 15> kSteps{{{5000, 5},
                                                {2000, 4},
                                                {1000, 5},
                                                {500, 5},
                                                {200, 4},
                                                {100, 5},
                                                {50, 5},
                                                {20, 4},
                                                {10, 5},
                                                {5, 5},
                                                {2, 4},
                                                {1, 5},
                                                {0.5, 5},
                                                {0.2, 2},
                                                {0.1, 2}}};
  const bool feet = units == UnitSystem::FeetInches;
  const double unit = (feet ? kMetresPerFoot : 1.0) * 1000.0 / scale;
  Step step = kSteps.back();
  for (const Step& candidate : kSteps)
    if (candidate.length * unit <= millimetres) {
      step = candidate;
      break;
    }
  ScaleBar bar{step.length, step.parts, step.length * unit, {}};
  const std::string paper = feet ? fmt::format("{:.4g} in", bar.millimetres / 25.4)
                                 : fmt::format("{:.0f} mm", bar.millimetres);
  bar.text = fmt::format("Measure this bar: {:g} {} at 1:{:g} is {} on paper", bar.real,
                         feet ? "ft" : "m", scale, paper);
  return bar;
}

}  // namespace tussock
