// SPDX-License-Identifier: MIT
#include "core/planting/set_out.h"

#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/planting/even_spread.h"
#include "core/planting/one_piece.h"
#include "core/planting/own_ground.h"
#include "core/planting/patterns.h"
#include "core/planting/relax.h"

namespace tussock {

namespace {

std::vector<Point> laidOnGround(const Slope& slope, std::vector<Point> places) {
  for (Point& p : places) p = slope.onGround(p);
  return places;
}

Ground groundAround(const Yard& yard, GrowRequest request, const OwnForm& form,
                    const Slope& slope) {
  const Box box = boundsOf(form.places());
  request.at = slope.onPlan(box.centre());
  const double around = form.spacing() + 10.0 * request.spacing.metres();
  return {yard, request, distance(box.low, box.high) / 2.0 + around};
}

// The nearest free place, half a spacing away at most.
std::optional<Point> freeNear(const Front& front, Point p, double spacing) {
  if (front.fits(p)) return p;
  constexpr int kSteps = 6, kTurns = 24;
  for (int step = 1; step <= kSteps; ++step)
    for (int i = 0; i < kTurns; ++i) {
      const double turn = 2.0 * std::numbers::pi * i / kTurns;
      const Point q = p + Point{std::cos(turn), std::sin(turn)} * (0.5 * spacing * step / kSteps);
      if (front.fits(q)) return q;
    }
  return std::nullopt;
}

std::vector<Point> asCounted(std::vector<Point> places, int count) {
  keepCount(places, count);
  return places;
}

// At these places and, up to the count, beside them; as near the form as may be.
std::vector<Point> grownFrom(const std::vector<Point>& places, const Ground& ground,
                             const GrowRequest& request, const OwnForm& form) {
  DriftFigure figure = figureAsked(request);
  figure.form = &form;
  Front front(ground, request.spacing, figure, packingFor(request.count));
  for (const Point p : places)
    if (const auto free = freeNear(front, p, request.spacing.metres())) front.take(*free);
  front.growTo(request.count);
  return asCounted(front.places(), request.count);
}

std::vector<Point> wholeFrom(const std::vector<Point>& spread, const Ground& ground,
                             const GrowRequest& request, const OwnForm& form) {
  constexpr double kMost = 0.97;
  std::vector<Point> places = grownFrom(spread, ground, request, form);
  const auto whole = largestPiece(places, request.spacing);
  const bool strays =
      whole.size() < places.size() &&
      static_cast<double>(whole.size()) > kMost * static_cast<double>(places.size());
  if (strays) places = grownFrom(whole, ground, request, form);
  std::vector<Point> even = relaxed(ground, request.spacing, places);
  return inOnePiece(even, request.spacing) ? even : places;
}

// Spread over the form; what finds no place there nestles beside the others, and so do a few that
// stray from a large drift. Where that is not all, as between plants that leave no room about them,
// the old places may take more.
std::vector<Point> spreadIn(const Ground& ground, const GrowRequest& request, const OwnForm& form) {
  const auto spread = spreadOver(ground, form, request.spacing, request.count);
  std::vector<Point> places = wholeFrom(spread, ground, request, form);
  if (static_cast<int>(places.size()) == request.count) return places;
  std::vector<Point> old = wholeFrom(form.places(), ground, request, form);
  return old.size() > places.size() && inOnePiece(old, request.spacing) ? old : places;
}

// A narrow band of plants that come to stand wider cannot reach from end to end without a gap: then
// it is as much shorter, at both ends, as it takes. None where half would not do.
std::vector<Point> staggeredIn(const Ground& ground, const GrowRequest& request,
                               const OwnForm& form) {
  constexpr std::array kShares{1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5};
  for (const double share : kShares) {
    const OwnForm part = share < 1.0 ? form.shortened(share) : form;
    std::vector<Point> places = spreadIn(ground, request, part);
    if (inOnePiece(places, request.spacing)) return places;
  }
  return {};
}

std::vector<Point> placesByPattern(const Ground& ground, GrowRequest request, const OwnForm& form) {
  request.at = form.heart();
  DriftFigure figure = figureAsked(request);
  figure.form = &form;
  switch (request.pattern) {
    case Pattern::Triangular:
    case Pattern::Square:
      return asCounted(strictPlaces(ground, request, {}, figure), request.count);
    case Pattern::Single:
      return asCounted(singlePlaces(ground, request, {}, figure), request.count);
    case Pattern::Matrix:
      return {};
    case Pattern::Staggered:
      break;
  }
  return staggeredIn(ground, request, form);
}

// Places on the plan, spread over the ground the drift has; none where it has no such ground.
std::vector<Point> placesOnForm(const Yard& yard, const GrowRequest& request, const OwnForm& form,
                                const Slope& slope) {
  const Ground ground = groundAround(yard, request, form, slope);
  if (ground.empty()) return {};
  std::vector<Point> places = placesByPattern(ground, onGround(request, slope), form);
  for (Point& p : places) p = slope.onPlan(p);
  return places;
}

// The close search takes too long for more, and rows that are searched for are none. Nor are
// accents of plants that stood in a group.
bool isSearchedClosely(const Drift& stood, const GrowRequest& request) {
  const bool toAccents = request.pattern == Pattern::Single && stood.pattern != Pattern::Single;
  return isUsual(request.count) && !isStrict(request.pattern) && !toAccents;
}

}  // namespace

Growth setOut(const Yard& yard, const Drift& stood, const GrowRequest& request) {
  Growth grown = growDrift(yard, request);
  if (stood.plants.empty()) return grown;
  GrowRequest asked = request;
  asked.count = grown.asked;
  const Slope slope(yard.settings);
  const std::vector<Point> old = laidOnGround(slope, positionsOf(stood));
  const auto isAll = [&] { return static_cast<int>(grown.places.size()) == grown.asked; };
  // A matrix is whatever the others leave.
  if (request.pattern != Pattern::Matrix && inOnePiece(old, stood.spacing)) {
    const OwnForm form(old, stood.spacing);
    if (isAll() && form.isKeptBy(laidOnGround(slope, grown.places), request.spacing)) return grown;
    std::vector<Point> own = placesOnForm(yard, asked, form, slope);
    if (!own.empty() && own.size() >= grown.places.size()) grown.places = std::move(own);
  }
  if (isAll() || !isSearchedClosely(stood, asked)) return grown;
  std::vector<Point> close = placesOnOwnGround(yard, asked, positionsOf(stood));
  if (close.size() > grown.places.size()) grown.places = std::move(close);
  return grown;
}

}  // namespace tussock
