// SPDX-License-Identifier: MIT
// The places around a drawing where a label on a leader can stand.
#pragma once

#include <vector>

#include "core/sheets/labelling.h"

namespace tussock {

struct LabelSlot {
  PaperPoint bend;  // where the leader turns towards the drawing
  PaperPoint stub;  // where it meets the text
  PaperPoint text;  // baseline
  Align align = Align::Centre;
};
[[nodiscard]] std::vector<LabelSlot> slotsAround(const LabelMargin& margin, double widestLabel);

}  // namespace tussock
