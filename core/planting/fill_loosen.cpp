// SPDX-License-Identifier: MIT
#include "core/planting/fill_loosen.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace tussock {

namespace {

constexpr int kSweeps = 500;
constexpr double kLineReach = 2.5;       // mean spacings, as far as one takes two plants for a line
constexpr double kLines = 2.6;           // times the mean of pairs in a direction that may be there
constexpr double kWeight = 0.02;         // of a pair in line, against crowding
constexpr double kNearest = 0.908;       // of the spacing on average, which is enough
constexpr double kWarmth = 0.003;        // at first
constexpr std::size_t kDirections = 36;  // of 5 degrees; two neighbouring ones make a line

class Loosening {
 public:
  Loosening(Settling& settling, Chance& chance) : settling_(settling), chance_(chance) {
    for (std::size_t i = 0; i < settling.size(); ++i) count(i, settling.at(i), 1);
    for (int& pairs : lines_) pairs /= 2;  // each pair was met twice
  }

  [[nodiscard]] bool needed() const { return excess() > 0.0 || settling_.meanNearest() < kNearest; }
  // Moves of up to `step` spacings; what is a little worse is taken now and then while it is warm.
  void sweep(double step, double warmth) {
    warmth_ = warmth;
    for (std::size_t i = 0; i < settling_.size(); ++i) tryMove(i, step);
  }

 private:
  // Pairs in directions that have more than their part. Directions overlap by half, so that a line
  // does not hide between two of them.
  [[nodiscard]] double excess() const {
    double all = 0.0, sum = 0.0;
    for (const int pairs : lines_) all += pairs;
    const double most = kLines * all * 2.0 / kDirections;
    for (std::size_t k = 0; k < kDirections; ++k)
      sum += std::max(0.0, lines_[k] + lines_[(k + 1) % kDirections] - most);
    return sum;
  }
  [[nodiscard]] double meanNearest() const {
    double sum = 0.0;
    for (std::size_t i = 0; i < settling_.size(); ++i) sum += settling_.roomFor(i, settling_.at(i));
    return sum / static_cast<double>(std::max<std::size_t>(1, settling_.size()));
  }

  // Adds the pairs of a plant that stands there; returns how crowded it is.
  double count(std::size_t i, Point p, int step) {
    double crowded = 0.0;
    const double own = settling_.spacing(i);
    settling_.grid().near(p, kLineReach * 0.5 * (own + settling_.widest()), [&](std::size_t other) {
      if (other == i) return true;
      const Point to = settling_.at(other) - p;
      const double away = std::hypot(to.x, to.y) / (0.5 * (own + settling_.spacing(other)));
      if (away >= kLineReach) return true;
      lines_[directionOf(to)] += step;
      if (away < 1.0) crowded += (1.0 - away) * (1.0 - away);
      return true;
    });
    return crowded;
  }
  static std::size_t directionOf(Point step) {
    constexpr double kPi = std::numbers::pi;
    const double turn = std::atan2(step.y, step.x);
    const double share = (turn < 0.0 ? turn + kPi : turn) / kPi;
    return std::min(kDirections - 1, static_cast<std::size_t>(share * kDirections));
  }

  void tryMove(std::size_t i, double step) {
    const double turn = chance_.between(0.0, 2.0 * std::numbers::pi);
    const double length = step * settling_.spacing(i) * chance_.share();
    const Point from = settling_.at(i);
    const Point to = from + Point{std::cos(turn), std::sin(turn)} * length;
    if (!settling_.mayMove(i, to)) return;
    const double before = kWeight * excess() + count(i, from, -1);
    const double after = count(i, to, 1) + kWeight * excess();
    if (after < before - warmth_ * std::log(1e-12 + chance_.share()))
      return settling_.moveTo(i, to);
    count(i, to, -1);
    count(i, from, 1);
  }

  Settling& settling_;
  Chance& chance_;
  double warmth_ = 0.0;
  std::array<int, kDirections> lines_{};  // pairs by their direction
};

}  // namespace

void loosen(Settling& settling, Chance& chance, const WorkWatch& watch) {
  Loosening loosening(settling, chance);
  for (int i = 0; i < kSweeps && !watch.halt() && loosening.needed(); ++i) {
    const double left = 1.0 - static_cast<double>(i) / kSweeps;
    loosening.sweep(0.06 + 0.24 * left, kWarmth * std::max(0.0, 1.1 * left - 0.1));
  }
}

}  // namespace tussock
