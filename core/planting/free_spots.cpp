// SPDX-License-Identifier: MIT
#include "core/planting/free_spots.h"

#include <algorithm>
#include <cmath>

#include "core/planting/search_cell.h"

namespace tussock {

namespace {

constexpr double kSpotRounding = 1e-7;  // metres

double widestApart(const Ground& ground, double apart) {
  double widest = apart * 1.1;
  for (const Neighbour& n : ground.neighbours()) widest = std::max(widest, n.usual);
  return widest;
}

}  // namespace

FreeSpots::FreeSpots(const Ground& ground, double apart)
    : ground_(ground),
      apart_(apart),
      widest_(widestApart(ground, apart)),
      grid_(ground.box(), searchCell(ground.box(), widest_)) {
  for (const Neighbour& neighbour : ground.neighbours()) grid_.add(neighbour.at);
}

bool FreeSpots::fits(Point p) const {
  const auto& neighbours = ground_.neighbours();
  const double beside = Packing().beside;
  const auto keepsOff = [&](std::size_t item) {
    double least = apart_;
    if (item < neighbours.size())
      least = std::max(neighbours[item].least, beside * neighbours[item].usual);
    return distance(p, grid_.at(item)) >= least - kSpotRounding;
  };
  return grid_.near(p, widest_, keepsOff) && ground_.holds(p);
}

void FreeSpots::take(Point p) {
  grid_.add(p);
  places_.push_back(p);
}

std::vector<Point> gridOver(const Ground& ground, double step, const DriftFigure& figure) {
  constexpr double kMost = 20'000;
  const Box& box = ground.box();
  step = std::max(step, std::sqrt(box.width() * box.height() / kMost));
  step = std::max(step, std::max(box.width(), box.height()) / kMost);
  std::vector<std::pair<double, Point>> ordered;
  for (double y = box.low.y; y <= box.high.y; y += step)
    for (double x = box.low.x; x <= box.high.x; x += step)
      ordered.emplace_back(figure.distanceTo({x, y}), Point{x, y});
  std::stable_sort(ordered.begin(), ordered.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Point> points;
  points.reserve(ordered.size());
  for (const auto& entry : ordered) points.push_back(entry.second);
  return points;
}

}  // namespace tussock
