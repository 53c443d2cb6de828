// SPDX-License-Identifier: MIT
#include "core/planting/ground.h"

#include <algorithm>

namespace tussock {

namespace {

// A bed just as wide as a plant asks for has a place for it along its middle: more than what is
// lost when a plant is pushed off one edge and then off the other.
constexpr double kGroundRounding = 1e-6;  // metres

Box intersectionOf(const Box& a, const Box& b) {
  return {{std::max(a.low.x, b.low.x), std::max(a.low.y, b.low.y)},
          {std::min(a.high.x, b.high.x), std::min(a.high.y, b.high.y)}};
}

}  // namespace

double reachOf(const GrowRequest& request) {
  const double s = request.spacing.metres();
  return (std::min(request.count, 100'000) * kTouch + 10.0) * s + 1.0;
}

Length setBackFor(const Bed& bed, Length spacing) {
  return std::max(bed.setback.value_or(Length()), spacing / 2.0);
}

GrowRequest onGround(GrowRequest request, const Slope& slope) {
  request.at = slope.onGround(request.at);
  if (request.axis) request.axis = slope.onGround(*request.axis);
  return request;
}

Ground::Ground(const Yard& yard, const GrowRequest& request, double reach)
    : slope_(yard.settings), half_(request.spacing.metres() / 2.0) {
  const Bed* bed = yard.beds.find(request.bed);
  if (bed == nullptr) return;
  bed_ = slope_.onGround(bed->outline);
  const Point at = slope_.onGround(request.at);
  box_ = intersectionOf(boundsOf(bed_), Box{at, at}.grown(reach));
  if (box_.empty()) return;
  addBorders(bed_, setBackFor(*bed, request.spacing).metres());
  for (const Paving& paving : yard.pavings) addSolid(paving.outline);
  for (const Building& building : yard.buildings) addSolid(building.footprint);
  addBarriers(yard);
  addRound(yard);
  addPlants(yard, request);
}

bool Ground::isClear(Point p, double nearer) const {
  if (!box_.contains(p)) return false;
  const double less = nearer + kGroundRounding;
  for (const Border& border : borders_)
    if (distanceToSegment(p, border.from, border.to) < border.least - less) return false;
  if (!contains(bed_, p)) return false;
  return std::none_of(solids_.begin(), solids_.end(),
                      [p](const Polygon& solid) { return contains(solid, p); });
}

Point Ground::inside(Point p) const {
  constexpr int kTries = 8;
  constexpr double kOver = 1e-7;  // metres
  for (int i = 0; i < kTries; ++i) {
    bool pushed = false;
    for (const Border& border : borders_) {
      const Point foot = nearestOnSegment(p, border.from, border.to);
      const double away = distance(p, foot);
      if (away >= border.least || away < 1e-9) continue;
      p = foot + (p - foot) * ((border.least + kOver) / away);
      pushed = true;
    }
    if (!pushed) break;
  }
  return p;
}

void Ground::addBarriers(const Yard& yard) {
  for (const Barrier& barrier : yard.barriers) {
    if (!barrier.footprint.empty()) addSolid(barrier.footprint);
    const double least = half_ + slope_.stretch() * barrier.thickness.metres() / 2.0;
    const Box near = box_.grown(least);
    for (std::size_t i = 1; i < barrier.line.size(); ++i) {
      const Border border{slope_.onGround(barrier.line[i - 1]), slope_.onGround(barrier.line[i]),
                          least};
      if (near.overlaps(boundsOf({border.from, border.to}))) borders_.push_back(border);
    }
  }
}

void Ground::addRound(const Yard& yard) {
  auto add = [&](Point plan, double planRadius) {
    const Point at = slope_.onGround(plan);
    const double radius = slope_.stretch() * planRadius;  // the long way of its ellipse
    if (box_.grown(radius + half_).contains(at))
      neighbours_.push_back({at, radius + half_, radius + half_});
  };
  for (const Tree& tree : yard.trees) add(tree.at, tree.trunkDiameter.metres() / 2.0);
  for (const SteppingPlace& place : yard.steppingPlaces) add(place.at, place.radius.metres());
}

void Ground::addPlants(const Yard& yard, const GrowRequest& request) {
  for (const Drift& drift : yard.drifts) {
    if (drift.id == request.inPlaceOf) continue;
    Neighbour kept{{}, kBetweenLayers.metres(), kBetweenLayers.metres()};
    if (drift.layer == request.layer) {
      kept.usual = half_ + drift.spacing.metres() / 2.0;
      kept.least = kLooseSpacing * kept.usual;
    }
    const Box near = box_.grown(kept.usual);
    for (const Plant& plant : drift.plants) {
      kept.at = slope_.onGround(plant.at);
      if (near.contains(kept.at)) neighbours_.push_back(kept);
    }
  }
}

void Ground::addSolid(const Polygon& plan) {
  const Polygon polygon = slope_.onGround(plan);
  if (!boundsOf(polygon).overlaps(box_.grown(half_))) return;
  solids_.push_back(polygon);
  addBorders(polygon, half_);
}

void Ground::addBorders(const Polygon& polygon, double least) {
  addRing(polygon.outer, least);
  for (const Ring& hole : polygon.holes) addRing(hole, least);
}

void Ground::addRing(const Ring& ring, double least) {
  const Box near = box_.grown(least);
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
    if (near.overlaps(boundsOf({ring[j], ring[i]}))) borders_.push_back({ring[j], ring[i], least});
}

}  // namespace tussock
