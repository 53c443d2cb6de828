// SPDX-License-Identifier: MIT
#include "core/planting/measures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/catalog/bloom.h"
#include "core/planting/disc_grid.h"
#include "core/planting/fill_ground.h"
#include "core/planting/fill_spots.h"
#include "core/planting/one_piece.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

constexpr double kRowReach = 2.5;  // mean spacings

std::vector<Stand> standsOf(const std::vector<const Drift*>& drifts) {
  std::vector<Stand> stands;
  for (const Drift* drift : drifts)
    for (const Plant& plant : drift->plants) stands.push_back({plant.at, drift->spacing.metres()});
  return stands;
}

double widestOf(const std::vector<Stand>& stands) {
  double widest = 0.05;
  for (const Stand& stand : stands) widest = std::max(widest, stand.spacing);
  return widest;
}

void measureCover(const Yard& yard, const Bed& bed, const std::vector<Stand>& stands,
                  BedMeasures& out) {
  // Without any plant in it the yard's ground is free wherever nothing else lies.
  Yard bare = yard;
  bare.drifts = Collection<Drift>();
  const double size = cellSizeFor(bed, std::clamp(out.meanSpacing, 0.15, 0.6));
  const FillGround ground(bare, bed, Layer::Main, 0.0, size);
  if (ground.cells().empty()) return;
  double taken = 0.0;
  for (const Stand& stand : stands)
    taken += stand.spacing * stand.spacing * std::numbers::sqrt3 / 2.0;
  out.groundTaken = taken / surfaceOf(yard, bed).squareMetres();
  out.freeGroundTaken = taken / ground.area();
  out.covered = coveredShare(ground, stands);
}

void measureDrifts(const std::vector<const Drift*>& drifts, BedMeasures& out) {
  std::vector<int> touches(drifts.size(), 0);
  for (const auto& [a, b] : touchingDrifts(drifts)) {
    ++touches[a], ++touches[b];
    if (drifts[a]->species == drifts[b]->species) ++out.besideOwn;
  }
  int two = 0;
  for (std::size_t i = 0; i < drifts.size(); ++i) {
    const Drift& drift = *drifts[i];
    if (drift.plants.size() % 2 == 0 && !drift.existing()) ++out.evenDrifts;
    if (drift.pattern == Pattern::Matrix) continue;  // in as many pieces as there are
    if (!inOnePiece(positionsOf(drift), drift.spacing)) ++out.brokenDrifts;
    if (const auto rectangle = rectangleOf(drift))
      out.elongations.push_back(rectangle->length / rectangle->width);
    if (touches[i] >= 2) ++two;
  }
  if (!drifts.empty()) out.touchTwo = static_cast<double>(two) / static_cast<double>(drifts.size());
}

}  // namespace

std::optional<OrientedRectangle> rectangleOf(const Drift& drift) {
  if (drift.plants.size() < 5) return std::nullopt;
  return smallestRectangle(positionsOf(drift), drift.spacing / 2.0);
}

double coveredShare(const FillGround& ground, const std::vector<Stand>& stands) {
  if (ground.cells().empty()) return 1.0;
  const double widest = widestOf(stands);
  DiscGrid grid(ground.box(), widest);
  for (const Stand& stand : stands) grid.add(stand.at);
  const auto covered =
      std::count_if(ground.cells().begin(), ground.cells().end(), [&](const FillCell& cell) {
        return !grid.near(cell.at, widest, [&](std::size_t i) {
          return distance(cell.at, stands[i].at) > stands[i].spacing;
        });
      });
  return static_cast<double>(covered) / static_cast<double>(ground.cells().size());
}

Distances distancesOf(const std::vector<Point>& points, const std::vector<double>& spacings) {
  if (points.size() < 2) return {};
  const double widest = *std::max_element(spacings.begin(), spacings.end());
  DiscGrid grid(boundsOf(points), widest);
  for (const Point p : points) grid.add(p);
  Distances distances{1e9, 0.0};
  for (std::size_t i = 0; i < points.size(); ++i) {
    double nearest = 3.0;
    // Whoever is is out of reach is farther than that in the mean of any two spacings.
    for (double reach = 1.0, asked = 0.0; reach <= 4.0 && nearest > asked;
         asked = reach, reach *= 2.0)
      grid.near(points[i], reach * widest, [&](std::size_t j) {
        if (j == i) return true;
        const double mean = 0.5 * (spacings[i] + spacings[j]);
        nearest = std::min(nearest, distance(points[i], points[j]) / mean);
        return true;
      });
    distances.least = std::min(distances.least, nearest);
    distances.meanNearest += nearest / static_cast<double>(points.size());
  }
  return distances;
}

Distances distancesOf(const std::vector<KeptDrift>& drifts) {
  std::vector<Point> points;
  std::vector<double> spacings;
  for (const KeptDrift& drift : drifts) {
    points.insert(points.end(), drift.places.begin(), drift.places.end());
    spacings.resize(points.size(), drift.spacing.metres());
  }
  return distancesOf(points, spacings);
}

Rows rowsOf(const std::vector<Point>& points, const std::vector<double>& spacings) {
  Rows rows;
  if (points.size() < 2) return rows;
  constexpr std::size_t kBins = 18;
  std::array<int, kBins> bins{};
  const double widest = *std::max_element(spacings.begin(), spacings.end());
  DiscGrid grid(boundsOf(points), kRowReach * widest);
  for (std::size_t i = 0; i < points.size(); ++i) {
    grid.near(points[i], kRowReach * widest, [&](std::size_t j) {
      const Point step = points[j] - points[i];
      if (std::hypot(step.x, step.y) >= kRowReach * 0.5 * (spacings[i] + spacings[j])) return true;
      const double turn =
          std::fmod(std::atan2(step.y, step.x) + 2.0 * std::numbers::pi, std::numbers::pi);
      const auto bin = static_cast<std::size_t>(turn / std::numbers::pi * kBins);
      ++bins[std::min(bin, kBins - 1)];
      ++rows.pairs;
      return true;
    });
    grid.add(points[i]);
  }
  if (rows.pairs > 0)
    rows.rowiness = static_cast<double>(kBins) * *std::max_element(bins.begin(), bins.end()) /
                    static_cast<double>(rows.pairs);
  return rows;
}

BedMeasures measure(const Yard& yard, Id<Bed> id) {
  BedMeasures out;
  const Bed* bed = yard.beds.find(id);
  if (bed == nullptr) return out;
  std::vector<const Drift*> drifts = driftsIn(yard, id);
  std::erase_if(drifts, [](const Drift* drift) {
    return drift->layer != Layer::Main || drift->plants.empty();
  });
  const std::vector<Stand> stands = standsOf(drifts);
  out.drifts = static_cast<int>(drifts.size());
  out.plants = static_cast<int>(stands.size());
  std::vector<Point> points;
  std::vector<double> spacings;
  for (const Stand& stand : stands) {
    points.push_back(stand.at), spacings.push_back(stand.spacing);
    out.meanSpacing += stand.spacing / static_cast<double>(stands.size());
  }
  const Distances distances = distancesOf(points, spacings);
  out.leastDistance = distances.least, out.meanNearest = distances.meanNearest;
  measureCover(yard, *bed, stands, out);
  measureDrifts(drifts, out);
  out.rows = rowsOf(points, spacings);
  return out;
}

}  // namespace tussock
