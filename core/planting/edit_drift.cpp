// SPDX-License-Identifier: MIT
#include "core/planting/edit_drift.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/planting/drift_plants.h"
#include "core/planting/set_out.h"

namespace tussock {

namespace {

DriftEdit nothing(Id<Drift> drift, int asked = 0) {
  return {{}, drift, asked, 0};
}

DriftEdit finish(const Yard& yard, Drift drift, std::string label, int asked) {
  const int fitted = static_cast<int>(drift.plants.size());
  const Id<Drift> id = drift.id;
  Draft draft(yard);
  draft.put(std::move(drift));
  return {draft.finish(std::move(label)), id, asked, fitted};
}

std::vector<Polygon> outlineAround(const std::vector<Point>& places, Length spacing,
                                   Pattern pattern) {
  auto outline = wrapAround(places, spacing / 2.0, spacing);
  if (pattern == Pattern::Matrix) return outline;      // it runs around other drifts
  for (Polygon& piece : outline) piece.holes.clear();  // a gap inside a drift is still the drift
  return outline;
}

}  // namespace

DriftEdit plantDrift(const Yard& yard, const Species& species, const GrowRequest& request,
                     IdSource& ids, StockSize size) {
  GrowRequest usual = request;
  usual.spacing = species.spacing;
  usual.layer = species.usualLayer();
  const Growth growth = growDrift(yard, usual);
  if (growth.places.empty()) return nothing({}, growth.asked);
  Drift drift{ids.take<Drift>(),
              usual.bed,
              species.botanicalName,
              usual.layer,
              usual.spacing,
              size,
              usual.pattern,
              false,
              growth.axis,
              usual.stretch,
              {},
              {}};
  for (const Point place : growth.places) drift.plants.push_back({ids.take<Plant>(), place});
  const Id<Drift> id = drift.id;
  const int fitted = static_cast<int>(drift.plants.size());
  Draft draft(yard);
  takeCode(draft, species.botanicalName, ids);
  draft.put(std::move(drift));
  return {draft.finish(fmt::format("Plant {} {}", fitted, species.commonName)), id, growth.asked,
          fitted};
}

DriftEdit moveDrift(const Yard& yard, Id<Drift> id, Point step) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked || !isFinite(step)) return nothing(id);
  Drift drift = *found;
  for (Plant& plant : drift.plants) plant.at += step;
  const Bed* under = bedAt(yard, middleOf(drift));
  if (under != nullptr) drift.bed = under->id;
  const int count = static_cast<int>(drift.plants.size());
  return finish(yard, std::move(drift), "Move drift", count);
}

DriftEdit resizeDrift(const Yard& yard, Id<Drift> id, int count, IdSource& ids, CountAs as) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked) return nothing(id, count);
  const int asked = countTaken(count, as);
  const int now = static_cast<int>(found->plants.size());
  Drift drift = *found;
  drift.plants = asked < now ? fewerPlants(drift, asked) : morePlants(yard, drift, asked, ids);
  const int after = static_cast<int>(drift.plants.size());
  return finish(yard, std::move(drift),
                fmt::format("{} drift to {}", after < now ? "Shrink" : "Grow", after), asked);
}

DriftEdit turnDrift(const Yard& yard, Id<Drift> id, Angle turn) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked) return nothing(id);
  Drift drift = *found;
  const Point middle = middleOf(drift);
  for (Plant& plant : drift.plants) plant.at = rotated(plant.at, turn, middle);
  drift.axis = drift.axis + turn;
  const int count = static_cast<int>(drift.plants.size());
  return finish(yard, std::move(drift), "Turn drift", count);
}

DriftEdit regrowDrift(const Yard& yard, Id<Drift> id, IdSource& ids) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked) return nothing(id);
  const int count = static_cast<int>(found->plants.size());
  const Growth growth = setOut(yard, *found, requestFor(*found, count, CountAs::Asked));
  if (growth.places.empty()) return nothing(id, growth.asked);
  Drift drift = *found;
  drift.plants = withIds(found->plants, growth.places, ids);
  return finish(yard, std::move(drift), "Set drift out anew", growth.asked);
}

DriftEdit movePlants(const Yard& yard, Id<Drift> id, const std::vector<Id<Plant>>& plants,
                     Point step) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked || !isFinite(step)) return nothing(id);
  Drift drift = *found;
  int moved = 0;
  for (Plant& plant : drift.plants)
    if (std::find(plants.begin(), plants.end(), plant.id) != plants.end())
      plant.at += step, ++moved;
  if (moved == 0) return nothing(id);
  const int count = static_cast<int>(drift.plants.size());
  return finish(yard, std::move(drift),
                moved == 1 ? "Move 1 plant" : fmt::format("Move {} plants", moved), count);
}

DriftEdit lockDrift(const Yard& yard, Id<Drift> id, DriftLock lock) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr) return nothing(id);
  Drift drift = *found;
  drift.locked = lock == DriftLock::Locked;
  const int count = static_cast<int>(drift.plants.size());
  const char* label = drift.locked ? "Lock drift" : "Unlock drift";
  return finish(yard, std::move(drift), label, count);
}

DriftEdit nudgePlant(const Yard& yard, Id<Drift> id, Id<Plant> plant, Point to) {
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked || !isFinite(to)) return nothing(id);
  Drift drift = *found;
  for (Plant& each : drift.plants)
    if (each.id == plant) each.at = to;
  const int count = static_cast<int>(drift.plants.size());
  return finish(yard, std::move(drift), "Nudge plant", count);
}

Point middleOf(const Drift& drift) {
  Point sum;
  for (const Plant& plant : drift.plants) sum += plant.at;
  return drift.plants.empty() ? sum : sum * (1.0 / static_cast<double>(drift.plants.size()));
}

std::vector<Polygon> outlineOf(const Drift& drift) {
  return outlineAround(positionsOf(drift), drift.spacing, drift.pattern);
}

std::vector<Polygon> outlineOf(const KeptDrift& drift) {
  return outlineAround(drift.places, drift.spacing, drift.pattern);
}

}  // namespace tussock
