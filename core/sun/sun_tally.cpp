// SPDX-License-Identifier: MIT
#include "core/sun/sun_tally.h"

#include <algorithm>

namespace tussock {

namespace {

constexpr double kUnitsPerHour = 1LL << 40;

// The first whole number not below a place, and the one past the last not above it, between 0 and
// `most`.
int firstFrom(double place, int most) {
  if (!(place > 0.0)) return 0;
  if (place >= most) return most;
  const int whole = static_cast<int>(place);
  return whole + (whole < place ? 1 : 0);
}
int endAt(double place, int most) {
  if (!(place >= 0.0)) return 0;
  return place >= most ? most : static_cast<int>(place) + 1;
}

std::int64_t rounded(double units) {  // not below zero
  return static_cast<std::int64_t>(units + 0.5);
}

// What gets through the groups of shadows over one place.
struct Light {
  int opaque = 0;
  double through = 1.0;

  void enter(double openness) { openness > 0.0 ? void(through *= openness) : void(++opaque); }
  void leave(double openness) { openness > 0.0 ? void(through /= openness) : void(--opaque); }
  [[nodiscard]] double lost() const { return opaque > 0 ? 1.0 : 1.0 - through; }
};

}  // namespace

SunTally::SunTally(const Grid& grid)
    : grid_(grid),
      spans_(static_cast<std::size_t>(grid.rows)),
      from_(static_cast<std::size_t>(grid.rows)),
      to_(static_cast<std::size_t>(grid.rows)) {
  const std::size_t size =
      (static_cast<std::size_t>(grid.columns) + 1) * static_cast<std::size_t>(grid.rows);
  for (auto& changes : changes_) changes.resize(size);
}

void SunTally::take(const std::vector<Shadow>& shadows, double hours, HalfDay half) {
  const double units = hours * kUnitsPerHour;
  open_[static_cast<int>(half)] += rounded(units);
  if (shadows.empty()) return;
  over_.resize(static_cast<std::size_t>(shadows.back().group + 1));
  for (const Shadow& shadow : shadows) collectSpans(shadow);
  std::int64_t* changes = changes_[static_cast<int>(half)].data();
  for (auto& spans : spans_) {
    if (!spans.empty()) takeRow(spans, units, changes);
    spans.clear();
    changes += grid_.columns + 1;
  }
}

// In columns and rows, so that cell centres have whole coordinates. The outline runs anticlockwise:
// edges going north bound it on the east, edges going south on the west.
void SunTally::collectSpans(const Shadow& shadow) {
  const auto inCells = [this](Point p) {
    return (p - grid_.low) * (1.0 / grid_.cell) - Point{0.5, 0.5};
  };
  double low = 1e300;
  double high = -1e300;
  for (const Point p : shadow.outline) low = std::min(low, p.y), high = std::max(high, p.y);
  const int first = firstFrom(inCells({0.0, low}).y, grid_.rows);
  const int end = endAt(inCells({0.0, high}).y, grid_.rows);
  if (first >= end) return;
  for (int j = first; j < end; ++j)
    from_[static_cast<std::size_t>(j)] = to_[static_cast<std::size_t>(j)] = 0;
  Point last = inCells(shadow.outline.back());
  for (const Point corner : shadow.outline) {
    const Point next = inCells(corner);
    followEdge(last, next);
    last = next;
  }
  for (int j = first; j < end; ++j) {
    const auto row = static_cast<std::size_t>(j);
    if (from_[row] < to_[row])
      spans_[row].push_back({from_[row], to_[row], shadow.openness, shadow.group});
  }
}

void SunTally::followEdge(Point from, Point to) {
  const bool north = to.y > from.y;
  const Point low = north ? from : to;
  const Point high = north ? to : from;
  const int first = firstFrom(low.y, grid_.rows);
  const int end = endAt(high.y, grid_.rows);
  if (first >= end || low.y == high.y) return;
  const double slope = (high.x - low.x) / (high.y - low.y);
  for (int j = first; j < end; ++j) {
    const double x = low.x + slope * (j - low.y);
    if (north)
      to_[static_cast<std::size_t>(j)] = endAt(x, grid_.columns);
    else
      from_[static_cast<std::size_t>(j)] = firstFrom(x, grid_.columns);
  }
}

void SunTally::takeRow(const std::vector<Span>& spans, double units, std::int64_t* changes) {
  if (spans.size() == 1) {
    const auto lost = rounded(units * (1.0 - spans[0].openness));
    changes[spans[0].from] += lost;
    changes[spans[0].to] -= lost;
    return;
  }
  events_.clear();
  for (const Span& span : spans) {
    events_.push_back({span.from, span.group, span.openness, 1});
    events_.push_back({span.to, span.group, span.openness, -1});
  }
  std::sort(events_.begin(), events_.end(),
            [](const Event& a, const Event& b) { return a.column < b.column; });
  Light light;
  std::int64_t lost = 0;
  for (std::size_t i = 0; i < events_.size(); ++i) {
    const Event& event = events_[i];
    int& over = over_[static_cast<std::size_t>(event.group)];
    over += event.change;
    if (event.change > 0 && over == 1) light.enter(event.openness);
    if (event.change < 0 && over == 0) light.leave(event.openness);
    if (i + 1 < events_.size() && events_[i + 1].column == event.column) continue;
    const std::int64_t now = i + 1 < events_.size() ? rounded(units * light.lost()) : 0;
    changes[event.column] += now - lost;
    lost = now;
  }
}

void SunTally::add(const SunTally& other) {
  for (int half = 0; half < 2; ++half) {
    open_[half] += other.open_[half];
    for (std::size_t i = 0; i < changes_[half].size(); ++i)
      changes_[half][i] += other.changes_[half][i];
  }
}

void SunTally::row(HalfDay half, int row, std::vector<double>& hours) const {
  const std::int64_t* changes = changes_[static_cast<int>(half)].data() +
                                static_cast<std::ptrdiff_t>(row) * (grid_.columns + 1);
  hours.resize(static_cast<std::size_t>(grid_.columns));
  std::int64_t left = open_[static_cast<int>(half)];
  for (std::size_t i = 0; i < hours.size(); ++i) {
    left -= changes[i];
    hours[i] = static_cast<double>(left) / kUnitsPerHour;
  }
}

}  // namespace tussock
