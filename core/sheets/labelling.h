// SPDX-License-Identifier: MIT
// Where labels stand: inside what they name where there is room, else in the margin around the
// drawing on leaders that do not cross. Millimetres on paper, y downwards.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/sheets/text_width.h"

namespace tussock {

struct LabelWish {
  std::string text;
  PaperPoint anchor;                    // where a leader ends
  std::vector<Polygon> region;          // what it names, in millimetres
  std::vector<PaperPoint> avoid;        // centre marks that the text must not cover
  std::vector<PaperPoint> beside = {};  // baseline middles next to it to try, best first
};
struct PlacedLabel {
  PaperText text;
  std::vector<PaperPoint> leader;  // from the text to the anchor; empty when inside
};

enum class Sides { AboveAndBelow, AllRound };
// Room for labels around the drawing's window.
struct LabelMargin {
  PaperBox window;
  PaperBox zone;  // the window and the room around it
  Sides sides = Sides::AboveAndBelow;
  std::vector<Polygon> keepOff = {};  // what texts beside things may not touch
};
inline constexpr double kLabelBand = 12.5;  // mm above and below a window, two staggered rows
[[nodiscard]] double sideBand(double widestLabel);  // mm left and right of a window
[[nodiscard]] double widestText(const std::vector<LabelWish>& wishes);
// How many labels of that width the margin takes.
[[nodiscard]] std::size_t roomFor(const LabelMargin& margin, double widestLabel);

// One for each wish, in order; nothing for the last ones when the margin is full. Leaders end at
// least total length, which is why no two cross: trading places would shorten two that did.
[[nodiscard]] std::vector<std::optional<PlacedLabel>> placeLabels(
    const std::vector<LabelWish>& wishes, const LabelMargin& margin);

[[nodiscard]] bool overlap(const PaperBox& a, const PaperBox& b);
[[nodiscard]] bool crosses(PaperPoint from, PaperPoint to, const PaperBox& box);

}  // namespace tussock
