// SPDX-License-Identifier: MIT
#include "core/planting/relax.h"

#include <cmath>

#include "core/planting/disc_grid.h"
#include "core/planting/front.h"

namespace tussock {

namespace {

constexpr int kRelaxRounds = 16;
constexpr double kStep = 0.35;     // of the overlap, each round
constexpr double kMostStep = 0.1;  // of the spacing
// Shares of the spacing at which plants of the drift, and those beside others, come to rest.
constexpr double kRest = 0.94;
constexpr double kRestBeside = 0.92;

class Relaxation {
 public:
  Relaxation(const Ground& ground, double spacing, const std::vector<Point>& places)
      : ground_(ground), spacing_(spacing), widest_(spacing * 1.1), grid_(gridFor()) {
    for (const Neighbour& neighbour : ground.neighbours()) grid_.add(neighbour.at);
    for (const Point p : places) grid_.add(p);
  }

  void round() {
    for (std::size_t i = ground_.neighbours().size(); i < grid_.size(); ++i) {
      const Point from = grid_.at(i);
      const Point to = from + pushOn(i);
      if (mayStand(i, to)) grid_.move(i, to);
    }
  }
  [[nodiscard]] std::vector<Point> places() const {
    std::vector<Point> result;
    for (std::size_t i = ground_.neighbours().size(); i < grid_.size(); ++i)
      result.push_back(grid_.at(i));
    return result;
  }

 private:
  DiscGrid gridFor() {
    for (const Neighbour& n : ground_.neighbours()) widest_ = std::max(widest_, n.usual);
    const Box& box = ground_.box();
    return {box, std::max(widest_, std::sqrt(box.width() * box.height() / 1e6))};
  }
  [[nodiscard]] bool isNeighbour(std::size_t item) const {
    return item < ground_.neighbours().size();
  }
  // The distance two plants come to rest at.
  [[nodiscard]] double restOf(std::size_t i, std::size_t other) const {
    if (isNeighbour(other)) {
      const Neighbour& n = ground_.neighbours()[other];
      return std::max(n.least, kRestBeside * n.usual);
    }
    const std::size_t first = ground_.neighbours().size();
    return kRest * spacing_ * (unevenness(i - first) + unevenness(other - first)) / 2.0;
  }
  [[nodiscard]] double leastOf(std::size_t other) const {
    return isNeighbour(other) ? ground_.neighbours()[other].least : kLooseSpacing * spacing_;
  }

  [[nodiscard]] Point pushOn(std::size_t i) const {
    const Point p = grid_.at(i);
    Point push;
    grid_.near(p, widest_, [&](std::size_t other) {
      const double d = distance(p, grid_.at(other));
      const double overlap = restOf(i, other) - d;
      if (other != i && overlap > 0.0 && d > 0.0)
        push += (p - grid_.at(other)) * (kStep * overlap / d);
      return true;
    });
    const double length = std::hypot(push.x, push.y);
    const double most = kMostStep * spacing_;
    return length > most ? push * (most / length) : push;
  }

  [[nodiscard]] bool mayStand(std::size_t i, Point p) const {
    return grid_.near(p, widest_, [&](std::size_t other) {
      return other == i || distance(p, grid_.at(other)) >= leastOf(other);
    }) && ground_.holds(p);
  }

  const Ground& ground_;
  double spacing_;
  double widest_;
  DiscGrid grid_;
};

}  // namespace

std::vector<Point> relaxed(const Ground& ground, Length spacing, std::vector<Point> places) {
  Relaxation relaxation(ground, spacing.metres(), places);
  for (int i = 0; i < kRelaxRounds; ++i) relaxation.round();
  return relaxation.places();
}

}  // namespace tussock
