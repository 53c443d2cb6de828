// SPDX-License-Identifier: MIT
#include "core/planting/front.h"

#include <algorithm>
#include <cmath>

#include "core/planting/search_cell.h"

namespace tussock {

namespace {

constexpr double kUnevenness = 0.07;
constexpr double kFrontRounding = 1e-7;  // metres

double widestReach(const Ground& ground, double spacing) {
  double widest = spacing * (1.0 + kUnevenness);
  for (const Neighbour& n : ground.neighbours()) widest = std::max(widest, n.usual);
  for (const Border& b : ground.borders()) widest = std::max(widest, b.least);
  return widest;
}

}  // namespace

double unevenness(std::size_t index) {
  // The golden ratio spreads any run of plants evenly over the range (Weyl's sequence).
  const double share = std::fmod(static_cast<double>(index + 1) * 0.6180339887498949, 1.0);
  return 1.0 + kUnevenness * (2.0 * share - 1.0);
}

Packing packingFor(int count) {
  Packing packing;
  if (isUsual(count)) packing.usual = 0.92;
  return packing;
}

// A figure between a rhombus and an ellipse, so that the ends taper.
double DriftFigure::distanceTo(Point p) const {
  if (corridor != nullptr) return corridor->along(p);
  if (form != nullptr) return form->distanceTo(p);
  constexpr double kTaper = 1.6;  // 2 is an ellipse, 1 a rhombus
  const Point local = rotated(p - middle, -axis);
  const double root = std::sqrt(stretch);
  const double sum =
      std::pow(std::abs(local.x) / root, kTaper) + std::pow(std::abs(local.y) * root, kTaper);
  return std::pow(sum, 1.0 / kTaper);
}

DriftFigure figureAsked(const GrowRequest& request) {
  return {request.at, request.axis.value_or(Angle()), request.stretch};
}

Front::Front(const Ground& ground, Length spacing, DriftFigure figure, Packing packing)
    : ground_(ground),
      spacing_(spacing.metres()),
      figure_(figure),
      packing_(packing),
      widest_(widestReach(ground, spacing_)),
      grid_(ground.box(), searchCell(ground.box(), widest_)) {
  for (const Neighbour& neighbour : ground.neighbours()) grid_.add(neighbour.at);
}

bool Front::fits(Point p) const {
  if (figure_.corridor != nullptr && !figure_.corridor->holds(p)) return false;
  const auto& neighbours = ground_.neighbours();
  const auto keepsOff = [&](std::size_t item) {
    double least = packing_.least * spacing_;
    if (item < neighbours.size())
      least = std::max(neighbours[item].least, packing_.least * neighbours[item].usual);
    return distance(p, grid_.at(item)) >= least - kFrontRounding;
  };
  return grid_.near(p, widest_, keepsOff) && ground_.holds(p);
}

Circle Front::circleOf(std::size_t item) const {
  const auto& neighbours = ground_.neighbours();
  if (item >= neighbours.size())
    return {grid_.at(item), packing_.usual * spacing_ * unevenness(item - neighbours.size())};
  const Neighbour& n = neighbours[item];
  return {n.at, std::max(n.least, packing_.beside * n.usual * unevenness(item))};
}

void Front::take(Point p) {
  grid_.add(p);
  places_.push_back(p);
  const Circle circle = circleOf(grid_.size() - 1);
  if (places_.size() == 1 || figure_.corridor != nullptr) offerAround(circle);
  if (packing_.lengthens) offerAlong(circle);
  offerBeside(circle);
}

void Front::begin(Point p) {
  take(p);
  if (places_.size() > 1) offerAround(circleOf(grid_.size() - 1));
}

void Front::offer(Point p, double later) {
  if (fits(p)) candidates_.push({figure_.distanceTo(p) + later, offered_++, p});
}

void Front::offerAround(const Circle& circle) {
  // Along a line any plant may have to lead the way, but one that nestles against two goes first.
  const bool leads = figure_.corridor != nullptr;
  const int directions = leads ? 36 : 12;
  for (int i = 0; i < directions; ++i)
    offer(rotated(circle.centre + Point{circle.radius, 0.0},
                  figure_.axis + Angle::degrees(360.0 / directions * i), circle.centre),
          leads ? spacing_ : 0.0);
}

// Now to this side of the axis, now to that.
void Front::offerAlong(const Circle& circle) {
  const double side = places_.size() % 2 == 0 ? 1.0 : -1.0;
  for (const double degrees : {0.0, 180.0})
    offer(rotated(circle.centre + Point{circle.radius, 0.0},
                  figure_.axis + Angle::degrees(degrees + side * 20.0), circle.centre));
}

void Front::offerBeside(const Circle& circle) {
  std::vector<Point> contacts;
  const std::size_t self = grid_.size() - 1;
  grid_.near(circle.centre, circle.radius + widest_, [&](std::size_t item) {
    if (item != self) addContacts(circle, circleOf(item), contacts);
    return true;
  });
  for (const Border& border : ground_.borders())
    if (distanceToSegment(circle.centre, border.from, border.to) < circle.radius + border.least)
      addContacts(circle, border, contacts);
  for (const Point p : contacts) offer(p);
}

void Front::growTo(int count) {
  while (static_cast<int>(places_.size()) < count && !candidates_.empty()) {
    const Point next = candidates_.top().at;
    candidates_.pop();
    if (fits(next)) take(next);
  }
}

std::vector<Point> Front::pockets(Point p, double metres) const {
  std::vector<Circle> circles;
  std::vector<Border> borders;
  std::vector<Point> found;
  grid_.near(p, metres + widest_, [&](std::size_t item) {
    circles.push_back(circleOf(item));
    return true;
  });
  for (const Border& border : ground_.borders())
    if (distanceToSegment(p, border.from, border.to) < metres + border.least)
      borders.push_back(border);
  for (std::size_t i = 0; i < circles.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) addContacts(circles[i], circles[j], found);
    for (const Border& border : borders) addContacts(circles[i], border, found);
  }
  for (std::size_t i = 0; i < borders.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) addContacts(borders[i], borders[j], found);
  std::erase_if(found, [&](Point q) { return distance(p, q) > metres || !fits(q); });
  std::stable_sort(found.begin(), found.end(),
                   [p](Point a, Point b) { return squaredDistance(p, a) < squaredDistance(p, b); });
  return found;
}

}  // namespace tussock
