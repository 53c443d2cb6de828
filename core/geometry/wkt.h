// SPDX-License-Identifier: MIT
// Well-known text (OGC 06-103r4) for the shapes we keep; numbers in the shortest form that reads
// back to the same double.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/geometry/polygon.h"

namespace tussock {

[[nodiscard]] std::string toWkt(const Polygon& polygon);
[[nodiscard]] std::string toWkt(const Polyline& line);
[[nodiscard]] std::optional<Polygon> polygonFromWkt(std::string_view text);
[[nodiscard]] std::optional<Polyline> polylineFromWkt(std::string_view text);

}  // namespace tussock
