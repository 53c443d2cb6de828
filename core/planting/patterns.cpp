// SPDX-License-Identifier: MIT
#include "core/planting/patterns.h"

#include "core/planting/free_spots.h"

namespace tussock {

std::vector<Point> singlePlaces(const Ground& ground, const GrowRequest& request,
                                const std::vector<Point>& standing, const DriftFigure& figure) {
  const double s = request.spacing.metres();
  FreeSpots spots(ground, kAccentsApart * s * 1.1);
  for (const Point p : standing) spots.take(p);
  std::vector<Point> offered{request.at};
  const std::vector<Point> grid = gridOver(ground, s / 3.0, figure);
  offered.insert(offered.end(), grid.begin(), grid.end());
  for (const Point p : offered) {
    if (static_cast<int>(spots.places().size()) >= request.count) break;
    // Uneven, from the least distance up, so that accents do not line up.
    spots.keepApart(kAccentsApart * s * (unevenness(spots.places().size()) + 0.07));
    if (spots.fits(p)) spots.take(p);
  }
  return spots.places();
}

std::vector<Point> matrixPlaces(const Ground& ground, const GrowRequest& request,
                                const std::vector<Point>& standing) {
  const DriftFigure figure = figureAsked(request);
  Front front(ground, request.spacing, figure, {});
  for (const Point p : standing) front.take(p);
  front.growTo(request.count);
  for (const Point p : gridOver(ground, request.spacing.metres() / 3.0, figure)) {
    if (static_cast<int>(front.places().size()) >= request.count) break;
    if (!front.fits(p)) continue;
    front.begin(p);
    front.growTo(request.count);
  }
  return front.places();
}

}  // namespace tussock
