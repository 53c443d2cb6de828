// SPDX-License-Identifier: MIT
#include "core/planting/one_piece.h"

#include <utility>

#include "core/planting/disc_grid.h"

namespace tussock {

namespace {

// Plants that are reached from one over gaps under `reach` metres.
class Reached {
 public:
  Reached(const std::vector<Point>& places, double reach)
      : places_(places), reach_(reach), grid_(boundsOf(places), reach), seen_(places.size(), 0) {
    for (const Point p : places) grid_.add(p);
  }

  [[nodiscard]] bool seen(std::size_t i) const { return seen_[i] != 0; }
  // Not told of before.
  std::vector<std::size_t> from(std::size_t start) {
    std::vector<std::size_t> reached{start};
    seen_[start] = 1;
    for (std::size_t next = 0; next < reached.size(); ++next)
      grid_.near(places_[reached[next]], reach_, [&](std::size_t i) {
        if (seen_[i] == 0) seen_[i] = 1, reached.push_back(i);
        return true;
      });
    return reached;
  }

 private:
  const std::vector<Point>& places_;
  double reach_;
  DiscGrid grid_;
  std::vector<char> seen_;
};

}  // namespace

bool inOnePiece(const std::vector<Point>& places, Length spacing) {
  if (places.size() < 2) return true;
  const double reach = kTouch * spacing.metres();
  return reach > 0.0 && Reached(places, reach).from(0).size() == places.size();
}

std::vector<Point> largestPiece(const std::vector<Point>& places, Length spacing) {
  const double reach = kTouch * spacing.metres();
  if (places.empty() || reach <= 0.0) return places;
  Reached reached(places, reach);
  std::vector<std::size_t> most;
  for (std::size_t i = 0; i < places.size(); ++i)
    if (!reached.seen(i))
      if (auto piece = reached.from(i); piece.size() > most.size()) most = std::move(piece);
  std::vector<Point> result;
  for (const std::size_t i : most) result.push_back(places[i]);
  return result;
}

}  // namespace tussock
