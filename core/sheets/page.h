// SPDX-License-Identifier: MIT
// The parts that every page has: its size and margins, the head, the cautions and the title strip.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sheets/plan.h"
#include "core/sheets/text_width.h"

namespace tussock {

enum class Orientation { Landscape, Portrait };

inline constexpr double kPageMargin = 12.7;  // mm; half an inch, which home printers can print
inline constexpr double kStripHeight = 8.0;
inline constexpr double kAboveStrip = 2.5;  // mm between cautions and the strip's line
inline constexpr double kNoteLine = 3.6;    // mm from one line of notes to the next

// A page with its size set and nothing on it.
[[nodiscard]] Sheet blankPage(Paper paper, Orientation orientation, std::string title);
[[nodiscard]] PaperBox contentOf(const Sheet& sheet);  // inside the margins

void addLine(Sheet& sheet, PaperPoint from, PaperPoint to, Weight weight, Dash dash = Dash::Solid);
void addBox(Sheet& sheet, const PaperBox& box, Weight weight, Wash wash);
// Italic but for cultivars, ranks and the hybrid sign, as one or more texts on a line.
void addBotanical(Sheet& sheet, PaperPoint at, std::string_view name, TextSize size);

// Which part of a bed in tiles a sheet shows; drawn as a small key.
struct TileKey {
  int columns = 1, rows = 1;
  int column = 0, row = 0;
  std::vector<int> parts;  // part numbers row by row from the top, 0 where there is no sheet
  [[nodiscard]] int partAt(int atColumn, int atRow) const {
    return parts[static_cast<std::size_t>(atRow) * static_cast<std::size_t>(columns) +
                 static_cast<std::size_t>(atColumn)];
  }
};
struct HeadText {
  std::vector<std::string> lines;  // below the title
  std::optional<TileKey> key;
};
// Between head and cautions, where drawing and schedule go. A long head takes as much as it needs,
// for a sheet to scale at least what scale bar and north arrow do.
[[nodiscard]] PaperBox bodyOf(const Sheet& sheet, const HeadText& head,
                              const std::vector<std::string>& cautions);
void addHead(Sheet& sheet, const HeadText& head, UnitSystem units);
void addCautions(Sheet& sheet, const std::vector<std::string>& cautions);
// Nothing in it is cut but names that do not fit on two lines; those stand in full in the head of
// their sheet, the yard's in the overview's.
void addTitleStrip(Sheet& sheet, const Settings& settings, const PlanOptions& options, int number,
                   int pages);

}  // namespace tussock
