// SPDX-License-Identifier: MIT
// Growing one drift: where its plants go.
#pragma once

#include <optional>
#include <vector>

#include "core/edit/change.h"
#include "core/model/yard.h"
#include "core/planting/plant_count.h"

namespace tussock {

inline constexpr double kLooseSpacing = 0.85;  // of the mean spacing, the loose staggered way
inline constexpr Length kBetweenLayers = Length::centimetres(12);  // a trowel's width
inline constexpr double kTouch = 1.3;  // of the mean spacing: nearer drifts touch

struct GrowRequest {
  Id<Bed> bed;
  Layer layer = Layer::Main;
  Pattern pattern = Pattern::Staggered;
  Length spacing;
  int count = 7;  // 1 at least
  CountAs countAs = CountAs::Odd;
  Point at;                            // where the drift is dropped
  std::optional<Angle> axis;           // anticlockwise from east; from the viewing side when absent
  double stretch = 3.0;                // length over width asked for
  std::optional<Id<Drift>> inPlaceOf;  // this drift's own plants are no obstacle
};

struct Growth {
  std::vector<Point> places;  // as keepCount leaves them; in one piece, except singles and a matrix
  int asked = 0;              // the count as taken
  Angle axis;
};

// Obeys the placement rules always: inside by the set-back, clear of paving, trunks, buildings,
// stepping places and other plants, in one piece, odd unless asked. Empty when nothing is free
// within eight spacings of the drop. The same drop gives the same drift. With a count larger than
// the bed takes, the bed is filled as far as it hangs together. Strict patterns keep a whole
// spacing within the drift; single plants stand apart; a matrix takes all that is free in the bed,
// up to the count.
[[nodiscard]] Growth growDrift(const Yard& yard, const GrowRequest& request);

// The bed under a point, if any; of overlapping ones the smallest.
[[nodiscard]] const Bed* bedAt(const Yard& yard, Point p);
// Axis for a bed that people look at from its viewing side: 30 degrees to that side.
// Strict patterns lie along that side.
[[nodiscard]] Angle usualAxis(const Bed& bed, Pattern pattern = Pattern::Staggered);

inline constexpr int kAsManyAsFit = 99'999;

}  // namespace tussock
