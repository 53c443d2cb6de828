// SPDX-License-Identifier: MIT
#include "core/sun/row_light.h"

#include <algorithm>

namespace tussock {

std::int64_t wholeUnits(double units) {
  return static_cast<std::int64_t>(units < 0.0 ? units - 0.5 : units + 0.5);
}

void RowLight::sortOut(const std::vector<Span>& spans) {
  Columns all = spans[0].columns;
  for (const Span& span : spans) {
    all.from = std::min(all.from, span.columns.from);
    all.to = std::max(all.to, span.columns.to);
  }
  dark_.clear(all);
  places_.clear(all);
  for (const Span& span : spans)
    if (span.openness <= 0.0) dark_.set(span.columns);
  dimmed_.clear();
  for (const Span& span : spans)
    if (span.openness > 0.0 && !dark_.hasAll(span.columns)) dimmed_.push_back(span);
}

void RowLight::findStretches() {
  places_.setEdgesOf(dark_);
  for (const Span& span : dimmed_) places_.set(span.columns.from), places_.set(span.columns.to);
  stretches_.clear();
  places_.each([this](int column) {
    const auto at = static_cast<std::size_t>(column);
    if (at >= stretchAt_.size()) stretchAt_.resize(at + 1);
    stretchAt_[at] = stretches_.size();
    stretches_.push_back({column});
  });
}

void RowLight::dim() {
  for (const Span& span : dimmed_) {
    const std::size_t end = stretchAt_[static_cast<std::size_t>(span.columns.to)];
    for (std::size_t i = stretchAt_[static_cast<std::size_t>(span.columns.from)]; i < end; ++i) {
      Stretch& stretch = stretches_[i];
      if (stretch.dimmedBy == span.group) continue;
      stretch.dimmedBy = span.group;
      stretch.through *= span.openness;
    }
  }
}

void RowLight::add(const std::vector<Span>& spans, double units, std::int64_t* changes) {
  if (spans.empty()) return;
  if (spans.size() == 1) {
    const std::int64_t taken = wholeUnits(units * (1.0 - spans[0].openness));
    changes[spans[0].columns.from] += taken;
    changes[spans[0].columns.to] -= taken;
    return;
  }
  sortOut(spans);
  findStretches();
  dim();
  std::int64_t before = 0;
  for (const Stretch& stretch : stretches_) {
    const double lost = dark_.has(stretch.from) ? 1.0 : 1.0 - stretch.through;
    const std::int64_t now = wholeUnits(units * lost);
    changes[stretch.from] += now - before;
    before = now;
  }
}

}  // namespace tussock
