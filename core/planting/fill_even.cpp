// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/planting/disc_grid.h"
#include "core/planting/fill_plant.h"

namespace tussock {

namespace {

constexpr int kEvenRounds = 14;

using CellsOf = std::vector<std::vector<int>>;  // the cells of each drift

CellsOf cellsOf(const Owners& owners, std::size_t drifts) {
  CellsOf cells(drifts);
  for (std::size_t i = 0; i < owners.size(); ++i)
    if (owners[i] >= 0) cells[static_cast<std::size_t>(owners[i])].push_back(static_cast<int>(i));
  return cells;
}

// One drift's places on the way to lie evenly in its cells.
class Evening {
 public:
  Evening(const FillGround& ground, const std::vector<int>& cells, const DriftToPlant& drift,
          Chance& chance)
      : ground_(ground), cells_(cells), drift_(drift), chance_(chance) {
    for (const int cell : cells) box_.include(at(cell));
    const double area = ground.cellArea() * static_cast<double>(cells.size());
    step_ = std::sqrt(area / drift.count * 2.0 / std::numbers::sqrt3);
  }

  std::vector<Point> run(const WorkWatch& watch) {
    begin();
    for (int i = 0; i < kEvenRounds && !watch.halt(); ++i) round();
    return places_;
  }

 private:
  [[nodiscard]] Point at(int cell) const {
    return ground_.cells()[static_cast<std::size_t>(cell)].at;
  }
  [[nodiscard]] bool owns(Point p) const {
    const int cell = ground_.at(p);
    return cell >= 0 && std::binary_search(cells_.begin(), cells_.end(), cell);
  }

  // A lattice turned some way, thinned or filled up to the count.
  void begin() {
    const Angle turn = drift_.axis + Angle::radians(chance_.between(-0.4, 0.4));
    const Point middle = box_.centre();
    const double reach = 0.5 * std::hypot(box_.width(), box_.height()) + step_;
    const Point shift{chance_.between(0.0, step_), chance_.between(0.0, step_)};
    const double rows = step_ * std::numbers::sqrt3 / 2.0;
    const int count = static_cast<int>(reach / rows) + 1;
    for (int j = -count; j <= count; ++j)
      for (int i = -count; i <= count; ++i) {
        const Point local = Point{(i + (j % 2 == 0 ? 0.0 : 0.5)) * step_, j * rows} + shift;
        const Point p = rotated(local, turn) + middle;
        if (owns(p)) places_.push_back(p);
      }
    chance_.shuffle(places_);
    const auto wanted = static_cast<std::size_t>(drift_.count);
    if (places_.size() > wanted) places_.resize(wanted);
    while (places_.size() < wanted) places_.push_back(at(cells_[chance_.below(cells_.size())]));
  }

  void round() {
    DiscGrid grid(box_, std::max(step_, 1e-3));
    for (const Point p : places_) grid.add(p);
    std::vector<Point> sums(places_.size());
    std::vector<double> shares(places_.size(), 0.0);
    for (const int cell : cells_) {
      const std::size_t nearest = nearestTo(at(cell), grid);
      sums[nearest] += at(cell);
      shares[nearest] += 1.0;
    }
    for (std::size_t i = 0; i < places_.size(); ++i)
      places_[i] =
          shares[i] > 0.0 ? sums[i] * (1.0 / shares[i]) : at(cells_[chance_.below(cells_.size())]);
  }

  [[nodiscard]] std::size_t nearestTo(Point p, const DiscGrid& grid) const {
    std::size_t best = 0;
    double least = 1e300;
    for (double reach = 1.2 * step_; least > 1e299; reach *= 2.0)
      grid.near(p, reach, [&](std::size_t i) {
        const double d = squaredDistance(p, grid.at(i));
        if (d < least) least = d, best = i;
        return true;
      });
    return best;
  }

  const FillGround& ground_;
  const std::vector<int>& cells_;  // ascending
  const DriftToPlant& drift_;
  Chance& chance_;
  Box box_;
  double step_ = 0.3;  // metres
  std::vector<Point> places_;
};

}  // namespace

DriftPlaces evenPlaces(const FillGround& ground, const Owners& owners,
                       const std::vector<DriftToPlant>& drifts, Chance& chance,
                       const WorkWatch& watch) {
  const CellsOf cells = cellsOf(owners, drifts.size());
  DriftPlaces result(drifts.size());
  for (std::size_t i = 0; i < drifts.size(); ++i)
    if (!cells[i].empty() && drifts[i].count > 0)
      result[i] = Evening(ground, cells[i], drifts[i], chance).run(watch);
  return result;
}

}  // namespace tussock
