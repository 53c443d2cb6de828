// SPDX-License-Identifier: MIT
#include "core/planting/one_piece.h"

#include "core/planting/disc_grid.h"

namespace tussock {

bool inOnePiece(const std::vector<Point>& places, Length spacing) {
  if (places.size() < 2) return true;
  const double reach = kTouch * spacing.metres();
  if (reach <= 0.0) return false;
  DiscGrid grid(boundsOf(places), reach);
  for (const Point p : places) grid.add(p);
  std::vector<char> seen(places.size(), 0);
  std::vector<std::size_t> waiting{0};
  std::size_t reached = 1;
  seen[0] = 1;
  while (!waiting.empty()) {
    const Point p = places[waiting.back()];
    waiting.pop_back();
    grid.near(p, reach, [&](std::size_t i) {
      if (seen[i] == 0) seen[i] = 1, ++reached, waiting.push_back(i);
      return true;
    });
  }
  return reached == places.size();
}

}  // namespace tussock
