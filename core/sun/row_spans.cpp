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
  Corner last = cornerAt(inCells(outline.back()));
  for (const Point p : outline) {
    const Corner next = cornerAt(inCells(p));
    if (next.at.y > last.at.y)
      followEdge(last, next, &Columns::to);
    else if (next.at.y < last.at.y)
      followEdge(next, last, &Columns::from);
    last = next;
  }
}

RowSpans::Corner RowSpans::cornerAt(Point p) const {
  return {p, firstFrom(p.y, first_, end_), endAt(p.y, first_, end_)};
}

void RowSpans::followEdge(const Corner& low, const Corner& high, int Columns::*side) {
  if (low.first >= high.end) return;  // most edges of a round outline
  const double slope = (high.at.x - low.at.x) / (high.at.y - low.at.y);
  for (int j = low.first; j < high.end; ++j) {
    const double x = low.at.x + slope * (j - low.at.y);
    const auto row = static_cast<std::size_t>(j);
    const Columns& asked = grid_.asked[row];
    spans_[row].*side =
        side == &Columns::to ? endAt(x, asked.from, asked.to) : firstFrom(x, asked.from, asked.to);
  }
}

}  // namespace tussock
