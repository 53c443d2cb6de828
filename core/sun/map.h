// SPDX-License-Identifier: MIT
// Hours of direct sun over the yard, as a grid of cells: mean hours a day with the sun's centre
// above 0 degrees true altitude and nothing in between, told at the cell's centre.
#pragma once

#include <chrono>
#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/model/yard.h"
#include "core/sun/asked_cells.h"

namespace tussock {

// Which means are kept: of the season (or day) only, or of each of its months too.
enum class SunDetail { Season, Months };

struct SunMapRequest {
  Box area;
  Length cell = Length::centimetres(25);
  int stepMinutes = 10;
  // One day, or the growing season of the yard when absent.
  std::optional<Date> day;
  int year = 2026;  // in which the season begins
  SunDetail detail = SunDetail::Season;
  // The ground that is asked for; all of the area when there is none.
  std::vector<Polygon> only;

  bool operator==(const SunMapRequest&) const = default;
};

struct SunHours {
  double beforeNoon = 0.0;
  double afterNoon = 0.0;
  [[nodiscard]] double total() const { return beforeNoon + afterNoon; }
};

// Mean hours a day of the days of one month that lie in the season.
struct MonthHours {
  std::chrono::month month;
  SunHours hours;
};
struct SunYear {
  SunHours mean;                                  // of the season
  std::vector<MonthHours> months;                 // in the season's order
  [[nodiscard]] const MonthHours* worst() const;  // with the fewest hours; null when there are none
};

class SunMap {
 public:
  SunMap() = default;
  SunMap(Box area, Length cell, int columns, int rows, std::vector<std::chrono::month> months = {});
  // With only some of the cells.
  SunMap(Box area, Length cell, int columns, AskedCells asked,
         std::vector<std::chrono::month> months = {});

  [[nodiscard]] bool empty() const { return columns_ == 0; }
  [[nodiscard]] int columns() const { return columns_; }
  [[nodiscard]] int rows() const { return asked_.rows(); }
  // Nothing is kept of the others.
  [[nodiscard]] const AskedCells& asked() const { return asked_; }
  [[nodiscard]] Length cell() const { return cell_; }
  [[nodiscard]] const Box& area() const { return area_; }
  [[nodiscard]] Point centreOf(int column, int row) const;  // row 0 is the southernmost
  // Of a cell that was asked for, as all that follows but known and underBuilding, which are false
  // elsewhere.
  [[nodiscard]] SunHours at(int column, int row) const;
  void set(int column, int row, SunHours hours);
  // In the season's order; empty unless they were asked for.
  [[nodiscard]] const std::vector<std::chrono::month>& months() const { return months_; }
  [[nodiscard]] SunHours monthAt(std::size_t month, int column,
                                 int row) const;  // by place in months
  void setMonth(std::size_t month, int column, int row, SunHours hours);
  // False for cells whose centre is no part of the ground asked for.
  [[nodiscard]] bool known(int column, int row) const;
  [[nodiscard]] bool underBuilding(int column, int row) const;
  void setUnderBuilding(int column, int row);
  [[nodiscard]] bool underBuildingAt(Point p) const;  // false outside the map
  // Mean hours a day at a point; nothing outside the map, or where it is not known.
  [[nodiscard]] std::optional<SunHours> hoursAt(Point p) const;
  [[nodiscard]] std::optional<SunYear> yearAt(Point p) const;
  // Mean over the known cells whose centre lies in the polygon; nothing when there are none.
  [[nodiscard]] std::optional<double> meanHours(const Polygon& polygon) const;

 private:
  struct Cell {
    int column, row;
  };
  [[nodiscard]] std::size_t index(int column, int row) const;
  [[nodiscard]] std::optional<Cell> cellAt(Point p) const;
  Box area_;
  Length cell_;
  int columns_ = 0;
  AskedCells asked_;
  std::vector<float> before_, after_;
  std::vector<std::chrono::month> months_;
  std::vector<float> monthly_;  // by month and cell: before and after noon
  std::vector<char> covered_;
};

using Progress = std::function<void(double share)>;  // 0 to 1, called from the working thread

// Two threads share the work where there are two cores; the result does not depend on it.
// Throws std::invalid_argument, saying what to do, when the grid would need more than 256 MB, the
// area or the place is not finite, or the cell or the step is not above zero. Returns nothing when
// stopped; an empty area gives an empty map.
[[nodiscard]] std::optional<SunMap> computeSunMap(const Yard& yard, const SunMapRequest& request,
                                                  std::stop_token stop = {},
                                                  const Progress& progress = {});
// The smallest cell in whole centimetres, no smaller than the one asked for, with which the map of
// the request fits into memory (see computeSunMap).
[[nodiscard]] Length finestCell(const Yard& yard, const SunMapRequest& request);
// The ground of the beds and nothing else, in an area half a metre larger; an empty one in a yard
// without beds.
[[nodiscard]] SunMapRequest onlyBeds(const Yard& yard, SunMapRequest request);
// A bed in which no cell of the map has its centre: it lies outside, or is too small or narrow for
// the cells.
struct UnmappedBed {
  const Bed* bed = nullptr;
  bool outside = false;
};
[[nodiscard]] std::vector<UnmappedBed> unmappedBeds(const Yard& yard, const SunMap& map);
// The map the checks, the window and the sheets share: growing season with its months, over the
// site (see siteBox) and a metre around the beds, 0.25 m; cells are doubled while there are more
// than 400,000. Where they would be larger than 0.5 m on the whole site, only the beds and a metre
// around each are asked for.
[[nodiscard]] SunMapRequest seasonRequest(const Yard& yard);
// True when both yards give the same sun map: place, season, area and what casts shade are equal.
[[nodiscard]] bool sameSun(const Yard& a, const Yard& b);

}  // namespace tussock
