// SPDX-License-Identifier: MIT
// What the checks still find of a bed that has been filled, and why it could not be avoided.
#pragma once

#include <string>
#include <vector>

#include "core/checks/registry.h"
#include "core/planting/fill.h"

namespace tussock {

// Sentences; none when nothing is found of the bed. The yard is that after the fill.
[[nodiscard]] std::vector<std::string> whatIsLeft(const CheckInput& input,
                                                  const FillRequest& request,
                                                  const FillResult& result);

}  // namespace tussock
