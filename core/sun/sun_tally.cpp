// SPDX-License-Identifier: MIT
#include "core/sun/sun_tally.h"

#include <algorithm>

namespace tussock {

SunCount::SunCount(const Grid& grid) : starts(grid.asked.starts()) {
  for (auto& half : changes) half.resize(starts.back() + starts.size());
}

void SunCount::clear() {
  for (int half = 0; half < 2; ++half) {
    open[half] = 0;
    std::fill(changes[half].begin(), changes[half].end(), 0);
  }
}

void SunCount::add(const SunCount& other, std::int64_t times) {
  for (int half = 0; half < 2; ++half) {
    open[half] += other.open[half] * times;
    std::int64_t* to = changes[half].data();
    const std::int64_t* from = other.changes[half].data();
    const std::size_t size = changes[half].size();
    for (std::size_t i = 0; i < size; ++i) to[i] += from[i] * times;
  }
}

void SunCount::row(HalfDay half, int row, std::vector<double>& hours) const {
  const auto at = static_cast<std::size_t>(row);
  const std::int64_t* change = changes[static_cast<int>(half)].data() + starts[at] + at;
  hours.resize(starts[at + 1] - starts[at]);
  std::int64_t left = open[static_cast<int>(half)];
  for (std::size_t i = 0; i < hours.size(); ++i) {
    left -= change[i];
    hours[i] = static_cast<double>(left) / kUnitsPerHour;
  }
}

std::int64_t* SunCount::changesOf(HalfDay half, int row) {
  const auto at = static_cast<std::size_t>(row);
  return changes[static_cast<int>(half)].data() + starts[at] + at;
}

namespace {
void addDark(std::span<const Span> runs, std::int64_t units, std::int64_t* changes) {
  for (const Span& run : runs) {
    changes[run.columns.from] += units;
    changes[run.columns.to] -= units;
  }
}
}  // namespace

SunTally::SunTally(const Grid& grid)
    : count_(grid), finder_(grid), dark_(grid), spans_(static_cast<std::size_t>(grid.rows)) {}

void SunTally::take(const std::vector<Shadow>& shadows, double hours, HalfDay half) {
  const double units = hours * kUnitsPerHour;
  count_.open[static_cast<int>(half)] += wholeUnits(units);
  if (shadows.empty()) return;
  steps_.push_back({units, half});
  first_ = static_cast<int>(spans_.size()), end_ = 0;
  for (const Shadow& shadow : shadows)
    if (densities_.of(shadow.openness) >= kOpaque) darken(shadow);
  for (const Shadow& shadow : shadows)
    if (const Density density = densities_.of(shadow.openness); density < kOpaque)
      dim(shadow, density);
  holdDark();
  if (held_ > kMostHeld) enterAll();
}

void SunTally::darken(const Shadow& shadow) {
  finder_.follow(shadow.outline);
  if (finder_.first() >= finder_.end()) return;
  for (int row = finder_.first(); row < finder_.end(); ++row) {
    const Columns columns = finder_.at(row);
    if (columns.from < columns.to) dark_.darken(row, columns);
  }
  first_ = std::min(first_, finder_.first()), end_ = std::max(end_, finder_.end());
}

// What lies in the dark already makes no difference.
void SunTally::dim(const Shadow& shadow, Density density) {
  finder_.follow(shadow.outline);
  for (int row = finder_.first(); row < finder_.end(); ++row) {
    const Columns columns = finder_.at(row);
    if (columns.from < columns.to && !dark_.isDark(row, columns))
      hold(row, {columns, density, shadow.group});
  }
}

void SunTally::holdDark() {
  for (int row = first_; row < end_; ++row)
    dark_.takeRuns(row, [&](Columns run) { hold(row, {run, kOpaque}); });
}

void SunTally::hold(int row, Span span) {
  span.step = static_cast<int>(steps_.size()) - 1;
  spans_[static_cast<std::size_t>(row)].push_back(span);
  ++held_;
}

void SunTally::enterAll() {
  for (std::size_t row = 0; row < spans_.size(); ++row) {
    enterRow(spans_[row], static_cast<int>(row));
    spans_[row].clear();
  }
  steps_.clear();
  held_ = 0;
}

void SunTally::enterRow(std::span<const Span> spans, int row) {
  std::int64_t* const changes[2] = {count_.changesOf(HalfDay::BeforeNoon, row),
                                    count_.changesOf(HalfDay::AfterNoon, row)};
  for (const Span& span : spans) {
    const std::int64_t* const of =
        changes[static_cast<int>(steps_[static_cast<std::size_t>(span.step)].half)];
    __builtin_prefetch(of + span.columns.from, 1);
    __builtin_prefetch(of + span.columns.to, 1);
  }
  for (std::size_t i = 0, next = 0; i < spans.size(); i = next) {
    while (next < spans.size() && spans[next].step == spans[i].step) ++next;
    const Step& step = steps_[static_cast<std::size_t>(spans[i].step)];
    const auto ofStep = spans.subspan(i, next - i);
    std::int64_t* const to = changes[static_cast<int>(step.half)];
    // What is dark comes last, and its runs do not meet.
    if (ofStep.front().density >= kOpaque)
      addDark(ofStep, wholeUnits(step.units), to);
    else
      light_.add(ofStep, step.units, to);
  }
}

const SunCount& SunTally::count() {
  enterAll();
  return count_;
}

void SunTally::clear() {
  enterAll();
  count_.clear();
}

}  // namespace tussock
