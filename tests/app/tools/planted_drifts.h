// SPDX-License-Identifier: MIT
// The window on a bed with two drifts of which the tests take hold.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "app/tools/handles.h"
#include "core/geometry/overlay.h"
#include "core/planting/edit_drift.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {

class PlantedDrifts : public WindowTest {
 protected:
  // A bed with a drift of 13 in its middle and a row of three near its western end.
  void startPlanted() {
    YardBuilder builder;
    builder.units(UnitSystem::Metres);
    builder.bed("Front", "POLYGON((0 0,8 0,8 5,0 5,0 0))").viewing("S");
    builder.drift("Carex pensylvanica", row(3, 0.4, {0.6, 0.8}));
    small = builder.lastDrift();
    GrowRequest request;
    request.bed = builder.lastBed();
    request.spacing = Length::metres(0.4);
    request.count = 13;
    request.at = {4, 2.5};
    request.axis = Angle();
    builder.drift("Echinacea purpurea", growDrift(builder.build(), request).places);
    drift = builder.lastDrift();
    start(builder.build());
    lookAt({4, 2.5});
  }
  [[nodiscard]] Drift drifted() const { return *inFile().drifts.find(drift); }
  [[nodiscard]] double proportions() const {
    const auto box = smallestRectangle(positionsOf(drifted()), drifted().spacing / 2.0);
    return box.length / box.width;
  }
  [[nodiscard]] Point onDrift() const { return drifted().plants.front().at; }
  [[nodiscard]] std::set<Id<Plant>> plantIds() const {
    std::set<Id<Plant>> ids;
    for (const Plant& plant : drifted().plants) ids.insert(plant.id);
    return ids;
  }
  // In metres of the plan.
  [[nodiscard]] std::optional<Point> handle(Handles::Kind kind, double side) const {
    for (const auto& each : Handles(canvas()).all())
      if (each.kind == kind && each.side == side) return canvas().mapping().toSite(each.at);
    return std::nullopt;
  }

  Id<Drift> drift, small;
};

}  // namespace tussock::test
