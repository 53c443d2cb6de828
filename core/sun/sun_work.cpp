// SPDX-License-Identifier: MIT
#include "core/sun/sun_work.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

namespace tussock {

namespace {

constexpr double kMostBytes = 256e6;
// Two workers with two counts of 8 bytes, and the map's 10; then 16 for each mean's sums, and 8 of
// the map for each month.
constexpr double kBytesPerCell = 42.0;
constexpr double kBytesPerMean = 24.0;

bool isFinite(const Box& box) {
  return tussock::isFinite(box.low) && tussock::isFinite(box.high);
}

void refuseBadRequest(const Settings& settings, const SunMapRequest& request) {
  const double cell = request.cell.metres();
  if (!std::isfinite(cell) || cell <= 0.0)
    throw std::invalid_argument("The sun map's cell has no size. Give a length, such as 0.25 m.");
  if (request.stepMinutes < 1)
    throw std::invalid_argument("The sun map's step must be at least one minute.");
  if (!isFinite(request.area))
    throw std::invalid_argument(
        "The sun map's area is not finite. Look for something drawn without a place.");
  if (!std::isfinite(settings.latitude.radians()) || !std::isfinite(settings.longitude.radians()) ||
      std::abs(settings.latitude.degrees()) > 90.0)
    throw std::invalid_argument(
        "The yard's latitude and longitude are no place. Set them in the yard's settings.");
}

double cellsAlong(double metres, double cell) {
  return std::max(1.0, std::ceil(metres / cell - 1e-9));
}

double bytesOf(const Box& area, double cell, std::size_t means) {
  return cellsAlong(area.width(), cell) * cellsAlong(area.height(), cell) *
         (kBytesPerCell + kBytesPerMean * static_cast<double>(means));
}

// In whole centimetres.
double fittingCell(const SunMapRequest& request, std::size_t means) {
  const double cell = request.cell.metres();
  const double excess = bytesOf(request.area, cell, means) / kMostBytes;
  if (excess <= 1.0) return cell;
  double centimetres = std::ceil(cell * std::sqrt(excess) * 100.0) - 1.0;
  while (centimetres < 1.0 || bytesOf(request.area, centimetres / 100.0, means) > kMostBytes)
    centimetres += 1.0;
  return centimetres / 100.0;
}

void refuseHugeGrid(const SunMapRequest& request, std::size_t means) {
  const double bytes = bytesOf(request.area, request.cell.metres(), means);
  if (bytes <= kMostBytes) return;
  throw std::invalid_argument(fmt::format(
      "A sun map of {:.0f} m by {:.0f} m in cells of {:g} m would need {:.0f} MB, and 256 "
      "MB is the most. Choose larger cells, of {:.2f} m or more, or a smaller area.",
      request.area.width(), request.area.height(), request.cell.metres(), std::ceil(bytes / 1e6),
      fittingCell(request, means)));
}

Columns centresWithin(const Box& box, const Grid& grid) {
  const auto held = [&](double place) {
    return static_cast<int>(std::clamp(place, 0.0, static_cast<double>(grid.columns)));
  };
  return {held(std::ceil((box.low.x - grid.low.x) / grid.cell - 0.5)),
          held(std::floor((box.high.x - grid.low.x) / grid.cell - 0.5) + 1.0)};
}

// Row by row, the columns around all that is asked for.
std::vector<Columns> askedOf(const std::vector<Polygon>& only, const Grid& grid) {
  const auto rows = static_cast<std::size_t>(grid.rows);
  if (only.empty()) return std::vector<Columns>(rows, Columns{0, grid.columns});
  std::vector<Columns> asked(rows, Columns{grid.columns, 0});
  for (const Polygon& polygon : only) {
    const Box box = boundsOf(polygon);
    if (box.empty() || !isFinite(box)) continue;
    const Columns columns = centresWithin(box, grid);
    for (std::size_t row = 0; row < rows; ++row) {
      const double y = grid.low.y + (static_cast<double>(row) + 0.5) * grid.cell;
      if (y < box.low.y || y > box.high.y) continue;
      asked[row].from = std::min(asked[row].from, columns.from);
      asked[row].to = std::max(asked[row].to, columns.to);
    }
  }
  for (Columns& columns : asked)
    if (columns.from >= columns.to) columns = {};
  return asked;
}

Grid gridOf(const SunMapRequest& request, std::size_t means) {
  refuseHugeGrid(request, means);
  const double cell = request.cell.metres();
  const double columns = cellsAlong(request.area.width(), cell);
  const double rows = cellsAlong(request.area.height(), cell);
  Grid grid{request.area.low, cell, static_cast<int>(columns), static_cast<int>(rows), {}};
  grid.asked = askedOf(request.only, grid);
  return grid;
}

Spans spansOf(const std::vector<Date>& days, SunDetail detail) {
  Spans spans;
  if (detail == SunDetail::Season) {
    spans.days = {static_cast<int>(days.size())};
    return spans;
  }
  for (const Date day : days) {
    const auto at = std::find(spans.months.begin(), spans.months.end(), day.month());
    if (at == spans.months.end()) {
      spans.months.push_back(day.month());
      spans.days.push_back(1);
    } else {
      ++spans.days[static_cast<std::size_t>(at - spans.months.begin())];
    }
  }
  return spans;
}

std::vector<Date> daysAsked(const Yard& yard, const SunMapRequest& request) {
  if (request.day) return {*request.day};
  return daysOf(growingSeason(yard.settings), request.year);
}

void markUnknown(const SunWork& work, SunMap& map) {
  if (work.request.only.empty()) return;
  for (int row = 0; row < map.rows(); ++row)
    for (int column = 0; column < map.columns(); ++column) {
      const Point p = map.centreOf(column, row);
      const auto& only = work.request.only;
      if (std::none_of(only.begin(), only.end(), [p](const Polygon& polygon) {
            return !polygon.empty() && contains(polygon, p);
          }))
        map.setUnknown(column, row);
    }
}

int cellBelow(double metres, double cell, int count) {
  return static_cast<int>(std::clamp(metres / cell, 0.0, static_cast<double>(count)));
}

void coverUnder(const Polygon& footprint, const Grid& grid, SunMap& map) {
  const Box box = boundsOf(footprint);
  if (box.empty() || !isFinite(box)) return;
  const Point low = box.low - grid.low;
  const Point high = box.high - grid.low;
  const int endRow = std::min(grid.rows, cellBelow(high.y, grid.cell, grid.rows) + 1);
  const int endColumn = std::min(grid.columns, cellBelow(high.x, grid.cell, grid.columns) + 1);
  for (int row = cellBelow(low.y, grid.cell, grid.rows); row < endRow; ++row)
    for (int column = cellBelow(low.x, grid.cell, grid.columns); column < endColumn; ++column)
      if (contains(footprint, map.centreOf(column, row))) map.setUnderBuilding(column, row);
}

// Hours of the means along one row, and their weighted mean of the whole span.
class RowMeans {
 public:
  RowMeans(const SunWork& work, const std::vector<SunCount>& sums) : work_(work), sums_(sums) {}

