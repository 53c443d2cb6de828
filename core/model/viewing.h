// SPDX-License-Identifier: MIT
// The sides of a bed that people look from.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/length.h"

namespace tussock {

struct Viewing {
  bool allRound = false;    // an island bed, looked at from everywhere
  std::vector<Angle> from;  // azimuths from the bed towards the people, clockwise from north

  bool operator==(const Viewing&) const = default;
  [[nodiscard]] bool known() const { return allRound || !from.empty(); }
};

// "", or "all", compass points, degrees and radians joined by ';': "S;SSW;200;1.5rad". Nothing when
// misspelt.
[[nodiscard]] std::optional<Viewing> parseViewing(std::string_view text);
// Reads back to the same viewing.
[[nodiscard]] std::string formatViewing(const Viewing& viewing);
// "all round", "the south", "the south and the east"; empty when not known.
[[nodiscard]] std::string describeViewing(const Viewing& viewing);

}  // namespace tussock
