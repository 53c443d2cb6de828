// SPDX-License-Identifier: MIT
#include "core/sheets/label_slots.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

constexpr double kGap = 3.2;        // mm between labels of a row, where other leaders pass
constexpr double kRow = 4.4;        // from one row of labels to the next
constexpr double kClear = 1.2;      // from the window to where leaders bend
constexpr double kStub = 2.6;       // from the bend to the nearest text
constexpr double kCapital = 2.0;    // height of capitals of the notes' size
constexpr double kSidePitch = 4.6;  // from one label at the side to the next

// Two rows, staggered, so that leaders of the outer row pass between labels of the inner one.
void addRows(std::vector<LabelSlot>& slots, const LabelMargin& margin, double width) {
  const bool narrow = margin.sides == Sides::AllRound;
  const double left = narrow ? margin.window.left : margin.zone.left + width / 2.0;
  const double right = narrow ? margin.window.right : margin.zone.right - width / 2.0;
  const double pitch = (width + kGap) / 2.0;
  const int count = right < left ? 0 : static_cast<int>(std::floor((right - left) / pitch)) + 1;
  const double first = (left + right - pitch * (count - 1)) / 2.0;
  for (int i = 0; i < count; ++i) {
    const double x = first + pitch * i, row = i % 2 == 0 ? 0.0 : kRow;
    const double above = margin.window.top - kClear, below = margin.window.bottom + kClear;
    slots.push_back(
        {{x, above}, {x, above - kStub - row + 0.6}, {x, above - kStub - row}, Align::Centre});
    slots.push_back({{x, below},
                     {x, below + kStub + row - 0.6},
                     {x, below + kStub + row + kCapital},
                     Align::Centre});
  }
}

void addColumns(std::vector<LabelSlot>& slots, const LabelMargin& margin) {
  const double top = margin.window.top + 1.5, bottom = margin.window.bottom - 1.5;
  const int count = static_cast<int>(std::floor((bottom - top) / kSidePitch)) + 1;
  const double first = (top + bottom - kSidePitch * (count - 1)) / 2.0;
  for (int i = 0; i < count; ++i) {
    const double y = first + kSidePitch * i, text = y + kCapital / 2.0;
    const double left = margin.window.left - kClear, right = margin.window.right + kClear;
    slots.push_back({{left, y}, {left - kStub, y}, {left - kStub - 0.8, text}, Align::Right});
    slots.push_back({{right, y}, {right + kStub, y}, {right + kStub + 0.8, text}, Align::Left});
  }
}

}  // namespace

double sideBand(double widestLabel) {
  return widestLabel + kClear + kStub + 1.6;
}

std::vector<LabelSlot> slotsAround(const LabelMargin& margin, double widestLabel) {
  std::vector<LabelSlot> slots;
  addRows(slots, margin, widestLabel);
  if (margin.sides == Sides::AllRound) addColumns(slots, margin);
  return slots;
}

std::size_t roomFor(const LabelMargin& margin, double widestLabel) {
  return slotsAround(margin, widestLabel).size();
}

}  // namespace tussock
