// SPDX-License-Identifier: MIT
// The stake-out of a bed as a table on paper.
#pragma once

#include <vector>

#include "core/sheets/layout.h"
#include "core/sheets/set_out.h"

namespace tussock {

// `schedule` is the bed's. Below the schedule where it ends the bed's sheets on a page of its own
// with room to spare, else on further pages named after the bed. Nothing for a bed with no drift to
// set out.
void addSetOutTable(std::vector<Sheet>& sheets, const PlanSource& source, const std::string& bed,
                    const std::vector<ScheduleRow>& schedule, const SetOut& work);

}  // namespace tussock
