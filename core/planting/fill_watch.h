// SPDX-License-Identifier: MIT
// When to leave off: somebody cancelled, or the time is up.
#pragma once

#include <chrono>
#include <stop_token>

namespace tussock {

class WorkWatch {
 public:
  WorkWatch(std::stop_token stop, std::chrono::milliseconds limit)
      : stop_(std::move(stop)), end_(std::chrono::steady_clock::now() + limit) {}

  [[nodiscard]] bool cancelled() const { return stop_.stop_requested(); }
  [[nodiscard]] bool overdue() const { return std::chrono::steady_clock::now() >= end_; }
  [[nodiscard]] bool halt() const { return cancelled() || overdue(); }

 private:
  std::stop_token stop_;
  std::chrono::steady_clock::time_point end_;
};

}  // namespace tussock
