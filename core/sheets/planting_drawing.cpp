// SPDX-License-Identifier: MIT
#include "core/sheets/planting_drawing.h"

#include <algorithm>
#include <utility>

#include "core/geometry/overlay.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

bool isMain(const DrawnDrift& drawn) {
  return drawn.drift->layer == Layer::Main;
}

// The ground of the main layer's drifts. Outlines are costly to find, so only where something lies
// under them.
class Above {
 public:
  explicit Above(const std::vector<DrawnDrift>& drifts) {
    if (std::all_of(drifts.begin(), drifts.end(), isMain)) return;
    for (const DrawnDrift& drawn : drifts)
      if (isMain(drawn))
        for (Polygon& part : outlineOf(*drawn.drift)) {
          const Box box = boundsOf(part);
          stands_.push_back({std::move(part), box});
        }
  }
  [[nodiscard]] bool covers(Point at) const {
    return std::any_of(stands_.begin(), stands_.end(), [at](const Stand& stand) {
      return stand.box.contains(at) && contains(stand.outline, at);
    });
  }

 private:
  struct Stand {
    Polygon outline;
    Box box;
  };
  std::vector<Stand> stands_;
};

}  // namespace

void addPlanting(Sheet& sheet, const std::vector<DrawnDrift>& drifts,
                 std::optional<Weight> outline) {
  const auto ground = [&](const DrawnDrift& drawn) {
    addDriftGround(sheet, *drawn.drift, drawn.species, outline.value_or(weightFor(drawn.species)));
  };
  const Above above(drifts);
  for (const DrawnDrift& drawn : drifts)
    if (!isMain(drawn)) ground(drawn);
  for (const DrawnDrift& drawn : drifts)
    if (!isMain(drawn))
      for (const Point at : drawn.plants)
        if (!above.covers(at)) addPlant(sheet, *drawn.drift, drawn.species, at);
  for (const DrawnDrift& drawn : drifts)
    if (isMain(drawn)) ground(drawn);
  for (const DrawnDrift& drawn : drifts)
    for (const Point at : drawn.plants)
      if (isMain(drawn))
        addPlant(sheet, *drawn.drift, drawn.species, at);
      else if (above.covers(at))
        addPlant(sheet, *drawn.drift, drawn.species, at, PlantMark::CentreOnly);
}

}  // namespace tussock
