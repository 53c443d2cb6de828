// SPDX-License-Identifier: MIT
// The corners of whatever has corners, and the same object with other corners.
#pragma once

#include <optional>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

struct Outline {
  std::vector<Ring> rings;  // the outer one first; a line has one
  bool closed = true;

  bool operator==(const Outline&) const = default;
};
struct CornerAt {
  std::size_t ring = 0, corner = 0;
  bool operator==(const CornerAt&) const = default;
};

// Nothing for objects without corners, such as trees and drifts.
[[nodiscard]] std::optional<Outline> outlineOf(const Object& object);
[[nodiscard]] Object withOutline(Object object, const Outline& outline);

[[nodiscard]] Outline withCornerAt(Outline outline, CornerAt at, Point to);
// A new corner after the given one.
[[nodiscard]] Outline withCornerAfter(Outline outline, CornerAt at, Point to);
// A hole loses its last three corners at once; nothing when too few would be left.
[[nodiscard]] std::optional<Outline> withoutCorner(Outline outline, CornerAt at);
// Why an outline cannot be used and what to do, in a sentence each.
[[nodiscard]] std::string refusalOf(Invalidity reason);
// The same of an outline; empty when it can be used.
[[nodiscard]] std::string troubleWith(const Outline& outline);

}  // namespace tussock
