// SPDX-License-Identifier: MIT
#include "core/sun/row_spans.h"

#include <algorithm>
#include <cmath>

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

constexpr double kNowhere = 1e300;

// Whether an arc goes on beyond a turn that lies less than half round from its start, or, for the
// second time, as far again and half round more.
bool passes(const Arc& arc, Point turn, bool second) {
  const bool half = cross(arc.from, arc.to) <= 0.0;  // or more
  const bool beyond = cross(turn, arc.to) > 0.0;
  return second ? half && beyond : half || beyond;
}

}  // namespace

RowSpans::RowSpans(const Grid& grid)
    : grid_(grid),
      perMetre_(1.0 / grid.cell),
      whole_(grid.asked.cells() ==
             static_cast<std::size_t>(grid.rows) * static_cast<std::size_t>(grid.columns)),
      spans_(static_cast<std::size_t>(grid.rows)),
      wests_(spans_.size()),
      easts_(spans_.size()) {
  highest_ = grid.rows;
  while (lowest_ < highest_ && grid.asked.width(lowest_) == 0) ++lowest_;
  while (highest_ > lowest_ && grid.asked.width(highest_ - 1) == 0) --highest_;
}

void RowSpans::follow(const Outline& outline) {
  findBounds(outline);
  if (first_ >= end_) {
    first_ = end_ = 0;
    return;
  }
  std::fill(wests_.begin() + first_, wests_.begin() + end_, kNowhere);
  std::fill(easts_.begin() + first_, easts_.begin() + end_, -kNowhere);
  for (const Bound& bound : bounds_) follow(bound);
  setColumns();
}

Point RowSpans::inCells(Point p) const {
  return (p - grid_.low) * perMetre_ + Point{0.5, 0.5};
}

RowSpans::Level RowSpans::levelAt(double y) const {
  return {y, firstFrom(y, lowest_, highest_), endAt(y, lowest_, highest_)};
}

// The highest place of an ellipse is where its half diameters rise by the most together; its width
// along a row is that of the chord through the centre.
RowSpans::Ellipse RowSpans::ellipseOf(const Arc& arc) const {
  const double squared = arc.u.y * arc.u.y + arc.v.y * arc.v.y;
  const double height = std::sqrt(squared);
  return {inCells(arc.centre), height * perMetre_,
          (arc.u.x * arc.u.y + arc.v.x * arc.v.y) / squared,
          cross(arc.u, arc.v) / height * perMetre_};
}

void RowSpans::findBounds(const Outline& outline) {
  bounds_.clear();
  first_ = highest_, end_ = lowest_;
  if (outline.empty()) return;
  if (outline.corners.empty() && outline.arcs[0].isWhole()) return addWhole(outline.arcs[0]);
  Point last =
      inCells(outline.corners.empty() ? outline.arcs.back().end() : outline.corners.back());
  Level level = levelAt(last.y);
  const auto edgeTo = [&](Point next) {
    const Level nextLevel = levelAt(next.y);
    addEdge(last, level, next, nextLevel);
    last = next, level = nextLevel;
  };
  for (const Arc& arc : outline.arcs) {
    edgeTo(inCells(arc.start()));
    const Level start = level;
    last = inCells(arc.end()), level = levelAt(last.y);
    addArc(arc, start, level);
  }
  for (const Point corner : outline.corners) edgeTo(inCells(corner));
}

void RowSpans::addWhole(const Arc& arc) {
  const Ellipse whole = ellipseOf(arc);
  add(whole, Side::Both, levelAt(whole.centre.y - whole.height).first,
      levelAt(whole.centre.y + whole.height).end);
}

// The outline runs anticlockwise: what goes north bounds it on the east, what goes south on the
// west. An arc turns at its ellipse's highest and lowest places.
void RowSpans::addArc(const Arc& arc, Level start, Level end) {
  const Ellipse of = ellipseOf(arc);
  const Point highest{arc.u.y, arc.v.y};
  const double turn = cross(arc.from, highest);
  bool north = turn > 0.0 || (turn == 0.0 && dot(arc.from, highest) < 0.0);
  const auto go = [&](Level to) {
    if (north)
      add(of, Side::East, start.first, to.end);
    else
      add(of, Side::West, to.first, start.end);
    start = to;
  };
  for (const bool second : {false, true}) {
    if (!passes(arc, north ? highest : highest * -1.0, second)) break;
    go(levelAt(of.centre.y + (north ? of.height : -of.height)));
    north = !north;
  }
  go(end);
}

void RowSpans::addEdge(Point from, Level start, Point to, Level end) {
  if (from.y == to.y) return;  // what it joins bounds the row that it may lie on
  const bool north = to.y > from.y;
  const int first = north ? start.first : end.first;
  const int past = north ? end.end : start.end;
  if (first >= past) return;
  add({from, 1.0, (to.x - from.x) / (to.y - from.y), 0.0}, north ? Side::East : Side::West, first,
      past);
}

void RowSpans::add(const Ellipse& of, Side side, int first, int end) {
  if (first >= end) return;
  first_ = std::min(first_, first), end_ = std::max(end_, end);
  bounds_.push_back({of, side, first, end});
}

void RowSpans::follow(const Bound& bound) {
  const auto [centre, height, lean, width] = bound.of;
  double* const wests = wests_.data();
  double* const easts = easts_.data();
  const double perHeight = 1.0 / height;
  const auto middle = [&](int row) { return centre.x + lean * (row + 1 - centre.y); };
  const auto half = [&](int row) {
    const double share = (row + 1 - centre.y) * perHeight;
    return width * std::sqrt(std::max(0.0, 1.0 - share * share));
  };
  if (width == 0.0) {
    double* const places = bound.side == Side::East ? easts : wests;
    for (int row = bound.first; row < bound.end; ++row) places[row] = middle(row);
  } else if (bound.side == Side::East) {
    for (int row = bound.first; row < bound.end; ++row) easts[row] = middle(row) + half(row);
  } else if (bound.side == Side::West) {
    for (int row = bound.first; row < bound.end; ++row) wests[row] = middle(row) - half(row);
  } else {
    for (int row = bound.first; row < bound.end; ++row) {
      const double wide = half(row);
      wests[row] = middle(row) - wide, easts[row] = middle(row) + wide;
    }
  }
}

// Rows that are asked for whole, the most by far, need no looking up.
void RowSpans::setColumns() {
  const double* const wests = wests_.data();
  const double* const easts = easts_.data();
  Columns* const spans = spans_.data();
  const int columns = grid_.columns;
  if (whole_)
    for (int row = first_; row < end_; ++row)
      spans[row] = {firstFrom(wests[row], 0, columns), endAt(easts[row], 0, columns)};
  else
    for (int row = first_; row < end_; ++row) spans[row] = askedOf(row, wests[row], easts[row]);
}

Columns RowSpans::askedOf(int row, double west, double east) const {
  const AskedCells& asked = grid_.asked;
  const auto runs = asked.runs(row);
  if (runs.empty()) return {};
  const int least = runs.front().from, most = runs.back().to;
  return {asked.place(row, firstFrom(west, least, most)),
          asked.place(row, endAt(east, least, most))};
}

}  // namespace tussock
