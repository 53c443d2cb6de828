// SPDX-License-Identifier: MIT
#include "core/sheets/label_slots.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

constexpr double kSlotGap = 3.2;    // mm between labels of a row, where other leaders pass
constexpr double kRow = 4.4;        // from one row of labels to the next
constexpr double kClear = 1.2;      // from the window to where leaders bend
constexpr double kStub = 2.6;       // from the bend to the nearest text
constexpr double kCapital = 2.0;    // height of capitals of the notes' size
constexpr double kDescender = 0.8;  // below the baseline
constexpr double kSidePitch = 4.6;  // from one label at the side to the next

// From the ruler's inner edge, or a little outside a window without one.
double bendFrom(double ruler) {
  return ruler > 0.0 ? -ruler : kClear;
}

PaperBox bendsOf(const LabelMargin& margin) {
  const PaperBox& w = margin.window;
  const RulerBand& r = margin.rulers;
  return {w.left - bendFrom(r.left), w.top - bendFrom(r.top), w.right + bendFrom(r.right),
          w.bottom + bendFrom(r.bottom)};
}

// Two rows, staggered, so that leaders of the outer row pass between labels of the inner one.
void addRows(std::vector<LabelSlot>& slots, const LabelMargin& margin, double width) {
  const bool narrow = margin.sides == Sides::AllRound;
  const PaperBox bends = bendsOf(margin);
  const double left = narrow ? bends.left + kClear : margin.zone.left + width / 2.0;
  const double right = narrow ? bends.right - kClear : margin.zone.right - width / 2.0;
  const double pitch = (width + kSlotGap) / 2.0;
  const int count = right < left ? 0 : static_cast<int>(std::floor((right - left) / pitch)) + 1;
  const double first = (left + right - pitch * (count - 1)) / 2.0;
  for (int i = 0; i < count; ++i) {
    const double x = first + pitch * i, row = i % 2 == 0 ? 0.0 : kRow;
    const double above = margin.window.top - kClear, below = margin.window.bottom + kClear;
    slots.push_back(
        {{x, bends.top}, {x, above - kStub - row + 0.6}, {x, above - kStub - row}, Align::Centre});
    slots.push_back({{x, bends.bottom},
                     {x, below + kStub + row - 0.6},
                     {x, below + kStub + row + kCapital},
                     Align::Centre});
  }
}

void addColumns(std::vector<LabelSlot>& slots, const LabelMargin& margin) {
  const PaperBox bends = bendsOf(margin);
  const double top = bends.top + 1.5 + kClear, bottom = bends.bottom - 1.5 - kClear;
  const int count = static_cast<int>(std::floor((bottom - top) / kSidePitch)) + 1;
  const double first = (top + bottom - kSidePitch * (count - 1)) / 2.0;
  for (int i = 0; i < count; ++i) {
    const double y = first + kSidePitch * i, text = y + kCapital / 2.0;
    const double left = margin.window.left - kClear, right = margin.window.right + kClear;
    slots.push_back({{bends.left, y}, {left - kStub, y}, {left - kStub - 0.8, text}, Align::Right});
    slots.push_back(
        {{bends.right, y}, {right + kStub, y}, {right + kStub + 0.8, text}, Align::Left});
  }
}

bool isInZone(const LabelSlot& slot, const LabelMargin& margin, double width) {
  const PaperBox& zone = margin.zone;
  const double low = slot.text.y - kCapital, high = slot.text.y + kDescender;
  if (low < zone.top || high > zone.bottom) return false;
  if (slot.align == Align::Right) return slot.text.x - width >= zone.left;
  if (slot.align == Align::Left) return slot.text.x + width <= zone.right;
  return slot.text.x - width / 2.0 >= zone.left - 1e-9 &&
         slot.text.x + width / 2.0 <= zone.right + 1e-9;
}

}  // namespace

double sideBand(double widestLabel) {
  return widestLabel + kClear + kStub + 1.6;
}

std::vector<LabelSlot> slotsAround(const LabelMargin& margin, double widestLabel) {
  std::vector<LabelSlot> slots;
  addRows(slots, margin, widestLabel);
  if (margin.sides == Sides::AllRound) addColumns(slots, margin);
  std::erase_if(slots, [&](const LabelSlot& slot) { return !isInZone(slot, margin, widestLabel); });
  return slots;
}

std::size_t roomFor(const LabelMargin& margin, double widestLabel) {
  return slotsAround(margin, widestLabel).size();
}

}  // namespace tussock
