// SPDX-License-Identifier: MIT
// The stake-out as it stands on paper.
#include "core/sheets/set_out_table.h"

#include <algorithm>
#include <cmath>
#include <string>

#include <gtest/gtest.h>

#include "tests/support/plan_reading.h"
#include "tests/support/planted_yard.h"

namespace tussock {
namespace {

using namespace test;

// Texts of one line of print, from left to right.
std::vector<std::string> lineOf(const Sheet& sheet, const PaperText& first) {
  std::vector<PaperText> line;
  for (const PaperText& text : itemsOf<PaperText>(sheet))
    if (std::abs(text.at.y - first.at.y) < 0.1) line.push_back(text);
  std::sort(line.begin(), line.end(),
            [](const PaperText& a, const PaperText& b) { return a.at.x < b.at.x; });
  std::vector<std::string> words;
  for (const PaperText& text : line) words.push_back(text.text);
  return words;
}

// Rows under the heads of the stake-out table.
std::vector<std::vector<std::string>> stakeRows(const Sheet& sheet) {
  std::vector<std::vector<std::string>> rows;
  double head = 1e9;
  for (const PaperText& text : itemsOf<PaperText>(sheet))
    if (text.text == "Tapes cross at") head = text.at.y;
  for (const PaperText& text : itemsOf<PaperText>(sheet))
    if (text.at.y > head + 1 && text.bold && text.size == TextSize::Body &&
        text.at.x < kPageEdge + 0.1) {
      auto row = lineOf(sheet, text);
      if (row.size() == 7) rows.push_back(std::move(row));
    }
  return rows;
}

int toPlantIn(const Yard& yard) {
  int drifts = 0;
  for (const Drift& drift : yard.drifts) drifts += !drift.existing() && !drift.plants.empty();
  return drifts;
}

TEST(SetOutTable, HasARowForEveryDriftToBePlanted) {
  for (const Yard& yard : {plantedYard(), griddedYard(15, 6, 10, 6)})
    for (const Paper paper : {Paper::Letter, Paper::A4}) {
      int rows = 0;
      for (const Sheet& sheet : planOf(yard, paper).sheets)
        rows += static_cast<int>(stakeRows(sheet).size());
      EXPECT_EQ(rows, toPlantIn(yard));
    }
}

TEST(SetOutTable, ATiledBedHasItOnce) {
  const Yard yard = griddedYard(15, 6, 10, 6);
  int rows = 0;
  for (const Sheet& sheet : planAt(yard, 24).sheets)
    rows += static_cast<int>(stakeRows(sheet).size());
  EXPECT_EQ(rows, 60);
}

TEST(SetOutTable, NamesTheCornersAndFindsTheBaseline) {
  bool found = false;
  for (const Sheet& sheet : planOf(plantedYard()).sheets) {
    if (stakeRows(sheet).empty()) continue;
    found = found || (hasText(sheet, "Baseline: A is") && hasText(sheet, "House, south-"));
  }
  EXPECT_TRUE(found);
}

// The ringed plant is the one whose offsets the table gives: rings on the bed's sheet, in the
// turned frame, against the rows of the table.
TEST(SetOutTable, ARingMarksEveryMeasuredPlant) {
  const Yard yard = griddedYard(9, 4, 3, 1);
  const Plan plan = planOf(yard);
  for (const Drift& drift : yard.drifts) {
    const PaperPoint at = toPaper(plan.sheets[1], measuredPlant(drift));
    int rings = 0;
    for (const PaperPath& path : itemsOf<PaperPath>(plan.sheets[1])) {
      if (path.rings.size() != 1 || path.rings[0].size() < 12 || path.wash != Wash::None) continue;
      rings += std::all_of(path.rings[0].begin(), path.rings[0].end(), [&](PaperPoint p) {
        return std::abs(std::hypot(p.x - at.x, p.y - at.y) - 1.25) < 0.01;
      });
    }
    EXPECT_EQ(rings, 1);
  }
}

}  // namespace
}  // namespace tussock
