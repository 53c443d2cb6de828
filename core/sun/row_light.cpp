// SPDX-License-Identifier: MIT
#include "core/sun/row_light.h"

#include <algorithm>

namespace tussock {

namespace {

// What gets through the groups of shadows over one place.
struct Light {
  int opaque = 0;
  double through = 1.0;

  void enter(double openness) { openness > 0.0 ? void(through *= openness) : void(++opaque); }
  void leave(double openness) { openness > 0.0 ? void(through /= openness) : void(--opaque); }
  [[nodiscard]] double lost() const { return opaque > 0 ? 1.0 : 1.0 - through; }
};

}  // namespace

std::int64_t wholeUnits(double units) {
  return static_cast<std::int64_t>(units < 0.0 ? units - 0.5 : units + 0.5);
}

void RowLight::sortEvents(const std::vector<Span>& spans) {
  events_.clear();
  for (const Span& span : spans) {
    events_.push_back({span.columns.from, span.group, span.openness, 1});
    events_.push_back({span.columns.to, span.group, span.openness, -1});
    if (static_cast<std::size_t>(span.group) >= over_.size())
      over_.resize(static_cast<std::size_t>(span.group) + 1);
  }
  // Wholly in order, so that the same spans always give the same sums.
  std::sort(events_.begin(), events_.end(), [](const Event& a, const Event& b) {
    if (a.column != b.column) return a.column < b.column;
    return a.group != b.group ? a.group < b.group : a.change > b.change;
  });
}

void RowLight::add(const std::vector<Span>& spans, double units, std::int64_t* changes) {
  if (spans.empty()) return;
  if (spans.size() == 1) {
    const auto lost = wholeUnits(units * (1.0 - spans[0].openness));
    changes[spans[0].columns.from] += lost;
    changes[spans[0].columns.to] -= lost;
    return;
  }
  sortEvents(spans);
  Light light;
  std::int64_t lost = 0;
  for (std::size_t i = 0; i < events_.size(); ++i) {
    const Event& event = events_[i];
    int& over = over_[static_cast<std::size_t>(event.group)];
    over += event.change;
    if (event.change > 0 && over == 1) light.enter(event.openness);
    if (event.change < 0 && over == 0) light.leave(event.openness);
    if (i + 1 < events_.size() && events_[i + 1].column == event.column) continue;
    const std::int64_t now = i + 1 < events_.size() ? wholeUnits(units * light.lost()) : 0;
    changes[event.column] += now - lost;
    lost = now;
  }
}

}  // namespace tussock
