// SPDX-License-Identifier: MIT
// Fitting a drawing, the labels around it and the schedule below it on one page.
#pragma once

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
  double width = 0.0, height = 0.0;  // mm, of the window
  std::size_t labels = 0;
  double widestLabel = 0.0;
  std::string key;  // how to read the drawing, printed above the cautions
};
enum class SchedulePlace { Here, NextPage };
struct PageFit {
  Orientation orientation = Orientation::Landscape;
  LabelMargin margin;
  SchedulePlace schedule = SchedulePlace::NextPage;
  PaperPoint scheduleAt;
  std::vector<std::string> cautions;
};
// Both orientations tried; the schedule on the same page wherever that can be. Nothing when the
// drawing with its labels fits neither way.
[[nodiscard]] std::optional<PageFit> fitOnPage(const PlanSource& source, const DrawingNeed& need,
                                               const std::vector<ScheduleRow>& rows);
// The same for one orientation.
[[nodiscard]] std::optional<PageFit> fitOnPage(const PlanSource& source, const DrawingNeed& need,
                                               const std::vector<ScheduleRow>& rows,
                                               Orientation orientation, SchedulePlace schedule);

[[nodiscard]] int totalOf(const std::vector<ScheduleRow>& rows);
[[nodiscard]] int drawnOn(const Sheet& sheet);
// What stands beside a total: that labels, drawing and schedule agree, or by how much they do not.
[[nodiscard]] std::string agreement(int scheduled, int drawn, int labelled);

// The rows that do not fit on `sheet` (all when `schedule` says the next page) on further pages.
[[nodiscard]] std::vector<Sheet> schedulePages(const PlanSource& source, const std::string& title,
                                               const std::vector<ScheduleRow>& rows,
                                               Orientation orientation,
                                               const std::string& totalText);

}  // namespace tussock
