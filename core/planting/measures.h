// SPDX-License-Identifier: MIT
// Measures of a planted bed: what the tests, the benchmark, the docs and the score mean by length
// and width, touching, rows, ground taken.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/overlay.h"
#include "core/model/yard.h"
#include "core/planting/fill_ground.h"

namespace tussock {

// Sides of the smallest rectangle around the plants' discs of radius s/2. Nothing under 5 plants.
[[nodiscard]] std::optional<OrientedRectangle> rectangleOf(const Drift& drift);

// How the directions between near plants are spread: pairs nearer than 2.5 times the mean of their
// spacings, folded to 180 degrees in 18 bins, largest over mean.
struct Rows {
  double rowiness = 0.0;  // 1 without rows; some 4 in a strict lattice
  int pairs = 0;
};
[[nodiscard]] Rows rowsOf(const std::vector<Point>& points, const std::vector<double>& spacings);

// How near plants stand, over the mean of the two spacings: 1 with fewer than two plants.
struct Distances {
  double least = 1.0;
  double meanNearest = 1.0;  // mean over plants of that to the nearest
};
[[nodiscard]] Distances distancesOf(const std::vector<Point>& points,
                                    const std::vector<double>& spacings);
[[nodiscard]] Distances distancesOf(const std::vector<KeptDrift>& drifts);

struct Stand {
  Point at;
  double spacing = 0.0;  // metres
};
// Of the cells of the ground those within one spacing of a plant, as a share; 1 without cells.
[[nodiscard]] double coveredShare(const FillGround& ground, const std::vector<Stand>& stands);

struct BedMeasures {
  int drifts = 0, plants = 0;
  int evenDrifts = 0;            // of the main layer, to be planted
  int brokenDrifts = 0;          // in more than one piece
  double groundTaken = 0.0;      // by n s² √3/2, over the bed's area
  double freeGroundTaken = 0.0;  // over what paving, trunks and stepping places leave of it
  double leastDistance = 1.0;    // over the mean of the two spacings; 1 with fewer than two plants
  double meanNearest = 1.0;      // mean over plants of that to the nearest
  double covered = 0.0;          // share of the free ground within one spacing of a plant
  std::vector<double> elongations;  // length over width, of drifts of 5 and more
  double touchTwo = 0.0;            // share of drifts that touch two others and more
  int besideOwn = 0;                // pairs of drifts of one species that touch
  double meanSpacing = 0.0;         // metres, over the plants
  Rows rows;
};
// Of the main layer. The free ground is the bed less paving, buildings, walls, trunks and stepping
// places.
[[nodiscard]] BedMeasures measure(const Yard& yard, Id<Bed> bed);

}  // namespace tussock
