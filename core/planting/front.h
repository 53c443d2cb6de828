// SPDX-License-Identifier: MIT
// A drift growing plant by plant: each new one nestles against two that stand there, or against one
// and an edge, wherever that is nearest the middle in the drift's stretched distance. In the open
// this is a triangular lattice along the drift's axis; along neighbours and edges it closes up.
#pragma once

#include <queue>
#include <vector>

#include "core/planting/contacts.h"
#include "core/planting/corridor.h"
#include "core/planting/disc_grid.h"
#include "core/planting/ground.h"
#include "core/planting/own_form.h"

namespace tussock {

// The long, tapering figure that a drift fills from its middle outwards.
struct DriftFigure {
  Point middle;
  Angle axis;
  double stretch = 3.0;
  const Corridor* corridor = nullptr;  // the drift follows a line instead, from its beginning on
  const OwnForm* form = nullptr;       // or keeps the ground that it has

  // Grows from 0 at the middle; equal on the outline of one size of the figure. Metres.
  [[nodiscard]] double distanceTo(Point p) const;
};
// About the request's drop, along its axis.
[[nodiscard]] DriftFigure figureAsked(const GrowRequest& request);

inline constexpr std::size_t kUsualDrift = 60;  // plants; more is a whole bed of one species
[[nodiscard]] constexpr bool isUsual(int count) {
  return count <= static_cast<int>(kUsualDrift);
}

// Distances of a growing drift, as shares of the spacing. A pattern without rows has its nearest
// plants at some 0.92 of the spacing when its density is the triangular one, so less than 1 is
// asked. The figures were found by filling beds and counting; see docs/methods-planting.md.
struct Packing {
  double usual = 0.95;     // of a new plant from those of the drift that it nestles against
  double beside = 0.92;    // and from other drifts' plants
  double least = 0.86;     // from any other: above kLooseSpacing, which leaves room to relax
  bool lengthens = false;  // by single plants at its ends, touching only one other
};
// Seams lose some ground; drifts of a usual size stand a little closer to make up for it.
[[nodiscard]] Packing packingFor(int count);

// How far plant `index` keeps from others, over its spacing: a little uneven, so that the pattern
// never falls into rows. Between 0.93 and 1.07.
[[nodiscard]] double unevenness(std::size_t index);

class Front {
 public:
  Front(const Ground& ground, Length spacing, DriftFigure figure, Packing packing = {});

  // Free for a new plant.
  [[nodiscard]] bool fits(Point p) const;
  // Takes a place, whether it fits or not (the plants of a drift that is being enlarged).
  void take(Point p);
  // Takes a free place and offers those all around it, as for the first of a drift.
  void begin(Point p);
  // Until `count` places are taken or no more fit.
  void growTo(int count);
  [[nodiscard]] const std::vector<Point>& places() const { return places_; }
  // Where a plant would touch two neighbours or edges within `metres` of p, nearest first.
  [[nodiscard]] std::vector<Point> pockets(Point p, double metres) const;

 private:
  struct Candidate {
    double cost;
    std::size_t order;
    Point at;
    bool operator>(const Candidate& other) const {
      return cost != other.cost ? cost > other.cost : order > other.order;
    }
  };
  [[nodiscard]] Circle circleOf(std::size_t item) const;
  void offer(Point p, double later = 0.0);  // `later` metres after its turn
  void offerBeside(const Circle& circle);
  void offerAround(const Circle& circle);
  void offerAlong(const Circle& circle);

  const Ground& ground_;
  double spacing_;
  DriftFigure figure_;
  Packing packing_;
  double widest_ = 0.0;  // metres, the largest distance anything keeps
  DiscGrid grid_;        // the neighbours, then the places
  std::vector<Point> places_;
  std::priority_queue<Candidate, std::vector<Candidate>, std::greater<>> candidates_;
  std::size_t offered_ = 0;
};

}  // namespace tussock
