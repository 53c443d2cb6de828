// SPDX-License-Identifier: MIT
// Fitting a drawing, the labels around it and the schedule below it on one page.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/sheets/labelling.h"
#include "core/sheets/page.h"
#include "core/sheets/schedule_table.h"

namespace tussock {

// What a plan is made from.
struct PlanSource {
  const Yard& yard;  // every species in it has a code
  const Catalogue& facts;
  const PlanOptions& options;
  [[nodiscard]] UnitSystem units() const { return yard.settings.units; }
};

struct DrawingNeed {
  std::string title;
  HeadText head;
  double width = 0.0, height = 0.0;  // mm, of the window
  std::size_t labels = 0;
  double widestLabel = 0.0;
  RulerBand rulers;  // of the window
  std::string key;   // how to read the drawing, printed above the cautions
  // Height of what follows the schedule at a width, where it fits too without a smaller scale.
  std::function<double(double)> below = {};
};
enum class SchedulePlace { Here, NextPage };
struct PageFit {
  int scale = 0;
  Orientation orientation = Orientation::Landscape;
  LabelMargin margin;
  SchedulePlace schedule = SchedulePlace::NextPage;
  PaperPoint scheduleAt;
  std::optional<PaperBox> below;  // room for what follows the schedule
  std::vector<std::string> cautions;
};
// At the first scale at which the drawing and its labels fit a page, either way round; or at one a
// step smaller where that brings the schedule onto the same page. Nothing when none fits.
[[nodiscard]] std::optional<PageFit> fitOnPage(const PlanSource& source,
                                               const std::vector<int>& scales,
                                               const std::function<DrawingNeed(int)>& needAt,
                                               const std::vector<ScheduleRow>& rows);

[[nodiscard]] PlantSums sumsOf(const std::vector<ScheduleRow>& rows);
// "40 plants" or "40 plants, 3 of them existing,": the words that follow are "in 2 beds" or alike.
[[nodiscard]] std::string countText(PlantSums sums);
[[nodiscard]] int drawnOn(const Sheet& sheet);
// What stands beside a total: that labels, drawing and schedule agree, or by how much they do not.
// What is to be planted and what stands there already are told apart where there is any of that.
[[nodiscard]] std::string agreement(PlantSums scheduled, int drawn, int labelled);

// The rows that do not fit on `sheet` (all when `schedule` says the next page) on further pages,
// turned where that takes fewer.
[[nodiscard]] std::vector<Sheet> schedulePages(const PlanSource& source, const std::string& title,
                                               const std::vector<ScheduleRow>& rows,
                                               Orientation orientation,
                                               const std::string& totalText);

}  // namespace tussock
