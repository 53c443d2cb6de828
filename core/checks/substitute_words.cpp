// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/checks/substitute.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

constexpr double kShownShare = 0.005;  // less would read as nothing

std::string changeWords(const Substitution& done, UnitSystem units) {
  const std::string was = formatArea(done.groundBefore, units);
  const std::string is = formatArea(done.groundAfter, units);
  if (was == is || done.drifts.empty()) return {};
  const double bare = 1.0 - done.groundAfter.squareMetres() / done.groundBefore.squareMetres();
  const std::string left =
      bare < kShownShare ? std::string()
                         : fmt::format(", which leaves {:.0f} % of the ground bare", bare * 100.0);
  return fmt::format("They take {} in place of {}{}.", is, was, left);
}

std::string noPlaceWords(int plants) {
  if (plants == 0) return {};
  return fmt::format("As many as find a place; the same ground would come to {} more.", plants);
}

std::string stayWords(int drifts) {
  if (drifts == 0) return {};
  return fmt::format(
      "{}, for not one plant would find a place there by the rules. Move what is beside, or choose "
      "another species.",
      drifts == 1 ? "1 drift stays as it is" : fmt::format("{} drifts stay as they are", drifts));
}

}  // namespace

std::string groundWords(const Substitution& done, UnitSystem units) {
  std::string all;
  for (const std::string& words :
       {changeWords(done, units), noPlaceWords(done.noPlace), stayWords(done.withoutPlace)})
    if (!words.empty()) all.append(all.empty() ? "" : " ").append(words);
  return all;
}

}  // namespace tussock
