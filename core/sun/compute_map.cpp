// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <thread>

#include "core/sun/map.h"
#include "core/sun/side_by_side.h"
#include "core/sun/sun_tally.h"

namespace tussock {

namespace {

constexpr double kMostBytes = 256e6;
constexpr double kBytesPerCell = 41.0;  // two workers with two counts of 8, and the map's 9

Grid gridOf(const SunMapRequest& request) {
  const double cell = request.cell.metres();
  if (!std::isfinite(cell) || cell <= 0.0)
    throw std::invalid_argument("The sun map's cell has no size. Give a length, such as 0.25 m.");
  if (request.stepMinutes < 1)
    throw std::invalid_argument("The sun map's step must be at least one minute.");
  const auto count = [cell](double metres) {
    return std::max(1.0, std::ceil(metres / cell - 1e-9));
  };
  const double columns = count(request.area.width());
  const double rows = count(request.area.height());
  if (!(columns * rows * kBytesPerCell <= kMostBytes))
    throw std::invalid_argument(
        "A sun map of this area with cells this small would need more than 256 MB. Choose larger "
        "cells or a smaller area.");
  return {request.area.low, cell, static_cast<int>(columns), static_cast<int>(rows)};
}

// Everything the workers read.
struct Work {
  Grid grid;
  Solids solids;
  std::vector<DayClass> classes;
  Angle latitude, longitude;
  int stepMinutes = 10;
  double days = 0.0;
};

Work workOf(const Yard& yard, const SunMapRequest& request) {
  Work work;
  work.grid = gridOf(request);
  work.solids = solidsOf(yard);
  work.latitude = yard.settings.latitude;
  work.longitude = yard.settings.longitude;
  work.stepMinutes = request.stepMinutes;
  const std::vector<Date> days =
      request.day ? std::vector{*request.day} : daysOf(growingSeason(yard.settings), request.year);
  work.days = static_cast<double>(days.size());
  work.classes = classesOf(days, work.solids, work.longitude, declinationBand(work.stepMinutes));
  return work;
}

void addClass(const Work& work, const DayClass& days, std::stop_token stop,
              std::vector<Shadow>& shadows, SunTally& tally) {
  const double weight = days.days / work.days;
  const MonthDay date(days.day.month(), days.day.day());
  for (const SunStep& step : stepsOf(days.day, work.latitude, work.longitude, work.stepMinutes)) {
    if (stop.stop_requested()) return;
    castShadows(work.solids, step.sun, date, shadows);
    tally.take(shadows, step.hours * weight, step.half);
  }
}

// Every `stride`th class from `first`.
void addClasses(const Work& work, std::size_t first, std::size_t stride, std::stop_token stop,
                const Progress& progress, SunTally& tally) {
  std::vector<Shadow> shadows;
  for (std::size_t i = first; i < work.classes.size(); i += stride) {
    if (stop.stop_requested()) return;
    addClass(work, work.classes[i], stop, shadows, tally);
    if (progress)
      progress(static_cast<double>(std::min(i + stride, work.classes.size())) /
               static_cast<double>(work.classes.size()));
  }
}

SunTally tallyOf(const Work& work, std::stop_token stop, const Progress& progress) {
  SunTally tally(work.grid);
  if (std::thread::hardware_concurrency() < 2 || work.classes.size() < 2) {
    addClasses(work, 0, 1, stop, progress, tally);
    return tally;
  }
  SunTally other(work.grid);
  sideBySide([&] { addClasses(work, 0, 2, stop, progress, tally); },
             [&] { addClasses(work, 1, 2, stop, {}, other); });
  tally.add(other);
  return tally;
}

SunMap mapOf(const SunTally& tally, const SunMapRequest& request, const Grid& grid) {
  SunMap map(request.area, request.cell, grid.columns, grid.rows);
  std::vector<double> before;
  std::vector<double> after;
  for (int row = 0; row < grid.rows; ++row) {
    tally.row(HalfDay::BeforeNoon, row, before);
    tally.row(HalfDay::AfterNoon, row, after);
    for (int column = 0; column < grid.columns; ++column) {
      const auto i = static_cast<std::size_t>(column);
      map.set(column, row, {before[i], after[i]});
    }
  }
  return map;
}

int cellBelow(double metres, double cell, int count) {
  return static_cast<int>(std::clamp(metres / cell, 0.0, static_cast<double>(count)));
}

void coverUnder(const Polygon& footprint, const Grid& grid, SunMap& map) {
  const Box box = boundsOf(footprint);
  if (box.empty() || !isFinite(box.low) || !isFinite(box.high)) return;
  const Point low = box.low - grid.low;
  const Point high = box.high - grid.low;
  const int endRow = std::min(grid.rows, cellBelow(high.y, grid.cell, grid.rows) + 1);
  const int endColumn = std::min(grid.columns, cellBelow(high.x, grid.cell, grid.columns) + 1);
  for (int row = cellBelow(low.y, grid.cell, grid.rows); row < endRow; ++row)
    for (int column = cellBelow(low.x, grid.cell, grid.columns); column < endColumn; ++column)
      if (contains(footprint, map.centreOf(column, row))) map.setUnderBuilding(column, row);
}

}  // namespace

std::optional<SunMap> computeSunMap(const Yard& yard, const SunMapRequest& request,
                                    std::stop_token stop, const Progress& progress) {
  if (request.area.empty()) return SunMap();
  const Work work = workOf(yard, request);
  const SunTally tally = tallyOf(work, stop, progress);
  if (stop.stop_requested()) return std::nullopt;
  SunMap map = mapOf(tally, request, work.grid);
  for (const Building& building : yard.buildings) coverUnder(building.footprint, work.grid, map);
  return map;
}

}  // namespace tussock
