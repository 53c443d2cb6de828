// SPDX-License-Identifier: MIT
// Change sets as JSON text, the form in which the yard file keeps its history.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

#include "core/edit/change.h"

namespace tussock {

class FormatError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

[[nodiscard]] std::string changeSetToJson(const ChangeSet& edit);
// Exact inverse of the above. Throws FormatError.
[[nodiscard]] ChangeSet changeSetFromJson(std::string_view json);

}  // namespace tussock
