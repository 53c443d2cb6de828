// SPDX-License-Identifier: MIT
#include "core/catalog/place.h"

#include <algorithm>

#include "core/geometry/overlay.h"

namespace tussock {

namespace {

// Over the ground here: the law's datum lies that much above it.
Length limitOf(const HeightLimit& limit) {
  return limit.height + limit.datumOffset;
}

void lower(Place& place, const HeightLimit& limit) {
  const Length height = limitOf(limit);
  place.heightLimit = place.heightLimit ? std::min(*place.heightLimit, height) : height;
}

void takeBed(Place& place, const Bed& bed) {
  place.moisture = bed.moisture;
  place.soil = bed.texture;
}

}  // namespace

Place placeOf(const Yard& yard) {
  Place place;
  place.state = yard.settings.state;
  place.hardinessZone = yard.settings.hardinessZone;
  place.deer = yard.settings.deerAbout;
  place.units = yard.settings.units;
  return place;
}

Place placeOf(const Yard& yard, const Bed& bed, std::optional<double> sunHours) {
  Place place = placeOf(yard);
  place.sunHours = sunHours;
  takeBed(place, bed);
  for (const HeightLimit& limit : yard.heightLimits)
    if (intersects(limit.outline, bed.outline)) lower(place, limit);
  return place;
}

Place placeAt(const Yard& yard, Point at, std::optional<double> sunHours) {
  Place place = placeOf(yard);
  place.sunHours = sunHours;
  for (const Bed& bed : yard.beds)
    if (contains(bed.outline, at)) takeBed(place, bed);
  for (const Patch& patch : yard.patches)
    if (contains(patch.outline, at)) place.moisture = patch.moisture;
  for (const HeightLimit& limit : yard.heightLimits)
    if (contains(limit.outline, at)) lower(place, limit);
  return place;
}

}  // namespace tussock
