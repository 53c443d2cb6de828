// SPDX-License-Identifier: MIT
#include "core/planting/stroke.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/geometry/overlay.h"
#include "core/planting/corridor.h"
#include "core/planting/front.h"
#include "core/planting/one_piece.h"
#include "core/planting/plant_count.h"
#include "core/planting/relax.h"

namespace tussock {

namespace {

const Bed* bedUnder(const Yard& yard, const Polyline& line) {
  for (const Point p : line)
    if (const Bed* bed = bedAt(yard, p)) return bed;
  return nullptr;
}

double lengthOf(const Polyline& line) {
  double sum = 0.0;
  for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
  return sum;
}

// Begins at the first free place of the line and works along it.
std::vector<Point> placesAlong(const Ground& ground, const Corridor& corridor, Length spacing) {
  DriftFigure figure;
  figure.corridor = &corridor;
  Front front(ground, spacing, figure, packingFor(static_cast<int>(kUsualDrift)));
  const double step = spacing.metres() / 6.0;
  for (double along = 0.0; along <= corridor.length() + step; along += step) {
    const Point p = corridor.at(along);
    if (!front.fits(p)) continue;
    front.begin(p);
    break;
  }
  front.growTo(kAsManyAsFit);
  std::vector<Point> places = front.places();
  if (!places.empty() && places.size() % 2 == 0) places.pop_back();
  return places;
}

std::vector<Point> evened(const Ground& ground, const Corridor& corridor, Length spacing,
                          std::vector<Point> places) {
  std::vector<Point> even = relaxed(ground, spacing, places);
  constexpr double kStray = 0.25;  // of the spacing, over the side of the line
  const Corridor wider = corridor.widened(kStray * spacing.metres());
  const bool follows =
      std::all_of(even.begin(), even.end(), [&](Point p) { return wider.holds(p); });
  return follows && inOnePiece(even, spacing) ? even : places;
}

struct GrownAlong {
  std::vector<Point> places;  // on the plan
  int asked = 0;
};

// Where plants in the way end the drift before its line ends in the bed: as many as the whole would
// have at the same density.
int askedAlong(const Ground& ground, const Corridor& corridor, const std::vector<Point>& places,
               Length spacing) {
  constexpr double kShort = 2.5;  // spacings, that a drift may end short of its line
  const int fitted = static_cast<int>(places.size());
  double first = corridor.length(), last = 0.0, end = 0.0;
  for (const Point p : places) {
    first = std::min(first, corridor.along(p));
    last = std::max(last, corridor.along(p));
  }
  const double s = spacing.metres();
  for (double along = last; along <= corridor.length() && ground.holds(corridor.at(along));
       along += s / 6.0)
    end = along;
  if (end - last < kShort * s) return fitted;
  return std::max(fitted, oddNear(fitted * (end - first + s) / (last - first + s)));
}

GrownAlong growAlong(const Yard& yard, const Bed& bed, Layer layer, Length spacing,
                     const StrokeRequest& request) {
  GrowRequest around;
  around.bed = bed.id;
  around.layer = layer;
  around.spacing = spacing;
  around.at = request.line.front();
  const double reach = lengthOf(request.line) + (request.width + spacing * 4.0).metres();
  const Ground ground(yard, around, reach * Slope(yard.settings).stretch());
  if (ground.empty()) return {};
  Polyline line;
  for (const Point p : request.line) line.push_back(ground.slope().onGround(p));
  // A narrow drift still zigzags a little, so that no row shows.
  const double half = std::max((request.width - spacing).metres() / 2.0, 0.2 * spacing.metres());
  const Corridor corridor(std::move(line), half);
  std::vector<Point> places = placesAlong(ground, corridor, spacing);
  places = evened(ground, corridor, spacing, std::move(places));
  const int asked = places.empty() ? 0 : askedAlong(ground, corridor, places, spacing);
  for (Point& p : places) p = ground.slope().onPlan(p);
  return {std::move(places), asked};
}

}  // namespace

DriftEdit plantAlong(const Yard& yard, const Species& species, const StrokeRequest& request,
                     IdSource& ids, StockSize size) {
  const Bed* bed = bedUnder(yard, request.line);
  if (bed == nullptr || !std::all_of(request.line.begin(), request.line.end(), isFinite)) return {};
  Drift drift;
  drift.layer = species.usualLayer();
  drift.spacing = species.spacing;
  if (drift.spacing < Length::centimetres(1)) return {};
  const auto [places, asked] = growAlong(yard, *bed, drift.layer, drift.spacing, request);
  if (places.empty()) return {};
  drift.id = ids.take<Drift>();
  drift.bed = bed->id;
  drift.species = species.botanicalName;
  drift.size = size;
  const OrientedRectangle box = smallestRectangle(places, drift.spacing / 2.0);
  drift.axis = places.size() < 2 ? usualAxis(*bed) : box.axis;
  drift.stretch = std::clamp(box.length / box.width, 1.0, 10.0);
  for (const Point place : places) drift.plants.push_back({ids.take<Plant>(), place});
  const Id<Drift> id = drift.id;
  const int fitted = static_cast<int>(places.size());
  Draft draft(yard);
  takeCode(draft, species.botanicalName, ids);
  draft.put(std::move(drift));
  return {draft.finish(fmt::format("Plant {} {} along a line", fitted, species.commonName)), id,
          asked, fitted};
}

}  // namespace tussock
