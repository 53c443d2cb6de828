// SPDX-License-Identifier: MIT
// An edit as a value: what each object was before and is after. Undo is its inverse.
#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

// Absent before: added. Absent after: removed. Both: changed.
struct Change {
  std::optional<Object> before;
  std::optional<Object> after;

  bool operator==(const Change&) const = default;
};

[[nodiscard]] ObjectRef subjectOf(const Change& change);

struct ChangeSet {
  std::string label;  // "Move drift", as the undo entry says it
  std::vector<Change> changes;

  bool operator==(const ChangeSet&) const = default;
  [[nodiscard]] bool empty() const { return changes.empty(); }
};

// The yard is not what the change set was made for.
class EditConflict : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

// The yard after the edit. Throws EditConflict when an object is not as `before` says.
[[nodiscard]] Yard apply(const Yard& yard, const ChangeSet& edit);
[[nodiscard]] ChangeSet inverse(const ChangeSet& edit);
// The change set that leads from one yard to the other; empty when they are equal.
[[nodiscard]] ChangeSet difference(const Yard& from, const Yard& to, std::string label);

}  // namespace tussock
