// SPDX-License-Identifier: MIT
// The free ground of a bed as small square cells, with what each place offers.
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/model/yard.h"
#include "core/planting/sight.h"
#include "core/planting/slope.h"
#include "core/sun/map.h"

namespace tussock {

struct FillCell {
  Point at;
  float toEdge = 0.0F;     // metres to the nearest thing that keeps plants off
  float toViewers = 0.0F;  // metres to the nearest edge that people look from; 0 when not known
  float hours = -1.0F;     // of sun; below 0 where not known
  Moisture moisture = Moisture::Medium;
  float across = 0.0F;  // metres that the free ground is wide there; 0 where not looked at
};

// Hours of sun by places of a yard that is perhaps laid flat.
struct FillSun {
  const SunMap* map = nullptr;         // of the plan; may be null
  std::optional<Slope> laidFlat = {};  // none where places are the plan's

  [[nodiscard]] std::optional<SunHours> hoursAt(Point p) const {
    if (map == nullptr) return std::nullopt;
    return map->hoursAt(laidFlat ? laidFlat->onPlan(p) : p);
  }
};

[[nodiscard]] inline FillSun sunOn(const Slope& slope, const SunMap* map) {
  return slope.level() ? FillSun{map} : FillSun{map, slope};
}

// Tells each cell's moisture, hours of sun and distance from the viewers by where it lies.
void lookAround(std::vector<FillCell>& cells, const Yard& yard, const Bed& bed, const FillSun& sun,
                const SightLimits& limits);

class FillGround {
 public:
  // Cells of `size` metres that no kept plant of the layer, paving, wall, trunk or stepping place
  // covers, near enough to where a plant of `spacing` may stand.
  FillGround(const Yard& yard, const Bed& bed, Layer layer, double spacing, double size);

  // Only the cells of which keep[cell] is true: as if the others were not free. No plant may then
  // stand outside of them.
  void keepOnly(const std::vector<bool>& keep);
  [[nodiscard]] bool isOff(Point p) const { return fenced_ && at(p) < 0; }

  void lookAt(const FillSun& sun, const SightLimits& limits) {
    lookAround(cells_, yard_, bed_, sun, limits);
  }

  [[nodiscard]] const std::vector<FillCell>& cells() const { return cells_; }
  [[nodiscard]] double size() const { return size_; }    // metres
  [[nodiscard]] double width() const { return width_; }  // metres across the widest place
  [[nodiscard]] double cellArea() const { return size_ * size_; }
  [[nodiscard]] double area() const { return cellArea() * static_cast<double>(cells_.size()); }
  // Square metres that plants should take: those of the cells, unless told otherwise. Thin tips are
  // no cells, but ground of the bed.
  [[nodiscard]] double toTake() const { return toTake_ > 0.0 ? toTake_ : area(); }
  void setToTake(double squareMetres) { toTake_ = squareMetres; }
  [[nodiscard]] const Box& box() const { return box_; }
  [[nodiscard]] int columns() const { return columns_; }
  [[nodiscard]] int rows() const { return rows_; }
  [[nodiscard]] int columnOf(double x) const {  // inside the grid always
    return std::clamp(static_cast<int>((x - box_.low.x) / size_), 0, columns_ - 1);
  }
  [[nodiscard]] int rowOf(double y) const {
    return std::clamp(static_cast<int>((y - box_.low.y) / size_), 0, rows_ - 1);
  }
  [[nodiscard]] double yOf(int row) const { return box_.low.y + (row + 0.5) * size_; }
  // The cell at a column and row or a point, -1 where the ground is not free.
  [[nodiscard]] int at(int column, int row) const {
    if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return -1;
    return grid_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
                 static_cast<std::size_t>(column)];
  }
  [[nodiscard]] int at(Point p) const { return at(columnOf(p.x), rowOf(p.y)); }
  // As FillCell; 0 where no ground is.
  [[nodiscard]] float toViewersAt(Point p) const {
    const int cell = at(p);
    return cell < 0 ? 0.0F : cells_[static_cast<std::size_t>(cell)].toViewers;
  }
  // How wide the ground is at a cell, metres: the diameter of the largest circle that holds it and
  // nothing that keeps plants off ("local thickness", Hildebrand and Rüegsegger 1997), as far as is
  // found by going from cell to cell.
  [[nodiscard]] double across(int cell) const;
  // Calls f(cell) for the up to four cells beside one.
  template <class F>
  void beside(int cell, F&& f) const {
    const Point p = cells_[static_cast<std::size_t>(cell)].at;
    const int column = columnOf(p.x), row = rowOf(p.y);
    for (const auto& [c, r] : {std::pair{column - 1, row}, std::pair{column + 1, row},
                               std::pair{column, row - 1}, std::pair{column, row + 1}})
      if (const int other = at(c, r); other >= 0) f(other);
  }

 private:
  void number();  // the cells on the grid

  const Yard& yard_;
  const Bed& bed_;
  double size_;
  double width_ = 0.0;
  double toTake_ = 0.0;  // 0 where not told
  bool fenced_ = false;
  Box box_;
  int columns_ = 0, rows_ = 0;
  std::vector<FillCell> cells_;
  std::vector<std::int32_t> grid_;
};

// A cell size that shows plants of this spacing and keeps the number of cells in bounds.
[[nodiscard]] double cellSizeFor(const Bed& bed, double spacing);

}  // namespace tussock
