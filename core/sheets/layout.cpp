// SPDX-License-Identifier: MIT
#include "core/sheets/layout.h"

#include <fmt/format.h>

#include "core/sheets/cautions.h"

namespace tussock {

namespace {

constexpr double kScheduleGap = 3.0;    // mm between drawing and schedule
constexpr double kWorthOnePage = 1.34;  // how much smaller a drawing may be for one page

bool fits(const LabelMargin& margin, const DrawingNeed& need) {
  return need.labels <= roomFor(margin, need.widestLabel);
}

// The window in the middle of `room`, with labels above and below, or all round where a tall
// drawing leaves room at its sides or the labels ask for it.
std::optional<LabelMargin> placeWindow(const PaperBox& room, const DrawingNeed& need) {
  const double band = need.labels > 0 ? kLabelBand : 0.0;
  const double side = need.labels > 0 ? sideBand(need.widestLabel) : 0.0;
  if (need.width > room.width() || need.height + 2.0 * band > room.height()) return std::nullopt;
  const double left = room.left + (room.width() - need.width) / 2.0;
  const double top = room.top + (room.height() - need.height) / 2.0;
  const PaperBox window{left, top, left + need.width, top + need.height};
  const LabelMargin margin{window, room, Sides::AboveAndBelow, need.rulers};
  const LabelMargin round{window, room, Sides::AllRound, need.rulers};
  const bool roomBeside = need.width + 2.0 * side <= room.width();
  if (roomBeside && need.height > 0.7 * need.width && fits(round, need)) return round;
  if (fits(margin, need)) return margin;
  return roomBeside && fits(round, need) ? std::optional(round) : std::nullopt;
}

enum class Below { Apart, Here };

std::optional<PageFit> fitOne(const PlanSource& source, const DrawingNeed& need,
                              const std::vector<ScheduleRow>& rows, Orientation orientation,
                              SchedulePlace schedule, Below below = Below::Apart) {
  Sheet blank = blankPage(source.options.paper, orientation, need.title);
  blank.scale = 1.0;  // it carries a scale bar
  PageFit fit;
  fit.orientation = orientation, fit.schedule = schedule;
  fit.cautions = cautionLines(source.yard, rows, need.key, contentOf(blank).width());
  PaperBox room = bodyOf(blank, need.head, fit.cautions);
  if (below == Below::Here) {
    fit.below = room;
    fit.below->top = room.bottom - need.below(room.width());
    room.bottom = fit.below->top;
  }
  if (schedule == SchedulePlace::Here && !rows.empty()) {
    room.bottom -= ScheduleTable(rows, room.width()).height();
    fit.scheduleAt = {room.left, room.bottom};
    room.bottom -= kScheduleGap;
  }
  const auto margin = placeWindow(room, need);
  if (!margin) return std::nullopt;
  fit.margin = *margin;
  return fit;
}

std::optional<PageFit> fitEitherWay(const PlanSource& source, const DrawingNeed& need,
                                    const std::vector<ScheduleRow>& rows, SchedulePlace place) {
  const bool wide = need.width >= need.height;
  const Orientation first = wide ? Orientation::Landscape : Orientation::Portrait;
  const Orientation second = wide ? Orientation::Portrait : Orientation::Landscape;
  if (auto fit = fitOne(source, need, rows, first, place)) return fit;
  return fitOne(source, need, rows, second, place);
}

std::vector<Sheet> pagesAt(const PlanSource& source, const std::string& title,
                           const std::vector<ScheduleRow>& rows, Orientation orientation,
                           const std::string& totalText) {
  std::vector<Sheet> sheets;
  std::size_t first = 0;
  while (first < rows.size()) {
    Sheet sheet = blankPage(source.options.paper, orientation, title);
    const auto cautions = cautionLines(source.yard, rows, "", contentOf(sheet).width());
    const PaperBox body = bodyOf(sheet, {}, cautions);
    const ScheduleTable table(rows, body.width());
    const std::size_t count = std::max<std::size_t>(1, table.rowsFitting(first, body.height()));
    addHead(sheet, {}, source.units());
    table.draw(sheet, {body.left, body.top}, first, count, totalText);
    addCautions(sheet, cautions);
    sheets.push_back(std::move(sheet));
    first += count;
  }
  return sheets;
}

}  // namespace

std::optional<PageFit> fitOnPage(const PlanSource& source, const std::vector<int>& scales,
                                 const std::function<DrawingNeed(int)>& needAt,
                                 const std::vector<ScheduleRow>& rows) {
  std::optional<PageFit> apart;
  for (const int scale : scales) {
    if (apart && scale > kWorthOnePage * apart->scale) break;
    const DrawingNeed need = needAt(scale);
    if (auto fit = fitEitherWay(source, need, rows, SchedulePlace::Here)) {
      if (need.below)
        if (auto more =
                fitOne(source, need, rows, fit->orientation, SchedulePlace::Here, Below::Here))
          fit = more;
      fit->scale = scale;
      return fit;
    }
    if (apart) continue;
    apart = fitEitherWay(source, need, rows, SchedulePlace::NextPage);
    if (apart) apart->scale = scale;
  }
  return apart;
}

PlantSums sumsOf(const std::vector<ScheduleRow>& rows) {
  PlantSums sums;
  for (const ScheduleRow& row : rows) sums.add(row.stock, row.quantity);
  return sums;
}

std::string countText(PlantSums sums) {
  if (sums.existing == 0) return fmt::format("{} plants", sums.all());
  return fmt::format("{} plants, {} of them existing,", sums.all(), sums.existing);
}

int drawnOn(const Sheet& sheet) {
  int count = 0;
  for (const PaperItem& item : sheet.items) count += std::holds_alternative<PaperPlant>(item);
  return count;
}

std::string agreement(PlantSums scheduled, int drawn, int labelled) {
  const std::string apart =
      scheduled.existing > 0
          ? fmt::format(" ({} to plant, {} existing)", scheduled.toPlant, scheduled.existing)
          : "";
  if (scheduled.all() == drawn && drawn == labelled)
    return "plants" + apart + ": labels, drawing and schedule agree";
  return fmt::format(
      "plants{} in the schedule, {} drawn, {} on labels: look for drifts without a bed", apart,
      drawn, labelled);
}

std::vector<Sheet> schedulePages(const PlanSource& source, const std::string& title,
                                 const std::vector<ScheduleRow>& rows, Orientation orientation,
                                 const std::string& totalText) {
  const Orientation other =
      orientation == Orientation::Landscape ? Orientation::Portrait : Orientation::Landscape;
  auto sheets = pagesAt(source, title, rows, orientation, totalText);
  auto turned = pagesAt(source, title, rows, other, totalText);
  return turned.size() < sheets.size() ? turned : sheets;
}

}  // namespace tussock
