// SPDX-License-Identifier: MIT
// A skyline as people write or paste it: one direction a line.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/settings.h"

namespace tussock {

struct SkylineRead {
  std::vector<SkylinePoint> points;  // by rising azimuth
  std::string trouble;               // which line is wrong and what to do; then there are no points
};
// Azimuth from true north (0 to 360 degrees) and elevation (0 to below 90), parted by a comma, a
// semicolon, a tab or spaces. Empty lines, lines that begin with # and a first line without figures
// are passed over; degree signs too. With semicolons, tabs or spaces a comma may be the decimal
// mark. One azimuth may be told once only.
[[nodiscard]] SkylineRead parseSkyline(std::string_view text);
// One line each, "120, 12.5".
[[nodiscard]] std::string formatSkyline(const std::vector<SkylinePoint>& skyline);

}  // namespace tussock
