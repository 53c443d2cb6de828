// SPDX-License-Identifier: MIT
#include "core/planting/fill_cells.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace tussock {

namespace {

struct Measure {
  Point along;
  double root;  // of the stretch
  explicit Measure(Angle axis, double stretch)
      : along{std::cos(axis.radians()), std::sin(axis.radians())}, root(std::sqrt(stretch)) {}
  [[nodiscard]] double squared(Point step) const { return squared(step, along); }
  [[nodiscard]] double squared(Point step, Point lying) const {
    const double u = dot(step, lying) / root, v = cross(lying, step) * root;
    return u * u + v * v;
  }
};

Point direction(double radians) {
  return {std::cos(radians), std::sin(radians)};
}
// A direction turned by the angle of another, and back by it.
Point turned(Point a, Point by) {
  return {a.x * by.x - a.y * by.y, a.x * by.y + a.y * by.x};
}
Point turnedBack(Point a, Point by) {
  return {a.x * by.x + a.y * by.y, a.y * by.x - a.x * by.y};
}
// Half the turn of the grain from one place to another, of the two ways round the shorter. Grains
// have no sense, so their halves are the same up to a right angle.
Point halfTurn(Point from, Point to) {
  const Point turn = turnedBack(to, from);
  return std::abs(turn.y) > std::abs(turn.x) ? Point{turn.y, -turn.x} : turn;
}

// Slow waves in many directions: a bend without a visible pattern.
class Bend {
 public:
  Bend(double depth, double scale, Chance& chance) : depth_(depth) {
    for (Wave& wave : waves_) {
      const double turn = chance.between(0.0, 2.0 * std::numbers::pi);
      const double length = scale * chance.between(1.6, 4.0);
      wave.along = Point{std::cos(turn), std::sin(turn)} * (2.0 * std::numbers::pi / length);
      wave.phase = chance.between(0.0, 2.0 * std::numbers::pi);
      const double push = chance.between(0.0, 2.0 * std::numbers::pi);
      wave.push = {std::cos(push), std::sin(push)};
    }
  }
  [[nodiscard]] Point at(Point p) const {
    Point sum = p;
    for (const Wave& wave : waves_)
      sum += wave.push * (depth_ * std::sin(dot(p, wave.along) + wave.phase));
    return sum;
  }

 private:
  struct Wave {
    Point along, push;
    double phase = 0.0;
  };
  std::array<Wave, 6> waves_{};
  double depth_;
};

// What a row of cells crosses of an ellipse: from and to east of its middle.
class EllipseRows {
 public:
  // Lies along a unit vector; half its length and half its width in metres.
  EllipseRows(Point along, double length, double width) {
    const double u = 1.0 / (length * length), v = 1.0 / (width * width);
    east_ = along.x * along.x * u + along.y * along.y * v;
    both_ = along.x * along.y * (u - v);
    north_ = along.y * along.y * u + along.x * along.x * v;
  }
  [[nodiscard]] double top() const { return std::sqrt(east_ / (east_ * north_ - both_ * both_)); }
  // Nothing is crossed where `from` is more than `to`.
  [[nodiscard]] std::pair<double, double> at(double north) const {
    const double middle = -both_ * north / east_;
    const double inside = middle * middle - (north_ * north * north - 1.0) / east_;
    if (inside < 0.0) return {1.0, -1.0};
    const double half = std::sqrt(inside);
    return {middle - half, middle + half};
  }

 private:
  double east_, both_, north_;  // east x² + 2 both x y + north y² = 1 on its edge
};

struct Tally {
  Point sum;
  double cells = 0.0;
};

}  // namespace

DriftCells::DriftCells(const FillGround& ground, const BedGrain& grain, double bend, double scale,
                       Chance& chance)
    : ground_(ground), grain_(grain) {
  const Bend bending(0.09 * bend * scale, scale, chance);
  bent_.reserve(ground.cells().size());
  for (const FillCell& cell : ground.cells()) bent_.push_back(bending.at(cell.at));
  if (!grain.bends()) return;
  turn_.reserve(ground.cells().size());
  for (const FillCell& cell : ground.cells())
    turn_.push_back(direction(0.5 * grain.at(cell.at).radians()));
}

void DriftCells::claim(const DriftCell& drift, std::int32_t number, double usualArea,
                       Owners& owners, std::vector<double>& nearest) const {
  const Angle grain = grain_.at(drift.middle);
  const Measure measure(grain + drift.lean, drift.stretch);
  const Point turn = direction(0.5 * grain.radians());
  // Beyond this a drift has no business; what nobody claims is filled up later. A small one looks
  // as far as others: else a corner that only it reaches would all be its own.
  const double radius = 2.4 * std::sqrt(std::max(drift.area, usualArea) / std::numbers::pi);
  const double bend = 0.3 * radius;
  const EllipseRows reach(measure.along, radius * measure.root + bend,
                          radius / measure.root + bend);
  const int high = ground_.rowOf(drift.middle.y + reach.top());
  for (int row = ground_.rowOf(drift.middle.y - reach.top()); row <= high; ++row) {
    const auto [from, to] = reach.at(ground_.yOf(row) - drift.middle.y);
    if (from > to) continue;
    const int right = ground_.columnOf(drift.middle.x + to);
    for (int column = ground_.columnOf(drift.middle.x + from); column <= right; ++column) {
      const int cell = ground_.at(column, row);
      if (cell < 0) continue;
      const auto i = static_cast<std::size_t>(cell);
      // A chord of a circle lies halfway between the directions at its ends: so a drift that bends
      // with the bed is measured by the mean of both.
      const Point lying =
          turn_.empty() ? measure.along : turned(measure.along, halfTurn(turn, turn_[i]));
      const double away = measure.squared(bent_[i] - drift.middle, lying) - drift.weight;
      if (away < nearest[i]) nearest[i] = away, owners[i] = number;
    }
  }
}

