// SPDX-License-Identifier: MIT
#include "core/planting/reshape_drift.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/catalog/bloom.h"
#include "core/planting/drift_plants.h"
#include "core/planting/measures.h"
#include "core/planting/set_out.h"
#include "core/planting/slope.h"

namespace tussock {

namespace {

// By what is most striking of the change.
std::string labelFor(const DriftShape& before, const DriftShape& after, int count) {
  if (before.pattern != after.pattern)
    return after.pattern == Pattern::Single
               ? "Plant as single accents"
               : fmt::format("Plant in {} pattern", wordOf(after.pattern));
  if (before.spacing != after.spacing) return fmt::format("Space {} plants anew", count);
  if (before.stretch != after.stretch) return "Stretch drift";
  return "Turn drift's axis";
}

}  // namespace

DriftShape shapeOf(const Drift& drift) {
  return {drift.pattern, drift.spacing, static_cast<int>(drift.plants.size()), drift.axis,
          drift.stretch};
}

std::optional<double> standingStretch(const Settings& settings, const Drift& drift) {
  if (drift.pattern == Pattern::Matrix) return std::nullopt;
  const Slope slope(settings);
  Drift laid = drift;
  for (Plant& plant : laid.plants) plant.at = slope.onGround(plant.at);
  const auto rectangle = rectangleOf(laid);
  if (!rectangle || rectangle->width <= 0.0) return std::nullopt;
  return rectangle->length / rectangle->width;
}

std::optional<double> stretchIfOther(const Settings& settings, const Drift& drift) {
  constexpr double kOther = 1.25;
  const auto stands = standingStretch(settings, drift);
  if (!stands || drift.stretch <= 0.0) return std::nullopt;
  const double ratio = *stands / drift.stretch;
  return std::max(ratio, 1.0 / ratio) > kOther ? stands : std::nullopt;
}

DriftEdit reshapeDrift(const Yard& yard, Id<Drift> id, const DriftShape& wanted, IdSource& ids) {
  const Drift* found = yard.drifts.find(id);
  DriftEdit nothing{{}, id, wanted.count, 0};
  if (found == nullptr || found->locked || found->existing()) return nothing;
  DriftShape shape = wanted;
  shape.stretch = std::clamp(shape.stretch, 1.0, 10.0);
  const DriftShape before = shapeOf(*found);
  if (shape == before) return nothing;
  DriftShape counted = before;
  counted.count = shape.count;
  if (counted == shape) return resizeDrift(yard, id, shape.count, ids, CountAs::Asked);
  Drift drift = *found;
  drift.pattern = shape.pattern;
  drift.spacing = shape.spacing;
  drift.axis = shape.axis;
  drift.stretch = shape.stretch;
  const GrowRequest request = requestFor(drift, shape.count, CountAs::Asked);
  const bool drawn = shape.axis != before.axis || shape.stretch != before.stretch;
  const Growth growth = drawn ? growDrift(yard, request) : setOut(yard, *found, request);
  if (growth.places.empty()) return nothing;
  drift.plants = withIds(found->plants, growth.places, ids);
  const int fitted = static_cast<int>(drift.plants.size());
  Draft draft(yard);
  draft.put(std::move(drift));
  return {draft.finish(labelFor(before, shape, fitted)), id, growth.asked, fitted};
}

Area areaFor(Pattern pattern, Length spacing, int count) {
  return groundPerPlant(pattern, spacing) * static_cast<double>(std::max(0, count));
}

int countFor(Pattern pattern, Length spacing, Area area) {
  if (spacing <= Length()) return 1;
  const double held = area / groundPerPlant(pattern, spacing);
  if (!(held < kAsManyAsFit)) return kAsManyAsFit;
  return std::max(1, 2 * static_cast<int>(std::lround((held - 1.0) / 2.0)) + 1);
}

Length spacingFor(Pattern pattern, int count, Area area) {
  if (count < 1 || area <= Area()) return {};
  const Area each = area * (1.0 / static_cast<double>(count));
  return Length::metres(std::sqrt(each / groundPerPlant(pattern, Length::metres(1.0))));
}

DriftShape withSpacing(DriftShape shape, Length spacing) {
  const Area ground = areaFor(shape.pattern, shape.spacing, shape.count);
  shape.spacing = spacing;
  return onGround(shape, ground);
}

DriftShape withCount(DriftShape shape, int count) {
  const Area ground = areaFor(shape.pattern, shape.spacing, shape.count);
  const int asked = countTaken(count, CountAs::Asked);
  if (asked == shape.count) return shape;
  shape.count = asked;
  shape.spacing = spacingFor(shape.pattern, asked, ground);
  return shape;
}

DriftShape onGround(DriftShape shape, Area ground) {
  const Area own = areaFor(shape.pattern, shape.spacing, shape.count);
  const Area each = groundPerPlant(shape.pattern, shape.spacing);
  const bool same = std::abs((ground - own).squareMetres()) < 0.5 * each.squareMetres();
  if (!same) shape.count = countFor(shape.pattern, shape.spacing, ground);
  return shape;
}

}  // namespace tussock
