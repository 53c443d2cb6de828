// SPDX-License-Identifier: MIT
#include "core/sun/sun_work.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

#include "core/sun/ground_cells.h"

namespace tussock {

namespace {

constexpr double kMostBytes = 256e6;
// Two workers with two counts of 8 bytes, and the map's 9; then 16 for each mean's sums, and 8 of
// the map for each month.
constexpr double kBytesPerCell = 41.0;
constexpr double kBytesPerMean = 24.0;
constexpr double kBytesPerRow = 300.0;  // where it starts and ends in each of these, and more

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

// Rows and columns that can be counted one by one; with more, nothing fits anyway.
constexpr double kMostRows = 2e6, kMostColumns = 2e9;

Grid gridWith(const SunMapRequest& request, double cell) {
  const double columns = cellsAlong(request.area.width(), cell);
  const double rows = cellsAlong(request.area.height(), cell);
  Grid grid{request.area.low, cell, static_cast<int>(columns), static_cast<int>(rows), {}};
  grid.asked =
      request.only.empty() ? AskedCells(grid.columns, grid.rows) : cellsUnder(request.only, grid);
  return grid;
}

double cellsWith(const SunMapRequest& request, double cell) {
  const double columns = cellsAlong(request.area.width(), cell);
  const double rows = cellsAlong(request.area.height(), cell);
  if (request.only.empty() || rows > kMostRows || columns > kMostColumns) return columns * rows;
  return static_cast<double>(gridWith(request, cell).asked.cells());
}

double bytesOf(const SunMapRequest& request, double cell, std::size_t means) {
  return cellsWith(request, cell) * (kBytesPerCell + kBytesPerMean * static_cast<double>(means)) +
         cellsAlong(request.area.height(), cell) * kBytesPerRow;
}

// The least in whole centimetres.
double fittingCell(const SunMapRequest& request, std::size_t means) {
  const auto fits = [&](double cell) { return bytesOf(request, cell, means) <= kMostBytes; };
  const double cell = request.cell.metres();
  if (fits(cell)) return cell;
  double tooSmall = std::floor(cell * 100.0), fitting = std::max(1.0, 2.0 * tooSmall);
  for (; !fits(fitting / 100.0); fitting *= 2.0) tooSmall = fitting;
  while (fitting - tooSmall > 1.0) {
    const double middle = std::floor((tooSmall + fitting) / 2.0);
    (fits(middle / 100.0) ? fitting : tooSmall) = middle;
  }
  return fitting / 100.0;
}

void refuseHugeGrid(const SunMapRequest& request, std::size_t means) {
  const double bytes = bytesOf(request, request.cell.metres(), means);
  if (bytes <= kMostBytes) return;
  throw std::invalid_argument(fmt::format(
      "A sun map of {:.0f} m by {:.0f} m in cells of {:g} m would need {:.0f} MB, and 256 "
      "MB is the most. Choose larger cells, of {:.2f} m or more, or a smaller area.",
      request.area.width(), request.area.height(), request.cell.metres(), std::ceil(bytes / 1e6),
      fittingCell(request, means)));
}

Grid gridOf(const SunMapRequest& request, std::size_t means) {
  refuseHugeGrid(request, means);
  return gridWith(request, request.cell.metres());
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
  const int firstColumn = cellBelow(low.x, grid.cell, grid.columns);
  for (int row = cellBelow(low.y, grid.cell, grid.rows); row < endRow; ++row)
    for (const Columns run : grid.asked.runs(row))
      for (int column = std::max(run.from, firstColumn); column < std::min(run.to, endColumn);
           ++column)
        if (contains(footprint, map.centreOf(column, row))) map.setUnderBuilding(column, row);
}

// Hours of the means along one row, and their weighted mean of the whole span.
class RowMeans {
 public:
  RowMeans(const SunWork& work, const std::vector<SunCount>& sums) : work_(work), sums_(sums) {}

  void set(int row, SunMap& map) {
    const auto columns = static_cast<std::size_t>(map.asked().width(row));
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
    std::size_t i = 0;
    map.asked().eachOf(row, [&](int column) {
      map.set(column, row, {totals_[0][i] / days, totals_[1][i] / days});
      ++i;
    });
  }

 private:
  void setMonth(std::size_t month, int row, SunMap& map) {
    const double days = work_.spans.days[month];
    std::size_t i = 0;
    map.asked().eachOf(row, [&](int column) {
      map.setMonth(month, column, row, {halves_[0][i] / days, halves_[1][i] / days});
      ++i;
    });
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

double cellsAsked(const SunMapRequest& request) {
  return cellsWith(request, request.cell.metres());
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
  SunMap map(work.request.area, work.request.cell, grid.columns, grid.asked, work.spans.months);
  RowMeans means(work, sums);
  for (int row = 0; row < grid.rows; ++row) means.set(row, map);
  for (const Building& building : yard.buildings)
    if (!(building.base > Length())) coverUnder(building.footprint, grid, map);
  return map;
}

}  // namespace tussock
