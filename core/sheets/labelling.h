// SPDX-License-Identifier: MIT
// Where labels stand: inside what they name where there is room, else in the margin around the
// drawing on leaders that do not cross. Millimetres on paper, y downwards.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/sheets/paper_geometry.h"
#include "core/sheets/text_width.h"

namespace tussock {

// How hard to try for a text: beside its thing only, or on a leader if need be.
enum class Effort { Beside, Leader };
struct LabelWish {
  std::string text;                      // may be empty where only `instead` is to stand
  PaperPoint anchor;                     // where a leader ends
  std::vector<Polygon> region;           // what it names, in millimetres
  std::vector<PaperPoint> avoid;         // centre marks that the text must not cover
  std::vector<PaperPoint> beside = {};   // baseline middles next to it to try, best first
  std::vector<PaperPoint> anchors = {};  // other ends that a leader may take
  Effort effort = Effort::Leader;
  Face face = Face::Bold;
  std::string instead = {};  // stands near the anchor where the text finds no place; may be empty
};
struct PlacedLabel {
  PaperText text;
  std::vector<PaperPoint> leader;  // from the text to the anchor; empty when inside
  bool instead = false;            // what stands is the wish's shorter text
};

enum class Sides { AboveAndBelow, AllRound };
// Millimetres of a window's edges that rulers take; leaders pass straight through.
struct RulerBand {
  double left = 0.0, top = 0.0, right = 0.0, bottom = 0.0;
};
// Room for labels around the drawing's window.
struct LabelMargin {
  PaperBox window;
  PaperBox zone;  // the window and the room around it
  Sides sides = Sides::AboveAndBelow;
  RulerBand rulers = {};
  std::vector<Polygon> keepOff = {};   // what texts beside things may not touch
  std::vector<PaperPoint> marks = {};  // centre marks that leaders pass clear of where they can
};
inline constexpr double kLabelBand = 12.5;  // mm above and below a window, two staggered rows
[[nodiscard]] double sideBand(double widestLabel);  // mm left and right of a window
[[nodiscard]] double widestText(const std::vector<LabelWish>& wishes);
// How many labels of that width the margin takes.
[[nodiscard]] std::size_t roomFor(const LabelMargin& margin, double widestLabel);

// One for each wish, in order; nothing where there is no room. Leaders end at least total length,
// which is why no two cross: trading places would shorten two that did. Those that run over a
// centre mark then move where a way is free.
[[nodiscard]] std::vector<std::optional<PlacedLabel>> placeLabels(
    const std::vector<LabelWish>& wishes, const LabelMargin& margin);

}  // namespace tussock
