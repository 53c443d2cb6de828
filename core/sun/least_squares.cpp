// SPDX-License-Identifier: MIT
#include "core/sun/least_squares.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

constexpr int kMostRounds = 40;
constexpr int kShortRounds = 4;
constexpr int kGridPlaces = 6;
constexpr int kMostTrials = 4000;  // evaluations after which nothing more is tried

using Vector = std::vector<double>;
using Matrix = std::vector<Vector>;

// Gauss with row exchange; the matrix is made positive definite by its damping.
Vector solve(Matrix a, Vector b) {
  const std::size_t n = b.size();
  for (std::size_t k = 0; k < n; ++k) {
    std::size_t best = k;
    for (std::size_t i = k + 1; i < n; ++i)
      if (std::abs(a[i][k]) > std::abs(a[best][k])) best = i;
    std::swap(a[k], a[best]), std::swap(b[k], b[best]);
    for (std::size_t i = k + 1; i < n; ++i) {
      const double share = a[i][k] / a[k][k];
      for (std::size_t j = k; j < n; ++j) a[i][j] -= share * a[k][j];
      b[i] -= share * b[k];
    }
  }
  for (std::size_t k = n; k-- > 0;) {
    for (std::size_t j = k + 1; j < n; ++j) b[k] -= a[k][j] * b[j];
    b[k] /= a[k][k];
  }
  return b;
}

class Search {
 public:
  Search(const std::vector<Unknown>& unknowns, double hold, const Residuals& residuals)
      : unknowns_(unknowns), hold_(hold), residuals_(residuals) {
    for (const Unknown& unknown : unknowns) at_.push_back(unknown.start);
    rest_ = all(at_);
  }
  [[nodiscard]] const Vector& at() const { return at_; }

  // From other places of each unknown in turn, since a shadow that misses a point tells nothing of
  // how much more would reach it, and the sum has more than one hollow.
  void scan(std::stop_token stop) {
    for (bool better = true; better;) {
      better = false;
      for (std::size_t i = 0; i < at_.size(); ++i)
        for (int place = 0; place < kGridPlaces; ++place) {
          if (stop.stop_requested() || trials_ > kMostTrials) return;
          better = tryFrom(i, place, stop) || better;
        }
    }
  }
  void descend(std::stop_token stop, int mostRounds = kMostRounds) {
    double damping = 1e-2;
    for (int round = 0; round < mostRounds && !stop.stop_requested(); ++round) {
      const double before = sum(rest_);
      const Matrix slopes = derivatives();
      bool better = false;
      for (; damping < 1e6 && !better; damping *= better ? 0.1 : 5.0)
        better = take(stepped(slopes, damping));
      if (!better || before - sum(rest_) < 1e-7 * (1.0 + before)) return;
    }
  }

 private:
  static double sum(const Vector& rest) {
    double total = 0.0;
    for (const double value : rest) total += value * value;
    return total;
  }
  // Keeps the descent from there when it ends lower by a hundredth.
  bool tryFrom(std::size_t i, int place, std::stop_token stop) {
    const Vector best = at_, bestRest = rest_;
    const Unknown& unknown = unknowns_[i];
    at_[i] = unknown.low + (unknown.high - unknown.low) * place / (kGridPlaces - 1.0);
    rest_ = all(at_);
    descend(stop, kShortRounds);
    if (sum(rest_) < 0.99 * sum(bestRest)) return true;
    at_ = best;
    rest_ = bestRest;
    return false;
  }
  Vector all(const Vector& at) {
    ++trials_;
    Vector rest = residuals_(at);
    for (std::size_t i = 0; i < at.size(); ++i)
      rest.push_back(hold_ * (at[i] - unknowns_[i].start) / unknowns_[i].scale);
    return rest;
  }
  bool take(Vector trial) {
    Vector rest = all(trial);
    if (!(sum(rest) < sum(rest_))) return false;
    at_ = std::move(trial);
    rest_ = std::move(rest);
    return true;
  }
  // By unknown and residual, in scales; over a step to each side where there is room.
  Matrix derivatives() {
    Matrix slopes;
    for (std::size_t i = 0; i < at_.size(); ++i) {
      const Unknown& unknown = unknowns_[i];
      Vector up = at_, down = at_;
      up[i] = std::min(unknown.high, at_[i] + unknown.step);
      down[i] = std::max(unknown.low, at_[i] - unknown.step);
      const double width = (up[i] - down[i]) / unknown.scale;
      const Vector above = all(up), below = all(down);
      Vector slope(above.size());
      for (std::size_t k = 0; k < slope.size(); ++k) slope[k] = (above[k] - below[k]) / width;
      slopes.push_back(std::move(slope));
    }
    return slopes;
  }
  Vector stepped(const Matrix& slopes, double damping) const {
    const std::size_t n = at_.size();
    Matrix normal(n, Vector(n));
    Vector pull(n);
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t k = 0; k < rest_.size(); ++k) {
        pull[i] -= slopes[i][k] * rest_[k];
        for (std::size_t j = 0; j < n; ++j) normal[i][j] += slopes[i][k] * slopes[j][k];
      }
      normal[i][i] = normal[i][i] * (1.0 + damping) + 1e-9;
    }
    const Vector step = solve(normal, pull);
    Vector trial = at_;
    for (std::size_t i = 0; i < n; ++i)
      trial[i] =
          std::clamp(at_[i] + step[i] * unknowns_[i].scale, unknowns_[i].low, unknowns_[i].high);
    return trial;
  }

  const std::vector<Unknown>& unknowns_;
  double hold_;
  const Residuals& residuals_;
  Vector at_, rest_;
  int trials_ = 0;
};

}  // namespace

std::vector<double> leastSquares(const std::vector<Unknown>& unknowns, double hold,
                                 const Residuals& residuals, std::stop_token stop) {
  Search search(unknowns, hold, residuals);
  search.descend(stop);
  search.scan(stop);
  search.descend(stop);
  return search.at();
}

}  // namespace tussock
