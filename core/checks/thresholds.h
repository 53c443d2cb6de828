// SPDX-License-Identifier: MIT
// The limits the checks use: default, unit, source; each yard may set its own.
#pragma once

#include <string_view>
#include <vector>

#include "core/checks/finding.h"

namespace tussock {

struct Threshold {
  std::string_view id;
  std::string_view label;  // "Largest share of one species"
  double value = 0.0;
  Quantity unit = Quantity::Share;
  std::string_view source;  // a citation, or "common practice"
};
[[nodiscard]] const std::vector<Threshold>& thresholds();
[[nodiscard]] const Threshold* findThreshold(std::string_view id);
// The yard's own value, else the default. Throws std::invalid_argument for an unknown id.
[[nodiscard]] double thresholdFor(const Settings& settings, std::string_view id);

}  // namespace tussock
