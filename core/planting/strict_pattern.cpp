// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <queue>

#include "core/planting/contacts.h"
#include "core/planting/free_spots.h"
#include "core/planting/patterns.h"

namespace tussock {

namespace {

using Cell = std::pair<int, int>;

// The lattice of a strict pattern: where its cells lie and which lie side by side.
class Lattice {
 public:
  Lattice(const GrowRequest& request, Point origin)
      : square_(request.pattern == Pattern::Square), origin_(origin) {
    const double s = request.spacing.metres();
    const Angle axis = request.axis.value_or(Angle());
    along_ = rotated(Point{s, 0.0}, axis);
    across_ =
        rotated(square_ ? Point{0.0, s} : Point{s / 2.0, s * std::numbers::sqrt3 / 2.0}, axis);
  }
  [[nodiscard]] Point at(Cell cell) const {
    return origin_ + along_ * cell.first + across_ * cell.second;
  }
  [[nodiscard]] Cell nearest(Point p) const {
    const double area = cross(along_, across_);
    const Point step = p - origin_;
    return {static_cast<int>(std::lround(cross(step, across_) / area)),
            static_cast<int>(std::lround(cross(along_, step) / area))};
  }
  [[nodiscard]] std::vector<Cell> beside(Cell c) const {
    std::vector<Cell> cells{{c.first + 1, c.second},
                            {c.first - 1, c.second},
                            {c.first, c.second + 1},
                            {c.first, c.second - 1}};
    if (square_) return cells;
    cells.emplace_back(c.first + 1, c.second - 1);
    cells.emplace_back(c.first - 1, c.second + 1);
    return cells;
  }

 private:
  bool square_;
  Point origin_;
  Point along_, across_;
};

// Takes cells side by side, the nearest in the figure's distance first.
class LatticeGrowth {
 public:
  LatticeGrowth(const Ground& ground, const GrowRequest& request, Point origin,
                const DriftFigure& figure)
      : lattice_(request, origin), figure_(figure), spots_(ground, request.spacing.metres()) {}

  void stand(Point p) {
    spots_.take(p);
    const Cell cell = lattice_.nearest(p);
    known_[cell] = true;
    offerBeside(cell);
  }
  // At the free cell nearest the drop, within eight spacings of it.
  void begin(Point drop) {
    constexpr int kReach = 8;
    const Cell middle = lattice_.nearest(drop);
    Cell best = middle;
    double nearest = std::numeric_limits<double>::infinity();
    for (int i = -kReach; i <= kReach; ++i)
      for (int j = -kReach; j <= kReach; ++j) {
        const Cell cell{middle.first + i, middle.second + j};
        const double d = squaredDistance(lattice_.at(cell), drop);
        if (d < nearest && spots_.fits(lattice_.at(cell))) nearest = d, best = cell;
      }
    if (std::isfinite(nearest)) offer(best);
  }
  void growTo(int count) {
    while (static_cast<int>(spots_.places().size()) < count && !waiting_.empty()) {
      const auto [cost, cell] = waiting_.top();
      waiting_.pop();
      if (!spots_.fits(lattice_.at(cell))) continue;
      spots_.take(lattice_.at(cell));
      cost_ = std::max(cost_, cost);
      offerBeside(cell);
    }
  }
  [[nodiscard]] const std::vector<Point>& places() const { return spots_.places(); }
  [[nodiscard]] double cost() const { return cost_; }  // of the outermost place

 private:
  using Waiting = std::pair<double, Cell>;
  void offer(Cell cell) {
    if (known_.emplace(cell, true).second)
      waiting_.emplace(figure_.distanceTo(lattice_.at(cell)), cell);
  }
  void offerBeside(Cell cell) {
    for (const Cell& next : lattice_.beside(cell)) offer(next);
  }

  Lattice lattice_;
  DriftFigure figure_;
  FreeSpots spots_;
  std::map<Cell, bool> known_;
  std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> waiting_;
  double cost_ = 0.0;
};

// Where the lattice may be hung: at the drop, a part of a spacing beside it, and in the corners of
// the set-back, so that it lies flush with straight edges.
std::vector<Point> originsFor(const Ground& ground, const GrowRequest& request) {
  const double s = request.spacing.metres();
  const Angle axis = request.axis.value_or(Angle());
  std::vector<Point> corners;
  for (std::size_t i = 1; i < ground.borders().size(); ++i)
    addContacts(ground.borders()[i - 1], ground.borders()[i], corners);
  std::erase_if(corners, [&](Point p) { return !ground.holds(p); });
  std::stable_sort(corners.begin(), corners.end(), [&](Point a, Point b) {
    return squaredDistance(a, request.at) < squaredDistance(b, request.at);
  });
  constexpr std::size_t kMostCorners = 4;
  if (corners.size() > kMostCorners) corners.resize(kMostCorners);
  std::vector<Point> origins{request.at};
  for (const Point part : {Point{0.0, 0.5}, Point{0.5, 0.0}, Point{0.5, 0.5}})
    origins.push_back(request.at + rotated(part * s, axis));
  origins.insert(origins.end(), corners.begin(), corners.end());
  return origins;
}

}  // namespace

std::vector<Point> strictPlaces(const Ground& ground, const GrowRequest& request,
                                const std::vector<Point>& standing, const DriftFigure& figure) {
  if (!standing.empty()) {
    const Point origin = *std::min_element(standing.begin(), standing.end(), [&](Point a, Point b) {
      return squaredDistance(a, request.at) < squaredDistance(b, request.at);
    });
    LatticeGrowth growth(ground, request, origin, figure);
    for (const Point p : standing) growth.stand(p);
    growth.growTo(request.count);
    return growth.places();
  }
  std::vector<Point> best;
  double cost = std::numeric_limits<double>::infinity();
  for (const Point origin : originsFor(ground, request)) {
    LatticeGrowth growth(ground, request, origin, figure);
    growth.begin(request.at);
    growth.growTo(request.count);
    const std::size_t count = growth.places().size();
    if (count < best.size() || (count == best.size() && growth.cost() >= cost)) continue;
    best = growth.places();
    cost = growth.cost();
  }
  return best;
}

}  // namespace tussock