double DriftCells::usualArea(std::size_t drifts) const {
  return ground_.area() / std::max(1.0, static_cast<double>(drifts));
}

Owners DriftCells::owners(const std::vector<DriftCell>& drifts) const {
  Owners owners(ground_.cells().size(), -1);
  std::vector<double> nearest(owners.size(), std::numeric_limits<double>::infinity());
  const double usual = usualArea(drifts.size());
  for (std::size_t i = 0; i < drifts.size(); ++i)
    claim(drifts[i], static_cast<std::int32_t>(i), usual, owners, nearest);
  return owners;
}

// Gives ground that nobody claimed to whoever lies beside it.
void DriftCells::fillUp(Owners& owners) const {
  std::vector<int> front;
  for (std::size_t i = 0; i < owners.size(); ++i)
    if (owners[i] >= 0) front.push_back(static_cast<int>(i));
  for (std::size_t i = 0; i < front.size(); ++i) {
    const std::int32_t owner = owners[static_cast<std::size_t>(front[i])];
    ground_.beside(front[i], [&](int other) {
      auto& theirs = owners[static_cast<std::size_t>(other)];
      if (theirs < 0) theirs = owner, front.push_back(other);
    });
  }
}

std::vector<int> DriftCells::pieceOf(int cell, const Owners& owners,
                                     std::vector<char>& seen) const {
  std::vector<int> piece{cell};
  seen[static_cast<std::size_t>(cell)] = 1;
  for (std::size_t i = 0; i < piece.size(); ++i)
    ground_.beside(piece[i], [&](int other) {
      const auto o = static_cast<std::size_t>(other);
      if (seen[o] != 0 || owners[o] != owners[static_cast<std::size_t>(cell)]) return;
      seen[o] = 1;
      piece.push_back(other);
    });
  return piece;
}

// The largest piece of each drift stays; the others go to their neighbours.
void DriftCells::joinPieces(Owners& owners, std::size_t count) const {
  std::vector<char> seen(owners.size(), 0);
  std::vector<std::vector<int>> largest(count);
  for (std::size_t i = 0; i < owners.size(); ++i) {
    if (owners[i] < 0 || seen[i] != 0) continue;
    auto piece = pieceOf(static_cast<int>(i), owners, seen);
    auto& best = largest[static_cast<std::size_t>(owners[i])];
    if (piece.size() > best.size()) best = std::move(piece);
  }
  std::fill(owners.begin(), owners.end(), -1);
  for (std::size_t drift = 0; drift < count; ++drift)
    for (const int cell : largest[drift])
      owners[static_cast<std::size_t>(cell)] = static_cast<std::int32_t>(drift);
  fillUp(owners);
}

Owners DriftCells::share(std::vector<DriftCell>& drifts, int rounds, const WorkWatch& watch) const {
  // A small drift among large ones gains as fast as they: else they swallow it.
  constexpr double kGain = 0.5, kMostGain = 0.35;
  const double usual = usualArea(drifts.size());
  Owners result;
  for (int round = 0; round < rounds && !watch.halt(); ++round) {
    result = owners(drifts);
    std::vector<Tally> tallies(drifts.size());
    for (std::size_t i = 0; i < result.size(); ++i) {
      if (result[i] < 0) continue;
      Tally& tally = tallies[static_cast<std::size_t>(result[i])];
      tally.sum += bent_[i];
      tally.cells += 1.0;
    }
    for (std::size_t i = 0; i < drifts.size(); ++i) {
      DriftCell& drift = drifts[i];
      const double short_ = drift.area - tallies[i].cells * ground_.cellArea();
      const double most = kMostGain * std::max(drift.area, 0.5 * usual);
      drift.weight += kGain * std::clamp(short_, -most, most) / std::numbers::pi;
      if (tallies[i].cells < 1.0) continue;
      const Point centre = tallies[i].sum * (1.0 / tallies[i].cells);
      // The last rounds only settle the areas.
      if (round + 5 < rounds) drift.middle += (centre - drift.middle) * 0.6;
    }
  }
  result = owners(drifts);
  fillUp(result);
  joinPieces(result, drifts.size());
  return result;
}

// Best of several candidates (Mitchell 1991): the one farthest from those there are.
std::vector<Point> spreadMiddles(const FillGround& ground, std::size_t count, Angle axis,
                                 double stretch, Chance& chance) {
  const auto& cells = ground.cells();
  std::vector<Point> middles;
  if (cells.empty()) return middles;
  const Measure measure(axis, stretch);
  const std::size_t tries = count > 300 ? 6 : 14;
  while (middles.size() < count) {
    Point best = cells[chance.below(cells.size())].at;
    double farthest = -1.0;
    for (std::size_t i = 0; i < tries; ++i) {
      const Point p = cells[chance.below(cells.size())].at;
      double nearest = std::numeric_limits<double>::infinity();
      for (const Point q : middles) nearest = std::min(nearest, measure.squared(p - q));
      if (nearest > farthest) farthest = nearest, best = p;
    }
    middles.push_back(best);
  }
  return middles;
}

}  // namespace tussock
