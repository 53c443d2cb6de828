// SPDX-License-Identifier: MIT
// What people beside a bed see of its plants. Eyes are at standing height, a step outside the edge;
// a plant in front hides what lies under the line from the eyes over its top. Plants are taken at
// their design height, the middle of the range in flower, and half their spread to each side.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/species.h"
#include "core/model/bed.h"

namespace tussock {

// The usual limits, all common practice but the eyes: standing adults, 1.5 to 1.7 m (Pheasant and
// Haslegrave, Bodyspace). A yard may set its own, see checks/thresholds.h.
struct SightLimits {
  double eyeHeight = 1.6;  // metres
  double viewingDistance = 1.5;
  double tallerBy = 0.1;
  double hidesWithin = 3.0;
  double seeThrough = 0.5;  // share
};

// Grasses, plumes and spires: one looks between their stems.
[[nodiscard]] bool isSeeThrough(const Species& species);

// From one plant towards the people who look at it.
struct Sight {
  Point towards;        // unit vector
  double toEdge = 0.0;  // metres to the edge of the bed
  double toEyes = 0.0;  // metres to the eyes
};

// A side from which a bed is looked at, or its nearest edge when it is seen all round.
class Viewpoint {
 public:
  Viewpoint(const Bed& bed, std::optional<Angle> side) : bed_(bed), side_(side) {}

  // Nothing where a plant is not looked at from this side, lying nearer to one across the bed: a
  // bed seen from opposite sides rises towards its middle, and what lies beyond is seen from there.
  [[nodiscard]] std::optional<Sight> sightOf(Point plant, const SightLimits& limits) const;
  [[nodiscard]] std::string name() const;  // as parseViewing reads it

 private:
  [[nodiscard]] bool nearerAcross(Point plant, Point towards, double toEdge) const;
  const Bed& bed_;
  std::optional<Angle> side_;
};
[[nodiscard]] std::vector<Viewpoint> viewpointsOf(const Bed& bed);

// A plant as it is seen.
struct SightOutline {
  double height = 0.0;      // metres
  double halfSpread = 0.0;  // metres
  bool seeThrough = false;
};
// The share of the rear plant's height that the front one hides, 0 to 1; 0 unless it is taller.
// `step` leads from the rear plant to the front one.
[[nodiscard]] double hiddenShare(const SightOutline& rear, const SightOutline& front, Point step,
                                 const Sight& sight, const SightLimits& limits);

}  // namespace tussock
