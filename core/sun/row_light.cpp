// SPDX-License-Identifier: MIT
#include "core/sun/row_light.h"

#include <algorithm>

namespace tussock {

namespace {

enum class Passing : unsigned { Enter, Leave };

std::uint64_t orderOf(int column, int group, Passing passing) {
  return static_cast<std::uint64_t>(column) << 32u | static_cast<std::uint64_t>(group) << 1u |
         static_cast<std::uint64_t>(passing);
}
int columnOf(std::uint64_t order) {
  return static_cast<int>(order >> 32u);
}
int groupOf(std::uint64_t order) {
  return static_cast<int>((order & 0xffffffffu) >> 1u);
}

}  // namespace

std::int64_t wholeUnits(double units) {
  return static_cast<std::int64_t>(units < 0.0 ? units - 0.5 : units + 0.5);
}

void RowLight::sortEvents(const std::vector<Span>& spans) {
  events_.clear();
  for (const Span& span : spans) {
    const auto [from, to] = span.columns;
    events_.push_back({orderOf(from, span.group, Passing::Enter), span.openness});
    events_.push_back({orderOf(to, span.group, Passing::Leave), span.openness});
    if (static_cast<std::size_t>(span.group) >= over_.size())
      over_.resize(static_cast<std::size_t>(span.group) + 1);
  }
  std::sort(events_.begin(), events_.end(),
            [](const Event& a, const Event& b) { return a.order < b.order; });
}

void RowLight::pass(const Event& event) {
  const int group = groupOf(event.order);
  int& over = over_[static_cast<std::size_t>(group)];
  const bool enter = (event.order & 1u) == 0;
  over += enter ? 1 : -1;
  if (over != (enter ? 1 : 0)) return;
  if (event.openness <= 0.0) {
    opaque_ += enter ? 1 : -1;
    return;
  }
  const auto at = std::find_if(dimmed_.begin(), dimmed_.end(),
                               [group](const Dimmed& d) { return d.group >= group; });
  if (enter)
    dimmed_.insert(at, {group, event.openness});
  else
    dimmed_.erase(at);
}

double RowLight::lost() const {
  if (opaque_ > 0) return 1.0;
  double through = 1.0;
  for (const Dimmed& dimmed : dimmed_) through *= dimmed.openness;
  return 1.0 - through;
}

void RowLight::add(const std::vector<Span>& spans, double units, std::int64_t* changes) {
  if (spans.empty()) return;
  if (spans.size() == 1) {
    const auto taken = wholeUnits(units * (1.0 - spans[0].openness));
    changes[spans[0].columns.from] += taken;
    changes[spans[0].columns.to] -= taken;
    return;
  }
  sortEvents(spans);
  std::int64_t before = 0;
  for (std::size_t i = 0; i < events_.size(); ++i) {
    pass(events_[i]);
    const int column = columnOf(events_[i].order);
    if (i + 1 < events_.size() && columnOf(events_[i + 1].order) == column) continue;
    const std::int64_t now = wholeUnits(units * lost());
    changes[column] += now - before;
    before = now;
  }
}

}  // namespace tussock
