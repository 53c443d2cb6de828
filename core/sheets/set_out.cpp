// SPDX-License-Identifier: MIT
#include "core/sheets/set_out.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/catalog/plan_codes.h"
#include "core/planting/edit_drift.h"
#include "core/sheets/text_width.h"

namespace tussock {

namespace {

constexpr std::size_t kMostPoints = 24;  // nearest fixed points looked at

// First fewest weak crossings, then the best of the worst one.
struct Quality {
  int weak = 0;
  double worst = 90.0;
  [[nodiscard]] bool betterThan(const Quality& other) const {
    return weak != other.weak ? weak < other.weak : worst > other.worst + 1e-9;
  }
};

Quality qualityOf(const std::vector<Point>& places, Point a, Point b) {
  Quality quality;
  for (const Point place : places) {
    const double degrees = crossingDegrees(place, a, b);
    quality.weak += degrees < kWeakCrossingDegrees;
    quality.worst = std::min(quality.worst, degrees);
  }
  return quality;
}

// Fixed points from which tapes reach every one of the places.
std::vector<FixedPoint> reaching(const std::vector<Point>& places, const Yard& yard,
                                 const TapeObstacles& obstacles) {
  std::vector<FixedPoint> points = fixedPoints(yard);
  const Point middle = boundsOf(places).centre();
  std::stable_sort(points.begin(), points.end(), [&](const FixedPoint& a, const FixedPoint& b) {
    return squaredDistance(a.at, middle) < squaredDistance(b.at, middle);
  });
  std::vector<FixedPoint> kept;
  for (const FixedPoint& point : points) {
    const bool all = std::all_of(places.begin(), places.end(), [&](Point place) {
      return distance(point.at, place) <= kLongestTape && obstacles.free(point, place);
    });
    if (all && kept.size() < kMostPoints) kept.push_back(point);
  }
  return kept;
}

struct Tapes {
  FixedPoint first, second;
  Quality quality;
};

std::optional<Tapes> bestTapes(const std::vector<Point>& places, const Yard& yard,
                               const TapeObstacles& obstacles) {
  const std::vector<FixedPoint> points = reaching(places, yard, obstacles);
  std::optional<Tapes> best;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = i + 1; j < points.size(); ++j) {
      const Quality quality = qualityOf(places, points[i].at, points[j].at);
      if (!best || quality.betterThan(best->quality)) best = Tapes{points[i], points[j], quality};
    }
  return best;
}

std::optional<BaselineTapes> tapesToBaseline(Point a, Point b, const Yard& yard,
                                             const TapeObstacles& obstacles) {
  const auto tapes = bestTapes({a, b}, yard, obstacles);
  if (!tapes || tapes->quality.weak > 0) return std::nullopt;
  const auto from = [](const FixedPoint& point, Point end) {
    return Length::metres(distance(point.at, end));
  };
  return BaselineTapes{tapes->first,           tapes->second,         from(tapes->first, a),
                       from(tapes->second, a), from(tapes->first, b), from(tapes->second, b)};
}

std::vector<SetOutRow> rowsFor(const Yard& yard, const Bed& bed, Angle turn,
                               const Baseline& baseline) {
  std::vector<SetOutRow> rows;
  for (const Drift* drift : driftsIn(yard, bed.id)) {
    if (drift->plants.empty() || drift->existing()) continue;  // what stands needs no stake
    SetOutRow row;
    row.code = printable(codeOf(yard, drift->species));
    row.plants = static_cast<int>(drift->plants.size());
    row.at = measuredPlant(*drift);
    const Point step = rotated(row.at, turn) - baseline.a;
    row.along = Length::metres(step.x), row.out = Length::metres(step.y);
    rows.push_back(std::move(row));
  }
  std::stable_sort(rows.begin(), rows.end(),
                   [](const SetOutRow& a, const SetOutRow& b) { return a.along < b.along; });
  return rows;
}

}  // namespace

double crossingDegrees(Point at, Point first, Point second) {
  const Point a = first - at, b = second - at;
  const double angle = std::atan2(std::abs(cross(a, b)), std::abs(dot(a, b)));
  return angle * 180.0 / std::numbers::pi;
}

Point measuredPlant(const Drift& drift) {
  const Point middle = middleOf(drift);
  return std::min_element(drift.plants.begin(), drift.plants.end(),
                          [&](const Plant& a, const Plant& b) {
                            return squaredDistance(a.at, middle) < squaredDistance(b.at, middle);
                          })
      ->at;
}

SetOut setOut(const Yard& yard, const Bed& bed, Angle turn, const Baseline& baseline) {
  const Point a = rotated(baseline.a, -turn), b = rotated(baseline.b, -turn);
  SetOut work{{"A", a}, {"B", b}, rowsFor(yard, bed, turn, baseline), {}};
  if (work.rows.empty()) return work;
  const TapeObstacles obstacles(yard);
  std::vector<Point> places;
  for (const SetOutRow& row : work.rows) places.push_back(row.at);
  const auto tapes = bestTapes(places, yard, obstacles);
  if (tapes && tapes->quality.weak <= qualityOf(places, a, b).weak)
    work.first = tapes->first, work.second = tapes->second;
  for (SetOutRow& row : work.rows) {
    row.first = Length::metres(distance(row.at, work.first.at));
    row.second = Length::metres(distance(row.at, work.second.at));
    row.crossingDegrees = crossingDegrees(row.at, work.first.at, work.second.at);
  }
  work.baseline = tapesToBaseline(a, b, yard, obstacles);
  return work;
}

}  // namespace tussock
