// SPDX-License-Identifier: MIT
// The ground a drift may use near a place: inside its bed by the set-back, clear of what stands or
// lies there, at its distance from other plants. Built for one growth, then only asked. All its
// places are measured along the ground, see Slope; the same as the plan's where the yard is level.
#pragma once

#include <vector>

#include "core/planting/grow.h"
#include "core/planting/slope.h"

namespace tussock {

// Something round that keeps new plants off.
struct Neighbour {
  Point at;
  double usual = 0.0;  // metres between centres where both stand at their spacing
  double least = 0.0;  // metres, never less
};

// A line that keeps new plants off: an edge of the bed, of paving, a wall.
struct Border {
  Point from;
  Point to;
  double least = 0.0;  // metres
};

class Ground {
 public:
  // `reach` in metres around the drop: what lies further away is not looked at.
  // The request is in the plan's coordinates.
  Ground(const Yard& yard, const GrowRequest& request, double reach);

  // Inside the bed and far enough from every border; other plants are not asked.
  [[nodiscard]] bool holds(Point p) const { return isClear(p, 0.0); }
  // Whether a plant's own half spacing of ground may lie there, where its centre may not yet.
  [[nodiscard]] bool isOpen(Point p) const { return isClear(p, half_); }
  // Pushed off the borders as far as `holds` asks, if that can be done.
  [[nodiscard]] Point inside(Point p) const;
  [[nodiscard]] const std::vector<Neighbour>& neighbours() const { return neighbours_; }
  [[nodiscard]] const std::vector<Border>& borders() const { return borders_; }
  [[nodiscard]] const Box& box() const { return box_; }  // where plants may stand at all
  [[nodiscard]] bool empty() const { return bed_.empty() || box_.empty(); }
  [[nodiscard]] const Slope& slope() const { return slope_; }

 private:
  [[nodiscard]] bool isClear(Point p, double nearer) const;  // metres nearer to borders
  void addBarriers(const Yard& yard);
  void addRound(const Yard& yard);
  void addPlants(const Yard& yard, const GrowRequest& request);
  void addSolid(const Polygon& plan);
  void addBorders(const Polygon& polygon, double least);
  void addRing(const Ring& ring, double least);

  Slope slope_;
  Polygon bed_;
  double half_ = 0.0;  // metres, half the spacing
  Box box_;
  std::vector<Polygon> solids_;
  std::vector<Border> borders_;
  std::vector<Neighbour> neighbours_;
};

// The request as measured along the ground.
[[nodiscard]] GrowRequest onGround(GrowRequest request, const Slope& slope);

// Metres around the drop that a drift of this many plants may come to use: even in a narrow bed,
// where it stands in one line.
[[nodiscard]] double reachOf(const GrowRequest& request);

// The set-back that holds for plants of a spacing: the bed's own, or half the spacing if more.
[[nodiscard]] Length setBackFor(const Bed& bed, Length spacing);

}  // namespace tussock
