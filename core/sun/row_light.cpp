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

void change(Columns columns, std::int64_t units, std::int64_t* changes) {
  changes[columns.from] += units;
  changes[columns.to] -= units;
}

Columns common(Columns a, Columns b) {
  return {std::max(a.from, b.from), std::min(a.to, b.to)};
}

// Where it is dark all is kept off already.
void addLit(Columns columns, std::int64_t kept, std::span<const Span> dark, std::int64_t* changes) {
  change(columns, kept, changes);
  for (const Span& run : dark)
    if (const Columns both = common(columns, run.columns); !both.empty())
      change(both, -kept, changes);
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

// What is dark stays dark, however often it is entered.
void RowLight::enter(std::span<const Span> spans) {
  const std::size_t size = spans.size();
  for (std::size_t i = 0; i < size;) {
    const Span& span = spans[i++];
    if (i == size || spans[i].group != span.group || span.density >= kOpaque) {
      enter(span.columns, span.density);
      continue;
    }
    const std::size_t end = endOfGroup(spans, i - 1);
    enterJoined(spans.subspan(i - 1, end - (i - 1)));
    i = end;
  }
}

void RowLight::add(std::span<const Span> spans, double units, std::int64_t* changes,
                   std::int64_t times) {
  if (spans.empty()) return;
  const std::int64_t all = times * wholeUnits(units);
  Columns within = spans.front().columns;
  for (const Span& span : spans)
    within = {std::min(within.from, span.columns.from), std::max(within.to, span.columns.to)};
  places_.clear(within);
  if (denser_.size() <= static_cast<std::size_t>(within.to))
    denser_.resize(static_cast<std::size_t>(within.to) + 1);
  enter(spans);
  Density density = 0;
  std::int64_t before = 0;
  places_.each([&](int column) {
    density += std::exchange(denser_[static_cast<std::size_t>(column)], 0);
    const std::int64_t now =
        density >= kOpaque ? all : times * wholeUnits(units * keeping_.off(density));
    if (now == before) return;
    changes[column] += now - before;
    before = now;
  });
}

bool RowLight::sortFew(std::span<const Span> dim) {
  if (dim.size() > kFew) return false;
  for (std::size_t i = 0; i < dim.size(); ++i) {
    if (i > 0 && dim[i].group == dim[i - 1].group) return false;
    std::size_t at = i;
    for (; at > 0 && dim[i].columns.from < few_[at - 1]->columns.from; --at)
      few_[at] = few_[at - 1];
    few_[at] = &dim[i];
  }
  for (std::size_t i = 2; i < dim.size(); ++i)
    if (few_[i]->columns.from < std::max(few_[i - 2]->columns.to, few_[i - 1]->columns.to) &&
        few_[i - 1]->columns.from < few_[i - 2]->columns.to)
      return false;
  return true;
}

// Each for itself, and where they overlap what both keep off together less what each does.
void RowLight::addPair(const Span& first, const Span& second, std::span<const Span> dark,
                       double units, std::int64_t* changes) {
  const Columns both = common(first.columns, second.columns);
  if (both.empty()) return;
  const std::int64_t more = kept(units, first.density + second.density) -
                            kept(units, first.density) - kept(units, second.density);
  addLit(both, more, dark, changes);
}

// Most rows meet few shadows, of which no more than two run together: they need no looking for
// where the light changes.
void RowLight::add(std::span<const Span> dim, std::span<const Span> dark, double units,
                   std::int64_t* changes) {
  if (!sortFew(dim)) return add({dim.data(), dim.size() + dark.size()}, units, changes);
  for (const Span& run : dark) change(run.columns, wholeUnits(units), changes);
  for (std::size_t i = 0; i < dim.size(); ++i) {
    addLit(few_[i]->columns, kept(units, few_[i]->density), dark, changes);
    if (i > 0) addPair(*few_[i - 1], *few_[i], dark, units, changes);
  }
}

}  // namespace tussock