  void set(int row, SunMap& map) {
    const auto columns = static_cast<std::size_t>(map.columns());
    for (auto& total : totals_) total.assign(columns, 0.0);
    int days = 0;
    for (std::size_t mean = 0; mean < sums_.size(); ++mean) {
      sums_[mean].row(HalfDay::BeforeNoon, row, halves_[0]);
      sums_[mean].row(HalfDay::AfterNoon, row, halves_[1]);
      days += work_.spans.days[mean];
      if (!work_.spans.months.empty()) setMonth(mean, row, map);
      for (std::size_t half = 0; half < 2; ++half)
        for (std::size_t i = 0; i < columns; ++i) totals_[half][i] += halves_[half][i];
    }
    for (std::size_t i = 0; i < columns; ++i)
      map.set(static_cast<int>(i), row, {totals_[0][i] / days, totals_[1][i] / days});
  }

 private:
  void setMonth(std::size_t month, int row, SunMap& map) {
    const double days = work_.spans.days[month];
    for (std::size_t i = 0; i < halves_[0].size(); ++i)
      map.setMonth(month, static_cast<int>(i), row, {halves_[0][i] / days, halves_[1][i] / days});
  }

  const SunWork& work_;
  const std::vector<SunCount>& sums_;
  std::vector<double> halves_[2], totals_[2];
};

}  // namespace

Counting SunWork::countingOf(const DayClass& days) const {
  if (spans.months.empty()) return {days.days, {{0, 1}}};
  Counting counting;
  for (std::size_t i = 0; i < spans.months.size(); ++i)
    if (const int count = days.inMonth[static_cast<unsigned>(spans.months[i]) - 1u]; count > 0)
      counting.parts.push_back({i, count});
  if (counting.parts.size() == 1) std::swap(counting.atOnce, counting.parts[0].days);
  return counting;
}

std::vector<SunStep> SunWork::stepsOf(const DayClass& days) const {
  return tussock::stepsOf(days.day, latitude, longitude, request.stepMinutes, solids.horizon);
}

Length finestCell(const Yard& yard, const SunMapRequest& request) {
  refuseBadRequest(yard.settings, request);
  const Spans spans = spansOf(daysAsked(yard, request), request.detail);
  return Length::metres(fittingCell(request, spans.days.size()));
}

SunWork workOf(const Yard& yard, const SunMapRequest& request) {
  refuseBadRequest(yard.settings, request);
  SunWork work;
  work.request = request;
  work.solids = solidsOf(yard);
  work.latitude = yard.settings.latitude;
  work.longitude = yard.settings.longitude;
  const std::vector<Date> days = daysAsked(yard, request);
  work.spans = spansOf(days, request.detail);
  work.grid = gridOf(request, work.spans.days.size());
  work.classes = classesOf(days, work.solids, work.longitude, declinationBand(request.stepMinutes));
  return work;
}

SunMap mapOf(const SunWork& work, const std::vector<SunCount>& sums, const Yard& yard) {
  const Grid& grid = work.grid;
  SunMap map(work.request.area, work.request.cell, grid.columns, grid.rows, work.spans.months);
  RowMeans means(work, sums);
  for (int row = 0; row < grid.rows; ++row) means.set(row, map);
  markUnknown(work, map);
  for (const Building& building : yard.buildings)
    if (!(building.base > Length())) coverUnder(building.footprint, grid, map);
  return map;
}

}  // namespace tussock
