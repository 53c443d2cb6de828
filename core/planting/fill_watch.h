// SPDX-License-Identifier: MIT
// When to leave off: somebody cancelled, or the time is up.
#pragma once

#include <algorithm>
#include <chrono>
#include <stop_token>

namespace tussock {

class WorkWatch {
 public:
  WorkWatch(std::stop_token stop, std::chrono::milliseconds limit)
      : stop_(std::move(stop)), limit_(limit), end_(begin_ + limit) {}

  // Leaves off so much sooner, at most three quarters of the limit: what comes after the work takes
  // time too.
  void reserve(std::chrono::milliseconds after) { end_ -= std::min(after, limit_ * 3 / 4); }

  // Leaves off sooner by that part of the time that there is.
  void reserveShare(double part) {
    end_ -= std::chrono::duration_cast<Clock::duration>((end_ - begin_) * part);
  }

  [[nodiscard]] bool cancelled() const { return stop_.stop_requested(); }
  [[nodiscard]] bool overdue() const { return Clock::now() >= end_; }
  // Of the time that there is for the work, from 0.
  [[nodiscard]] double timeUsed() const {
    return std::chrono::duration<double>(Clock::now() - begin_) / (end_ - begin_);
  }
  [[nodiscard]] bool halt() const { return cancelled() || overdue(); }

 private:
  using Clock = std::chrono::steady_clock;
  std::stop_token stop_;
  std::chrono::milliseconds limit_;
  Clock::time_point begin_ = Clock::now();
  Clock::time_point end_;
};

}  // namespace tussock
