// SPDX-License-Identifier: MIT
// What a crew is told before it starts: digging, sap, and whose rules govern.
#pragma once

#include <string>
#include <vector>

#include "core/model/yard.h"
#include "core/sheets/sheet.h"

namespace tussock {

// Lines of notes at most `widthMm` wide; `key`, on how to read the sheet, comes first.
[[nodiscard]] std::vector<std::string> cautionLines(const Yard& yard,
                                                    const std::vector<ScheduleRow>& rows,
                                                    const std::string& key, double widthMm);

}  // namespace tussock
