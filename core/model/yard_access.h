// SPDX-License-Identifier: MIT
// Templates of yard.h.
#pragma once

#include <type_traits>

#include "core/model/yard.h"

namespace tussock {

namespace detail {
template <class T, class Y>
auto& collectionIn(Y& yard) {
  if constexpr (std::is_same_v<T, LotLine>)
    return yard.lotLines;
  else if constexpr (std::is_same_v<T, Building>)
    return yard.buildings;
  else if constexpr (std::is_same_v<T, Barrier>)
    return yard.barriers;
  else if constexpr (std::is_same_v<T, Tree>)
    return yard.trees;
  else if constexpr (std::is_same_v<T, Paving>)
    return yard.pavings;
  else if constexpr (std::is_same_v<T, SteppingPlace>)
    return yard.steppingPlaces;
  else if constexpr (std::is_same_v<T, WaterPoint>)
    return yard.waterPoints;
  else if constexpr (std::is_same_v<T, HeightLimit>)
    return yard.heightLimits;
  else if constexpr (std::is_same_v<T, BuriedLine>)
    return yard.buriedLines;
  else if constexpr (std::is_same_v<T, Bed>)
    return yard.beds;
  else if constexpr (std::is_same_v<T, Patch>)
    return yard.patches;
  else if constexpr (std::is_same_v<T, Drift>)
    return yard.drifts;
  else if constexpr (std::is_same_v<T, PlanCode>)
    return yard.planCodes;
  else if constexpr (std::is_same_v<T, Photo>)
    return yard.photos;
  else if constexpr (std::is_same_v<T, Acceptance>)
    return yard.acceptances;
  else if constexpr (std::is_same_v<T, ForeignFeature>)
    return yard.foreignFeatures;
  else if constexpr (std::is_same_v<T, SunReading>)
    return yard.sunReadings;
  else if constexpr (std::is_same_v<T, OwnSpecies>)
    return yard.ownSpecies;
  else
    return yard.arrangements;
}
}  // namespace detail

template <class T>
const Collection<T>& collectionOf(const Yard& yard) {
  return detail::collectionIn<T>(yard);
}
template <class T>
Collection<T>& collectionOf(Yard& yard) {
  return detail::collectionIn<T>(yard);
}

template <class F>
void forEachObject(const Yard& yard, F&& f) {
  f(yard.settings);
  auto each = [&](const auto& collection) {
    for (const auto& object : collection) f(object);
  };
  each(yard.lotLines), each(yard.buildings), each(yard.barriers), each(yard.trees);
  each(yard.pavings), each(yard.steppingPlaces), each(yard.waterPoints);
  each(yard.heightLimits), each(yard.buriedLines), each(yard.beds), each(yard.patches);
  each(yard.drifts), each(yard.planCodes), each(yard.photos), each(yard.acceptances);
  each(yard.foreignFeatures), each(yard.sunReadings), each(yard.ownSpecies);
  each(yard.arrangements);
}

}  // namespace tussock
