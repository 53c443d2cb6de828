// SPDX-License-Identifier: MIT
#include "core/catalog/bed_request.h"

#include "core/catalog/place.h"
#include "core/catalog/season_weeks.h"

namespace tussock {

namespace {

RankRequest requestOf(const Yard& yard, Place place) {
  RankRequest request;
  request.place = std::move(place);
  request.profile = sunProfile(yard.settings.sunProfile);
  request.season = seasonWeeks(yard.settings);
  return request;
}

}  // namespace

RankRequest requestFor(const Yard& yard, const Catalogue& catalogue, const Bed& bed,
                       std::optional<double> sunHours) {
  RankRequest request = requestOf(yard, placeOf(yard, bed, sunHours));
  request.planted = portionsOf(yard, catalogue, bed.id);
  return request;
}

RankRequest requestFor(const Yard& yard, const Catalogue& catalogue) {
  RankRequest request = requestOf(yard, placeOf(yard));
  request.planted = portionsOf(yard, catalogue);
  return request;
}

RankRequest requestAt(const Yard& yard, const Catalogue& catalogue, Point at,
                      std::optional<double> sunHours) {
  RankRequest request = requestOf(yard, placeAt(yard, at, sunHours));
  for (const Bed& bed : yard.beds)
    if (contains(bed.outline, at)) request.planted = portionsOf(yard, catalogue, bed.id);
  return request;
}

}  // namespace tussock
