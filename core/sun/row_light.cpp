// SPDX-License-Identifier: MIT
#include "core/sun/row_light.h"

#include <algorithm>
#include <utility>

namespace tussock {

std::int64_t wholeUnits(double units) {
  return static_cast<std::int64_t>(units < 0.0 ? units - 0.5 : units + 0.5);
}

namespace {
std::size_t endOfGroup(std::span<const Span> spans, std::size_t first) {
  std::size_t end = first + 1;
  while (end < spans.size() && spans[end].group == spans[first].group &&
         spans[end].density < kOpaque)
    ++end;
  return end;
}
}  // namespace

void RowLight::enterJoined(std::span<const Span> ofOneGroup) {
  joined_.clear();
  for (const Span& span : ofOneGroup) joined_.push_back(span.columns);
  std::sort(joined_.begin(), joined_.end(), [](Columns a, Columns b) { return a.from < b.from; });
  const Density density = ofOneGroup.front().density;
  Columns run = joined_.front();
  for (const Columns next : joined_) {
    if (next.from > run.to) enter(std::exchange(run, next), density);
    run.to = std::max(run.to, next.to);
  }
  enter(run, density);
}

void RowLight::enter(std::span<const Span> spans) {
  for (std::size_t i = 0, next = 0; i < spans.size(); i = next) {
    next = i + 1;
    // What is dark stays dark, however often it is entered.
    if (spans[i].density < kOpaque) next = endOfGroup(spans, i);
    if (next == i + 1)
      enter(spans[i].columns, spans[i].density);
    else
      enterJoined(spans.subspan(i, next - i));
  }
}

void RowLight::add(std::span<const Span> spans, double units, std::int64_t* changes,
                   std::int64_t times) {
  if (spans.empty()) return;
  if (spans.size() == 1) {
    const Span& span = spans.front();
    const std::int64_t kept = times * wholeUnits(units * keeping_.off(span.density));
    changes[span.columns.from] += kept;
    changes[span.columns.to] -= kept;
    return;
  }
  Columns all = spans.front().columns;
  for (const Span& span : spans)
    all = {std::min(all.from, span.columns.from), std::max(all.to, span.columns.to)};
  places_.clear(all);
  if (denser_.size() <= static_cast<std::size_t>(all.to))
    denser_.resize(static_cast<std::size_t>(all.to) + 1);
  enter(spans);
  Density density = 0;
  std::int64_t before = 0;
  places_.each([&](int column) {
    density += std::exchange(denser_[static_cast<std::size_t>(column)], 0);
    const std::int64_t kept = times * wholeUnits(units * keeping_.off(density));
    changes[column] += kept - before;
    before = kept;
  });
}

}  // namespace tussock
