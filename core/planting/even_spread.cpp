// SPDX-License-Identifier: MIT
#include "core/planting/even_spread.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/lattice.h"
#include "core/planting/front.h"
#include "core/planting/search_cell.h"

namespace tussock {

namespace {

constexpr double kCellsAcross = 6.0;  // of a spacing
constexpr double kMostFormCells = 60'000.0;

// What stands around, quick to ask.
class Others {
 public:
  explicit Others(const Ground& ground)
      : ground_(ground),
        widest_(widestOf(ground)),
        grid_(ground.box(), searchCell(ground.box(), widest_)) {
    for (const Neighbour& neighbour : ground.neighbours()) grid_.add(neighbour.at);
  }
  // Calls f(neighbour) for those near enough to p to matter; stops and returns false when f does.
  template <class F>
  bool near(Point p, F&& f) const {
    return grid_.near(p, widest_, [&](std::size_t i) { return f(ground_.neighbours()[i]); });
  }

 private:
  static double widestOf(const Ground& ground) {
    double widest = 0.1;
    for (const Neighbour& n : ground.neighbours()) widest = std::max(widest, n.usual);
    return 1.15 * widest;
  }
  const Ground& ground_;
  double widest_;  // metres
  DiscGrid grid_;
};

class FormGround {
 public:
  FormGround(const Ground& ground, const OwnForm& form, Length spacing, int count)
      : ground_(ground),
        form_(form),
        spacing_(spacing.metres()),
        area_(triangularGround(spacing).squareMetres() * count),
        step_(std::max(spacing_ / kCellsAcross, std::sqrt(area_ / kMostFormCells))),
        others_(ground) {}

  // Middles of free cells, those nearest the form's places, as many as make the area.
  [[nodiscard]] std::vector<Point> cells() const {
    std::vector<Cell> cells;
    const double most = form_.spacing() + kFarthest * spacing_;
    for (double reach = form_.spacing(); lacks(cells) && reach < 1.5 * most; reach *= 1.5)
      cells = within(std::min(reach, most));
    std::stable_sort(cells.begin(), cells.end(),
                     [](const Cell& a, const Cell& b) { return a.off < b.off; });
    std::vector<Point> result;
    for (const Cell& cell : cells) {
      if (step_ * step_ * static_cast<double>(result.size()) >= area_) break;
      result.push_back(cell.at);
    }
    return result;
  }

 private:
  struct Cell {
    double off;  // metres from the form
    Point at;
  };
  static constexpr double kFarthest = 8.0;  // spacings; as far as a drift is looked a place for

  [[nodiscard]] bool lacks(const std::vector<Cell>& cells) const {
    return step_ * step_ * static_cast<double>(cells.size()) < area_;
  }
  [[nodiscard]] std::vector<Cell> within(double reach) const {
    std::vector<Cell> cells;
    const Box box = boundsOf(form_.places()).grown(reach);
    for (double y = box.low.y + step_ / 2.0; y < box.high.y; y += step_)
      for (double x = box.low.x + step_ / 2.0; x < box.high.x; x += step_)
        if (form_.isWithin({x, y}, reach + form_.spacing()) && isFree({x, y}))
          if (const double off = form_.distanceTo({x, y}); off < reach)
            cells.push_back({off, {x, y}});
    return cells;
  }
  // What other plants take by their own spacing is theirs, and the corners between them too.
  [[nodiscard]] bool isFree(Point p) const {
    constexpr double kCorners = 1.15;  // of the half spacing: a hexagon's corner over its side
    const bool free = others_.near(p, [&](const Neighbour& n) {
      return distance(p, n.at) > kCorners * (n.usual - spacing_ / 2.0);
    });
    return free && ground_.isOpen(p);
  }

  const Ground& ground_;
  const OwnForm& form_;
  double spacing_;
  double area_;  // square metres
  double step_;  // metres
  Others others_;
};

// As many of them as there are, each next far from the last: the golden ratio spreads any run
// evenly (Weyl's sequence). Some come twice, some not at all.
std::vector<Point> hereAndThere(const std::vector<Point>& points) {
  std::vector<Point> order;
  order.reserve(points.size());
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double share = std::fmod(static_cast<double>(i + 1) * 0.6180339887498949, 1.0);
    order.push_back(points[static_cast<std::size_t>(share * static_cast<double>(points.size()))]);
  }
  return order;
}

// Places on their way to an even spread.
class EvenSpread {
 public:
  EvenSpread(const Ground& ground, std::vector<Point> cells, double spacing)
      : ground_(ground), others_(ground), cells_(std::move(cells)), spacing_(spacing) {}

