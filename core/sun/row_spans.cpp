// SPDX-License-Identifier: MIT
#include "core/sun/row_spans.h"

#include <algorithm>

namespace tussock {

namespace {

// The first whole number not below a place, and the one past the last not above it, between the
// least and the most.
int firstFrom(double place, int least, int most) {
  if (!(place > least)) return least;
  if (place >= most) return most;
  const int whole = static_cast<int>(place);
  return whole + (whole < place ? 1 : 0);
}
int endAt(double place, int least, int most) {
  if (!(place >= least)) return least;
  return place >= most ? most : static_cast<int>(place) + 1;
}

}  // namespace

RowSpans::RowSpans(const Grid& grid) : grid_(grid), spans_(static_cast<std::size_t>(grid.rows)) {
  const auto isAsked = [](const Columns& columns) { return columns.from < columns.to; };
  const auto& asked = grid.asked;
  lowest_ = static_cast<int>(std::find_if(asked.begin(), asked.end(), isAsked) - asked.begin());
  highest_ = static_cast<int>(asked.rend() - std::find_if(asked.rbegin(), asked.rend(), isAsked));
}

// In columns and rows, so that cell centres have whole coordinates. The outline runs anticlockwise:
// edges going north bound it on the east, edges going south on the west.
void RowSpans::follow(const Ring& outline) {
  const auto inCells = [this](Point p) {
    return (p - grid_.low) * (1.0 / grid_.cell) - Point{0.5, 0.5};
  };
  double low = 1e300;
  double high = -1e300;
  for (const Point p : outline) low = std::min(low, p.y), high = std::max(high, p.y);
  first_ = firstFrom(inCells({0.0, low}).y, lowest_, highest_);
  end_ = std::max(first_, endAt(inCells({0.0, high}).y, lowest_, highest_));
  if (first_ == end_) return;
  std::fill(spans_.begin() + first_, spans_.begin() + end_, Columns{});
  Point last = inCells(outline.back());
  for (const Point corner : outline) {
    const Point next = inCells(corner);
    followEdge(last, next);
    last = next;
  }
}

void RowSpans::followEdge(Point from, Point to) {
  const bool north = to.y > from.y;
  const Point low = north ? from : to;
  const Point high = north ? to : from;
  const int first = firstFrom(low.y, first_, end_);
  const int end = endAt(high.y, first_, end_);
  if (first >= end || low.y == high.y) return;
  const double slope = (high.x - low.x) / (high.y - low.y);
  for (int j = first; j < end; ++j) {
    const double x = low.x + slope * (j - low.y);
    const auto row = static_cast<std::size_t>(j);
    const Columns& asked = grid_.asked[row];
    if (north)
      spans_[row].to = endAt(x, asked.from, asked.to);
    else
      spans_[row].from = firstFrom(x, asked.from, asked.to);
  }
}

}  // namespace tussock
