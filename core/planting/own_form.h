// SPDX-License-Identifier: MIT
// The ground that a drift has by the plants it stands with, whatever it was once grown as: a band
// painted along a line, what a full bed left it, two drifts made one.
#pragma once

#include <vector>

#include "core/planting/disc_grid.h"
#include "core/planting/grow.h"

namespace tussock {

class OwnForm {
 public:
  // At least one place; places and spacing are measured along the ground, see Slope.
  OwnForm(const std::vector<Point>& stood, Length spacing);

  [[nodiscard]] const std::vector<Point>& places() const { return places_; }
  [[nodiscard]] double spacing() const { return spacing_; }  // metres
  // Metres to the nearest of the places and of the lines between those that touch: equal all along
  // a line around the form.
  [[nodiscard]] double distanceTo(Point p) const;
  // Whether one of the places is as near as that.
  [[nodiscard]] bool isWithin(Point p, double metres) const;
  // Of the places the one nearest the middle of them all: in the form, where its middle may not be.
  [[nodiscard]] Point heart() const;
  // Whether plants at these places stand on this ground: nine in ten of them within a spacing of an
  // old place, and nine in ten of the old places within their spacing of one of them.
  [[nodiscard]] bool isKeptBy(const std::vector<Point>& places, Length spacing) const;
  // `share` of the places: without those nearest its two ends, going from plant to plant.
  [[nodiscard]] OwnForm shortened(double share) const;

 private:
  std::vector<Point> places_;
  double spacing_;
  DiscGrid grid_;
  std::vector<std::vector<std::size_t>> touching_;  // for each place those after it
};

}  // namespace tussock
