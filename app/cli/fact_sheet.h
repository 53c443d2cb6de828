// SPDX-License-Identifier: MIT
// All that is known of one plant, as text.
#pragma once

#include "app/cli/commands.h"

namespace tussock {

// Each value in a line of its own, the published one beside one of the user's own, and where that
// was read. Throws UsageError where the name is not that of one plant.
ExitCode printFactSheet(const std::string& name, const PlantFacts& plants, const Yard& yard,
                        Console& console);

}  // namespace tussock
