// SPDX-License-Identifier: MIT
#include "core/planting/fill_settle.h"

#include <algorithm>
#include <cmath>

#include "core/planting/front.h"
#include "core/planting/grow.h"

namespace tussock {

namespace {

constexpr double kSettledRounding = 1e-7;  // metres

GrowRequest requestFor(const PlantingPlace& place, double spacing) {
  GrowRequest request;
  request.bed = place.bed.id;
  request.layer = place.layer;
  request.spacing = Length::metres(spacing);
  request.at = place.ground.box().centre();
  return request;
}

double reachOf(const Box& box) {
  return box.width() + box.height() + 1.0;
}

double widestOf(const std::vector<DriftToPlant>& drifts) {
  double widest = 0.05;
  for (const DriftToPlant& drift : drifts) widest = std::max(widest, drift.spacing);
  return widest;
}

}  // namespace

FreeGround::FreeGround(const PlantingPlace& place, double spacing)
    : cells_(place.ground),
      ground_(place.yard, requestFor(place, spacing), reachOf(place.ground.box())),
      spacing_(spacing),
      setBack_(setBackFor(place.bed, Length::metres(spacing)).metres()),
      kept_(place.ground.box(), std::max(0.3, spacing)) {
  for (const Neighbour& neighbour : ground_.neighbours()) {
    kept_.add(neighbour.at);
    widest_ = std::max(widest_, neighbour.usual);
  }
}

bool FreeGround::holds(Point p) const {
  if (cells_.isOff(p)) return false;
  const int cell = cells_.at(p);
  if (cell >= 0 && cells_.box().contains(p) &&
      cells_.cells()[static_cast<std::size_t>(cell)].toEdge > setBack_ + cells_.size())
    return true;
  return ground_.holds(p);
}

Point FreeGround::inside(Point p) const {
  return holds(p) ? p : ground_.inside(p);
}

Point FreeGround::pushFromKept(Point p, double share) const {
  Point push;
  kept_.near(p, widest_, [&](std::size_t i) {
    const Neighbour& n = ground_.neighbours()[i];
    const double rest = std::max(n.least, share * n.usual);
    const double d = distance(p, n.at);
    if (d < rest && d > 0.0) push += (p - n.at) * ((rest - d) / d);
    return true;
  });
  return push;
}

bool FreeGround::clearOfKept(Point p) const {
  return kept_.near(p, widest_, [&](std::size_t i) {
    return distance(p, ground_.neighbours()[i].at) >=
           ground_.neighbours()[i].least - kSettledRounding;
  });
}

Settling::Settling(const PlantingPlace& place, const std::vector<DriftToPlant>& drifts,
                   const DriftPlaces& places)
    : drifts_(drifts),
      widest_(widestOf(drifts)),
      grid_(place.ground.box(), std::max(0.6 * widest_, place.ground.size())) {
  for (const DriftToPlant& drift : drifts)
    if (!free_.contains(drift.spacing))
      free_.emplace(drift.spacing, std::make_unique<FreeGround>(place, drift.spacing));
  for (std::size_t drift = 0; drift < places.size(); ++drift)
    for (const Point p : places[drift]) add(drift, freeFor(drift).inside(p));
}

const FreeGround& Settling::freeFor(std::size_t drift) const {
  return *free_.at(drifts_[drift].spacing);
}

void Settling::add(std::size_t drift, Point p) {
  items_.push_back({drift, &freeFor(drift), unevenness(items_.size()), true});
  grid_.add(p);
}

Point Settling::stepOf(std::size_t i, Point push) const {
  constexpr double kMostStep = 0.2;  // of the spacing
  const double length = std::hypot(push.x, push.y);
  const double most = kMostStep * spacing(i);
  return grid_.at(i) + (length > most ? push * (most / length) : push);
}

void Settling::move(std::size_t i, Point push) {
  if (std::hypot(push.x, push.y) < 1e-9) return;
  const FreeGround& free = *items_[i].free;
  const Point to = free.inside(stepOf(i, push));
  if (free.holds(to) || !free.holds(grid_.at(i))) grid_.move(i, to);
}

Point Settling::pushOn(std::size_t i, double rest, Distances distances) const {
  constexpr double kShare = 0.45;  // of an overlap that one of the two gives way
  const Point p = grid_.at(i);
  const double own = spacing(i);
  Point push;
  grid_.near(p, 0.5 * (own + widest_) * 1.1 * std::max(1.0, rest), [&](std::size_t other) {
    if (other == i || !items_[other].stands) return true;
    double apart = rest * 0.5 * (own + spacing(other));
    if (distances == Distances::Uneven) apart *= 0.5 * (items_[i].uneven + items_[other].uneven);
    const double d = distance(p, grid_.at(other));
    if (d >= apart) return true;
    // Two in one place part sideways.
    push += d > 1e-6 ? (p - grid_.at(other)) * (kShare * (apart - d) / d)
                     : Point{i < other ? 0.1 * own : -0.1 * own, 0.03 * own};
    return true;
  });
  return push + items_[i].free->pushFromKept(p, rest);
}

void Settling::round(double rest, Distances distances) {
  for (std::size_t i = 0; i < items_.size(); ++i)
    if (items_[i].stands) move(i, pushOn(i, rest, distances));
}

// Whoever of its drift it touches it must go on touching.
bool Settling::keepsTouch(std::size_t i, Point to) const {
  const double reach = kTouch * spacing(i);
  return grid_.near(grid_.at(i), reach, [&](std::size_t other) {
    if (other == i || !items_[other].stands || items_[other].drift != items_[i].drift) return true;
    return distance(to, grid_.at(other)) < reach - kSettledRounding;
  });
}

double Settling::roomFor(std::size_t i, Point to) const {
  double room = 1.0;
  grid_.near(to, 0.5 * (spacing(i) + widest_), [&](std::size_t other) {
    if (other != i && items_[other].stands)
      room = std::min(room, distance(to, grid_.at(other)) / (0.5 * (spacing(i) + spacing(other))));
    return true;
  });
  return room;
}

double Settling::meanNearest() const {
  double sum = 0.0, count = 0.0;
  for (std::size_t i = 0; i < items_.size(); ++i)
    if (items_[i].stands) sum += roomFor(i, grid_.at(i)), count += 1.0;
  return count > 0.0 ? sum / count : 1.0;
}

void Settling::ease(double rest) {
  constexpr double kSnug = 0.95;  // nearer than this is not come for evenness
  for (std::size_t i = 0; i < items_.size(); ++i) {
    if (!items_[i].stands) continue;
    const Point push = pushOn(i, rest, Distances::Uneven) * 0.5;
    if (std::hypot(push.x, push.y) < 0.01 * spacing(i)) continue;
    const Point to = items_[i].free->inside(stepOf(i, push));
    const double least = std::min(kSnug, roomFor(i, grid_.at(i)));
    if (roomFor(i, to) >= least && mayMove(i, to)) moveTo(i, to);
  }
}

int Settling::breaches(std::size_t i) const {
  const Point p = grid_.at(i);
  int count = items_[i].free->holds(p) && items_[i].free->clearOfKept(p) ? 0 : 100;
  grid_.near(p, 0.5 * (spacing(i) + widest_), [&](std::size_t other) {
    if (other == i || !items_[other].stands) return true;
    const double least = kLooseSpacing * 0.5 * (spacing(i) + spacing(other));
    if (distance(p, grid_.at(other)) < least - kSettledRounding) ++count;
    return true;
  });
  return count;
}

bool Settling::fits(std::size_t drift, Point p, std::size_t without) const {
  const FreeGround& free = freeFor(drift);
  const double own = free.spacing();
  return grid_.near(p, 0.5 * (own + widest_),
                    [&](std::size_t other) {
                      if (other == without || !items_[other].stands) return true;
                      const double least = kLooseSpacing * 0.5 * (own + spacing(other));
                      return distance(p, grid_.at(other)) >= least;
                    }) &&
         free.clearOfKept(p) && free.holds(p);
}

}  // namespace tussock
