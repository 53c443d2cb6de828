// SPDX-License-Identifier: MIT
// The map that is shared, and when it is still the same.
#include <cmath>

#include "core/sun/horizon.h"
#include "core/sun/map.h"
#include "core/sun/sun_work.h"

namespace tussock {

namespace {

constexpr double kMargin = 1.0;        // metres around the beds
constexpr double kBedMargin = 0.5;     // around beds that are mapped alone
constexpr double kMostCells = 4e5;     // beyond this, cells are doubled
constexpr double kCoarsestSite = 0.5;  // metres: beyond this, only the beds are asked for

// Out to whole metres, so that a small change to a bed leaves the map as it is.
Box inWholeMetres(const Box& box) {
  if (box.empty()) return box;
  return {{std::floor(box.low.x), std::floor(box.low.y)},
          {std::ceil(box.high.x), std::ceil(box.high.y)}};
}

Box aroundBeds(const Yard& yard) {
  Box beds;
  for (const Bed& bed : yard.beds) beds.include(boundsOf(bed.outline));
  return beds.grown(kMargin);
}

Box siteOf(const Yard& yard) {
  Box area = siteBox(yard);
  area.include(aroundBeds(yard));
  return inWholeMetres(area);
}

void fitCell(SunMapRequest& request) {
  request.cell = SunMapRequest().cell;
  while (cellsAsked(request) > kMostCells) request.cell = request.cell * 2.0;
}

void askForBedsOnly(const Yard& yard, SunMapRequest& request) {
  request.area = inWholeMetres(aroundBeds(yard));
  for (const Bed& bed : yard.beds) {
    const Box box = inWholeMetres(boundsOf(bed.outline).grown(kMargin));
    if (!box.empty()) request.only.push_back(rectangle(box.low, box.high));
  }
}

bool sameShade(const Building& a, const Building& b) {
  return a.footprint == b.footprint && a.roof == b.roof && a.eave == b.eave && a.ridge == b.ridge &&
         a.ridgeAzimuth == b.ridgeAzimuth && a.base == b.base && a.overhang == b.overhang;
}

bool sameShade(const Barrier& a, const Barrier& b) {
  return a.line == b.line && a.thickness == b.thickness && a.footprint == b.footprint &&
         a.height == b.height && a.openness == b.openness;
}

bool sameShade(const Tree& a, const Tree& b) {
  return a.at == b.at && a.height == b.height && a.crownRadius == b.crownRadius &&
         a.crownBase == b.crownBase && a.trunkDiameter == b.trunkDiameter && a.crown == b.crown &&
         a.opennessLeaf == b.opennessLeaf && a.opennessBare == b.opennessBare &&
         a.leafOn == b.leafOn && a.leafOff == b.leafOff && a.evergreen == b.evergreen;
}

template <class T>
bool sameShade(const Collection<T>& a, const Collection<T>& b) {
  return a.shares(b) ||
         std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const T& x, const T& y) { return &x == &y || sameShade(x, y); });
}

bool samePlaceAndSeason(const Settings& a, const Settings& b) {
  const GrowingSeason season = growingSeason(a);
  const GrowingSeason other = growingSeason(b);
  return a.latitude == b.latitude && a.longitude == b.longitude && season.first == other.first &&
         season.last == other.last && Horizon(a) == Horizon(b);
}

}  // namespace

SunMapRequest seasonRequest(const Yard& yard) {
  SunMapRequest request;
  request.area = siteOf(yard);
  request.detail = SunDetail::Months;
  fitCell(request);
  if (request.cell.metres() <= kCoarsestSite || yard.beds.empty()) return request;
  askForBedsOnly(yard, request);
  fitCell(request);
  return request;
}

SunMapRequest onlyBeds(const Yard& yard, SunMapRequest request) {
  request.area = {};
  request.only.clear();
  for (const Bed& bed : yard.beds) {
    request.area.include(boundsOf(bed.outline));
    request.only.push_back(bed.outline);
  }
  if (!request.area.empty()) request.area = request.area.grown(kBedMargin);
  return request;
}

std::vector<UnmappedBed> unmappedBeds(const Yard& yard, const SunMap& map) {
  const Box& area = map.area();
  std::vector<UnmappedBed> beds;
  for (const Bed& bed : yard.beds) {
    if (map.meanHours(bed.outline)) continue;
    const Box box = boundsOf(bed.outline);
    const bool meets = box.high.x >= area.low.x && box.low.x <= area.high.x &&
                       box.high.y >= area.low.y && box.low.y <= area.high.y;
    beds.push_back({&bed, !meets});
  }
  return beds;
}

bool sameSun(const Yard& a, const Yard& b) {
  return samePlaceAndSeason(a.settings, b.settings) && sameShade(a.buildings, b.buildings) &&
         sameShade(a.barriers, b.barriers) && sameShade(a.trees, b.trees) &&
         seasonRequest(a) == seasonRequest(b);
}

}  // namespace tussock
