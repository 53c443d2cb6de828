// SPDX-License-Identifier: MIT
#include "core/planting/one_piece.h"

#include <numeric>
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

std::vector<std::size_t> numbersOfMost(const std::vector<Point>& places, Length spacing) {
  std::vector<std::size_t> most;
  const double reach = kTouch * spacing.metres();
  if (places.empty()) return most;
  if (reach <= 0.0) {
    most.resize(places.size());
    std::iota(most.begin(), most.end(), std::size_t{0});
    return most;
  }
  Reached reached(places, reach);
  for (std::size_t i = 0; i < places.size(); ++i)
    if (!reached.seen(i))
      if (auto piece = reached.from(i); piece.size() > most.size()) most = std::move(piece);
  return most;
}

}  // namespace

bool inOnePiece(const std::vector<Point>& places, Length spacing) {
  if (places.size() < 2) return true;
  const double reach = kTouch * spacing.metres();
  return reach > 0.0 && Reached(places, reach).from(0).size() == places.size();
}

std::vector<Point> largestPiece(const std::vector<Point>& places, Length spacing) {
  std::vector<Point> result;
  for (const std::size_t i : numbersOfMost(places, spacing)) result.push_back(places[i]);
  return result;
}

std::vector<std::size_t> apartFromMost(const std::vector<Point>& places, Length spacing) {
  std::vector<bool> apart(places.size(), true);
  for (const std::size_t i : numbersOfMost(places, spacing)) apart[i] = false;
  std::vector<std::size_t> result;
  for (std::size_t i = 0; i < apart.size(); ++i)
    if (apart[i]) result.push_back(i);
  return result;
}

}  // namespace tussock
