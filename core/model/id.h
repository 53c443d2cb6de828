// SPDX-License-Identifier: MIT
// Typed ids: one number space per yard, never issued twice, not even after a deletion.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace tussock {

template <class T>
class Id {
 public:
  constexpr Id() = default;
  explicit constexpr Id(std::int64_t value) : value_(value) {}
  [[nodiscard]] constexpr std::int64_t value() const { return value_; }
  [[nodiscard]] constexpr bool valid() const { return value_ > 0; }
  constexpr auto operator<=>(const Id&) const = default;

 private:
  std::int64_t value_ = 0;
};

// Hands out fresh ids. The store says where to start, so that no id comes back from history.
class IdSource {
 public:
  explicit IdSource(std::int64_t next = 1) : next_(next) {}
  template <class T>
  [[nodiscard]] Id<T> take() {
    return Id<T>(next_++);
  }
  [[nodiscard]] std::int64_t next() const { return next_; }
  void skipTo(std::int64_t next) { next_ = next > next_ ? next : next_; }

 private:
  std::int64_t next_;
};

}  // namespace tussock

template <class T>
struct std::hash<tussock::Id<T>> {
  std::size_t operator()(tussock::Id<T> id) const noexcept {
    return std::hash<std::int64_t>{}(id.value());
  }
};
