// SPDX-License-Identifier: MIT
#include "core/sun/row_light.h"

#include <algorithm>

namespace tussock {

namespace {

enum class Passing : unsigned { Enter, Leave };

// The dark counts as a group before all others.
constexpr int kDark = -1;

std::uint64_t eventAt(int column, int group, Passing passing) {
  return static_cast<std::uint64_t>(column) << 32u | static_cast<std::uint64_t>(group + 1) << 1u |
         static_cast<std::uint64_t>(passing);
}
int columnOf(std::uint64_t event) {
  return static_cast<int>(event >> 32u);
}
int groupOf(std::uint64_t event) {
  return static_cast<int>((event & 0xffffffffu) >> 1u) - 1;
}

// There are few, most of them in order already.
void sortFew(std::vector<std::uint64_t>& values) {
  if (values.size() > 48) return std::sort(values.begin(), values.end());
  for (std::size_t i = 1; i < values.size(); ++i) {
    const std::uint64_t value = values[i];
    std::size_t at = i;
    for (; at > 0 && values[at - 1] > value; --at) values[at] = values[at - 1];
    values[at] = value;
  }
}

}  // namespace

std::int64_t wholeUnits(double units) {
  return static_cast<std::int64_t>(units < 0.0 ? units - 0.5 : units + 0.5);
}

void RowLight::joinOpaque(const std::vector<Span>& spans) {
  order_.clear();
  for (const Span& span : spans)
    if (span.openness <= 0.0)
      order_.push_back(static_cast<std::uint64_t>(span.columns.from) << 32u |
                       static_cast<std::uint64_t>(span.columns.to));
  sortFew(order_);
  dark_.clear();
  for (const std::uint64_t next : order_) {
    const Columns columns{static_cast<int>(next >> 32u), static_cast<int>(next & 0xffffffffu)};
    if (dark_.empty() || columns.from > dark_.back().to)
      dark_.push_back(columns);
    else
      dark_.back().to = std::max(dark_.back().to, columns.to);
  }
}

bool RowLight::isDark(Columns columns) const {
  return std::any_of(dark_.begin(), dark_.end(), [columns](Columns dark) {
    return dark.from <= columns.from && columns.to <= dark.to;
  });
}

void RowLight::sortEvents(const std::vector<Span>& spans) {
  events_.clear();
  for (const Span& span : spans) {
    if (span.openness <= 0.0 || isDark(span.columns)) continue;
    events_.push_back(eventAt(span.columns.from, span.group, Passing::Enter));
    events_.push_back(eventAt(span.columns.to, span.group, Passing::Leave));
    const auto group = static_cast<std::size_t>(span.group);
    if (group >= over_.size()) over_.resize(group + 1), openness_.resize(group + 1);
    openness_[group] = span.openness;
  }
  if (events_.empty()) return;
  for (const Columns dark : dark_) {
    events_.push_back(eventAt(dark.from, kDark, Passing::Enter));
    events_.push_back(eventAt(dark.to, kDark, Passing::Leave));
  }
  sortFew(events_);
}

void RowLight::pass(std::uint64_t event) {
  const int group = groupOf(event);
  const bool enter = (event & 1u) == 0;
  if (group == kDark) {
    isDark_ = enter;
    return;
  }
  int& over = over_[static_cast<std::size_t>(group)];
  over += enter ? 1 : -1;
  if (over != (enter ? 1 : 0)) return;
  const auto at = std::find_if(dimmed_.begin(), dimmed_.end(),
                               [group](const Dimmed& d) { return d.group >= group; });
  if (enter)
    dimmed_.insert(at, {group, openness_[static_cast<std::size_t>(group)]});
  else
    dimmed_.erase(at);
}

double RowLight::lost() const {
  if (isDark_) return 1.0;
  double through = 1.0;
  for (const Dimmed& dimmed : dimmed_) through *= dimmed.openness;
  return 1.0 - through;
}

void RowLight::add(const std::vector<Span>& spans, double units, std::int64_t* changes) {
  const auto take = [changes](Columns columns, std::int64_t taken) {
    changes[columns.from] += taken;
    changes[columns.to] -= taken;
  };
  if (spans.size() == 1)
    return take(spans[0].columns, wholeUnits(units * (1.0 - spans[0].openness)));
  joinOpaque(spans);
  sortEvents(spans);
  if (events_.empty()) {
    for (const Columns dark : dark_) take(dark, wholeUnits(units));
    return;
  }
  std::int64_t before = 0;
  for (std::size_t i = 0; i < events_.size(); ++i) {
    pass(events_[i]);
    const int column = columnOf(events_[i]);
    if (i + 1 < events_.size() && columnOf(events_[i + 1]) == column) continue;
    const std::int64_t now = wholeUnits(units * lost());
    changes[column] += now - before;
    before = now;
  }
}

}  // namespace tussock
