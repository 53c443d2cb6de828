// SPDX-License-Identifier: MIT
#include "core/sun/map.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

// First and past-last index of the centres within a range along one axis.
struct Range {
  int first, end;
};

Range centresIn(double low, double high, double origin, double cell, int count) {
  const auto held = [count](double value) {
    return static_cast<int>(std::clamp(value, 0.0, static_cast<double>(count)));
  };
  return {held(std::ceil((low - origin) / cell - 0.5)),
          held(std::floor((high - origin) / cell - 0.5) + 1.0)};
}

}  // namespace

const MonthHours* SunYear::worst() const {
  const auto least = std::min_element(
      months.begin(), months.end(),
      [](const MonthHours& a, const MonthHours& b) { return a.hours.total() < b.hours.total(); });
  return least == months.end() ? nullptr : &*least;
}

SunMap::SunMap(Box area, Length cell, int columns, int rows, std::vector<std::chrono::month> months)
    : SunMap(area, cell, columns, AskedCells(columns, rows), std::move(months)) {}

SunMap::SunMap(Box area, Length cell, int columns, AskedCells asked,
               std::vector<std::chrono::month> months)
    : area_(area),
      cell_(cell),
      columns_(columns),
      asked_(std::move(asked)),
      months_(std::move(months)) {
  const std::size_t size = asked_.cells();
  before_.resize(size);
  after_.resize(size);
  monthly_.resize(size * months_.size() * 2);
  covered_.resize(size);
}

std::size_t SunMap::index(int column, int row) const {
  return asked_.starts()[static_cast<std::size_t>(row)] +
         static_cast<std::size_t>(asked_.place(row, column));
}

Point SunMap::centreOf(int column, int row) const {
  return area_.low + Point{column + 0.5, row + 0.5} * cell_.metres();
}

SunHours SunMap::at(int column, int row) const {
  const std::size_t i = index(column, row);
  return {before_[i], after_[i]};
}

void SunMap::set(int column, int row, SunHours hours) {
  const std::size_t i = index(column, row);
  before_[i] = static_cast<float>(hours.beforeNoon);
  after_[i] = static_cast<float>(hours.afterNoon);
}

SunHours SunMap::monthAt(std::size_t month, int column, int row) const {
  const std::size_t i = 2 * (month * before_.size() + index(column, row));
  return {monthly_[i], monthly_[i + 1]};
}

void SunMap::setMonth(std::size_t month, int column, int row, SunHours hours) {
  const std::size_t i = 2 * (month * before_.size() + index(column, row));
  monthly_[i] = static_cast<float>(hours.beforeNoon);
  monthly_[i + 1] = static_cast<float>(hours.afterNoon);
}

bool SunMap::known(int column, int row) const {
  return asked_.contains(column, row);
}

bool SunMap::underBuilding(int column, int row) const {
  return asked_.contains(column, row) && covered_[index(column, row)] != 0;
}

void SunMap::setUnderBuilding(int column, int row) {
  covered_[index(column, row)] = 1;
}

std::optional<SunMap::Cell> SunMap::cellAt(Point p) const {
  if (empty() || !isFinite(p)) return std::nullopt;
  const Point cells = (p - area_.low) * (1.0 / cell_.metres());
  if (cells.x < 0.0 || cells.y < 0.0 || cells.x > columns_ || cells.y > rows()) return std::nullopt;
  const Cell cell{std::min(static_cast<int>(cells.x), columns_ - 1),
                  std::min(static_cast<int>(cells.y), rows() - 1)};
  return known(cell.column, cell.row) ? std::optional(cell) : std::nullopt;
}

bool SunMap::underBuildingAt(Point p) const {
  const auto cell = cellAt(p);
  return cell && underBuilding(cell->column, cell->row);
}

std::optional<SunHours> SunMap::hoursAt(Point p) const {
  const auto cell = cellAt(p);
  return cell ? std::optional(at(cell->column, cell->row)) : std::nullopt;
}

std::optional<SunYear> SunMap::yearAt(Point p) const {
  const auto cell = cellAt(p);
  if (!cell) return std::nullopt;
  SunYear year{at(cell->column, cell->row), {}};
  for (std::size_t i = 0; i < months_.size(); ++i)
    year.months.push_back({months_[i], monthAt(i, cell->column, cell->row)});
  return year;
}

std::optional<double> SunMap::meanHours(const Polygon& polygon) const {
  if (empty() || polygon.empty()) return std::nullopt;
  const Box box = boundsOf(polygon);
  const Range across = centresIn(box.low.x, box.high.x, area_.low.x, cell_.metres(), columns_);
  const Range up = centresIn(box.low.y, box.high.y, area_.low.y, cell_.metres(), rows());
  double sum = 0.0;
  int count = 0;
  for (int row = up.first; row < up.end; ++row)
    for (int column = across.first; column < across.end; ++column) {
      if (!known(column, row) || !contains(polygon, centreOf(column, row))) continue;
      sum += at(column, row).total();
      ++count;
    }
  return count > 0 ? std::optional(sum / count) : std::nullopt;
}

}  // namespace tussock
