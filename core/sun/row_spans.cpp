// SPDX-License-Identifier: MIT
#include "core/sun/row_spans.h"

#include <algorithm>

namespace tussock {

namespace {

// Places are counted in cells so that the centre of row or column 0 is at 1: what is held between
// two of them is never below 0, and whole numbers are found by cutting off. No branches, so that
// the compiler finds several at once.
double held(double place, int least, int most) {
  return std::min(static_cast<double>(most), std::max(static_cast<double>(least), place));
}
// The first centre not below a place, from `least` up to `most`.
int firstFrom(double place, int least, int most) {
  const double at = held(place, least + 1, most + 1);
  const int whole = static_cast<int>(at);
  return whole + static_cast<int>(whole < at) - 1;
}
// The one past the last centre not above it.
int endAt(double place, int least, int most) {
  return static_cast<int>(held(place, least, most));
}

}  // namespace

RowSpans::RowSpans(const Grid& grid)
    : grid_(grid),
      spans_(static_cast<std::size_t>(grid.rows)),
      wests_(spans_.size()),
      easts_(spans_.size()) {
  const auto isAsked = [](const Columns& columns) { return columns.from < columns.to; };
  const auto& asked = grid.asked;
  lowest_ = static_cast<int>(std::find_if(asked.begin(), asked.end(), isAsked) - asked.begin());
  highest_ = static_cast<int>(asked.rend() - std::find_if(asked.rbegin(), asked.rend(), isAsked));
}

void RowSpans::follow(const Ring& outline) {
  findCorners(outline);
  if (first_ >= end_) {
    first_ = end_ = 0;
    return;
  }
  followEdges();
  setColumns();
}

void RowSpans::findCorners(const Ring& outline) {
  const double perMetre = 1.0 / grid_.cell;
  corners_.resize(outline.size());
  first_ = highest_, end_ = lowest_;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point at = (outline[i] - grid_.low) * perMetre + Point{0.5, 0.5};
    const Corner corner{at, firstFrom(at.y, lowest_, highest_), endAt(at.y, lowest_, highest_)};
    first_ = std::min(first_, corner.first);
    end_ = std::max(end_, corner.end);
    corners_[i] = corner;
  }
}

// The outline runs anticlockwise: edges going north bound it on the east, edges going south on the
// west.
void RowSpans::followEdges() {
  const auto rows = static_cast<std::ptrdiff_t>(first_);
  const auto end = static_cast<std::ptrdiff_t>(end_);
  std::fill(wests_.begin() + rows, wests_.begin() + end, kNowhere);
  std::fill(easts_.begin() + rows, easts_.begin() + end, -kNowhere);
  const Corner* last = &corners_.back();
  for (const Corner& next : corners_) {
    if (next.at.y > last->at.y)
      followEdge(*last, next, easts_.data());
    else if (next.at.y < last->at.y)
      followEdge(next, *last, wests_.data());
    last = &next;
  }
}

void RowSpans::followEdge(const Corner& low, const Corner& high, double* places) {
  if (low.first >= high.end) return;  // most edges of a round outline
  const double slope = (high.at.x - low.at.x) / (high.at.y - low.at.y);
  for (int row = low.first; row < high.end; ++row)
    places[row] = low.at.x + slope * (row + 1 - low.at.y);
}

void RowSpans::setColumns() {
  const Columns* const asked = grid_.asked.data();
  for (int row = first_; row < end_; ++row) {
    const Columns within = asked[row];
    const auto at = static_cast<std::size_t>(row);
    spans_[at] = {firstFrom(wests_[at], within.from, within.to),
                  endAt(easts_[at], within.from, within.to)};
  }
}

}  // namespace tussock