  // Where the drift stood first, then cells; far apart first, nearer as long as that is not enough,
  // here and there and not from one end on, so that no part is left without.
  void begin(const std::vector<Point>& stood, int count) {
    std::vector<Point> offered;
    for (const Point p : hereAndThere(stood))
      if (ground_.isOpen(p)) offered.push_back(p);
    for (const Point p : hereAndThere(cells_)) offered.push_back(p);
    for (double apart = 1.0; apart > 0.05 && static_cast<int>(at_.size()) < count; apart *= 0.9)
      take(offered, apart * spacing_, static_cast<std::size_t>(count));
  }

  void toMiddles() {
    const DiscGrid grid = gridNow();
    std::vector<Point> sums(at_.size());
    std::vector<double> counts(at_.size(), 0.0);
    for (const Point cell : cells_) {
      const std::size_t i = grid.nearest(cell, spacing_);
      sums[i] += cell, counts[i] += 1.0;
    }
    for (std::size_t i = 0; i < at_.size(); ++i)
      if (counts[i] > 0.0) at_[i] = sums[i] * (1.0 / counts[i]);
  }

  void pushApart() {
    const DiscGrid grid = gridNow();
    for (std::size_t i = 0; i < at_.size(); ++i) at_[i] = ground_.inside(at_[i] + pushOn(i, grid));
  }

  [[nodiscard]] const std::vector<Point>& places() const { return at_; }

 private:
  [[nodiscard]] DiscGrid gridNow() const {
    const Box box = boundsOf(at_);
    DiscGrid grid(box, searchCell(box, spacing_));
    for (const Point p : at_) grid.add(p);
    return grid;
  }
  void take(const std::vector<Point>& offered, double apart, std::size_t count) {
    DiscGrid grid(ground_.box(), searchCell(ground_.box(), spacing_));
    for (const Point p : at_) grid.add(p);
    for (const Point p : offered) {
      if (at_.size() >= count) return;
      if (!grid.near(p, apart, [](std::size_t) { return false; })) continue;
      grid.add(p), at_.push_back(p);
    }
  }
  [[nodiscard]] Point pushOn(std::size_t i, const DiscGrid& grid) const {
    constexpr double kShare = 0.4;  // of an overlap that a plant gives way
    Point push;
    grid.near(at_[i], spacing_, [&](std::size_t j) {
      const double rest = kRestApart * spacing_ * (unevenness(i) + unevenness(j)) / 2.0;
      const double d = distance(at_[i], grid.at(j));
      if (j != i && d < rest && d > 0.0) push += (at_[i] - grid.at(j)) * (kShare * (rest - d) / d);
      return true;
    });
    others_.near(at_[i], [&](const Neighbour& n) {
      const double rest = std::max(n.least, kRestApart * n.usual);
      const double d = distance(at_[i], n.at);
      if (d < rest && d > 0.0) push += (at_[i] - n.at) * ((rest - d) / d);
      return true;
    });
    return push;
  }

  static constexpr double kRestApart = 0.92;  // of the spacing, as where a growing drift nestles
  const Ground& ground_;
  Others others_;
  std::vector<Point> cells_;
  double spacing_;
  std::vector<Point> at_;
};

}  // namespace

std::vector<Point> spreadOver(const Ground& ground, const OwnForm& form, Length spacing,
                              int count) {
  constexpr int kEvenRounds = 40, kApartRounds = 16;
  std::vector<Point> cells = FormGround(ground, form, spacing, count).cells();
  if (cells.empty()) return {};
  EvenSpread spread(ground, std::move(cells), spacing.metres());
  spread.begin(form.places(), count);
  for (int i = 0; i < kEvenRounds; ++i) spread.toMiddles();
  for (int i = 0; i < kApartRounds; ++i) spread.pushApart();
  return spread.places();
}

}  // namespace tussock
