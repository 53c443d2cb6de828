// SPDX-License-Identifier: MIT
#include "core/sun/contours.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <unordered_map>
#include <unordered_set>

namespace tussock {

namespace {

using CellEdge = std::int64_t;  // between two neighbouring centres; see edgeOf

struct Crossing {
  CellEdge edge = 0;
  Point at;
};
struct Segment {
  Crossing from, to;
  bool used = false;
};

class Tracer {
 public:
  Tracer(const HourGrid& grid, double level) : grid_(grid), level_(level) {}

  std::vector<ContourLine> lines() {
    for (int row = 0; row + 1 < grid_.rows; ++row)
      for (int column = 0; column + 1 < grid_.columns; ++column) addSquare(column, row);
    for (std::size_t i = 0; i < segments_.size(); ++i) {
      starts_[segments_[i].from.edge] = i;
      ends_.insert(segments_[i].to.edge);
    }
    std::vector<ContourLine> result;
    for (Segment& segment : segments_)  // open lines from where they begin
      if (!segment.used && !ends_.contains(segment.from.edge)) result.push_back(follow(segment));
    for (Segment& segment : segments_)
      if (!segment.used) result.push_back(follow(segment));
    return result;
  }

 private:
  // A square's corners anticlockwise from its south-western; edge i leads from corner i to the
  // next.
  struct Square {
    std::array<float, 4> hours;
    std::array<Crossing, 4> edges;
  };

  [[nodiscard]] CellEdge edgeOf(int column, int row, int upright) const {
    return (CellEdge(row) * grid_.columns + column) * 2 + upright;
  }

  [[nodiscard]] Crossing crossingOf(CellEdge edge, Point a, Point b, float before,
                                    float after) const {
    const double share = (level_ - before) / (double(after) - before);
    return {edge, a + (b - a) * share};
  }

  void addSquare(int column, int row) {
    const std::array<std::array<int, 2>, 4> corners{
        {{column, row}, {column + 1, row}, {column + 1, row + 1}, {column, row + 1}}};
    const std::array<CellEdge, 4> edges{edgeOf(column, row, 0), edgeOf(column + 1, row, 1),
                                        edgeOf(column, row + 1, 0), edgeOf(column, row, 1)};
    Square square{};
    int sunny = 0;
    for (std::size_t i = 0; i < 4; ++i) {
      square.hours[i] = grid_.at(corners[i][0], corners[i][1]);
      if (std::isnan(square.hours[i])) return;
      sunny += square.hours[i] >= level_ ? 1 : 0;
    }
    if (sunny == 0 || sunny == 4) return;
    for (std::size_t i = 0; i < 4; ++i) {
      const std::size_t next = (i + 1) % 4;
      square.edges[i] = crossingOf(edges[i], grid_.centreOf(corners[i][0], corners[i][1]),
                                   grid_.centreOf(corners[next][0], corners[next][1]),
                                   square.hours[i], square.hours[next]);
    }
    connect(square);
  }

  [[nodiscard]] bool sunny(const Square& square, std::size_t corner) const {
    return square.hours[corner % 4] >= level_;
  }

  // Walking around the square, a line begins where one steps out of the sun and ends where one
  // steps into it: the sunny corner is then on its left.
  void connect(const Square& square) {
    double mean = 0.0;
    for (const float hours : square.hours) mean += hours / 4.0;
    const bool joined = mean >= level_;  // sunny corners that face one another
    for (std::size_t i = 0; i < 4; ++i) {
      if (!sunny(square, i) || sunny(square, i + 1)) continue;
      std::size_t end = i;
      if (crosswise(square)) {
        end = joined ? i + 1 : i + 3;
      } else {
        do ++end;
        while (sunny(square, end) == sunny(square, end + 1));
      }
      segments_.push_back({square.edges[i], square.edges[end % 4]});
    }
  }

  [[nodiscard]] bool crosswise(const Square& square) const {
    return sunny(square, 0) == sunny(square, 2) && sunny(square, 1) == sunny(square, 3) &&
           sunny(square, 0) != sunny(square, 1);
  }

  ContourLine follow(Segment& first) {
    ContourLine line{{first.from.at}, false};
    for (Segment* segment = &first; segment != nullptr;) {
      segment->used = true;
      line.points.push_back(segment->to.at);
      const auto next = starts_.find(segment->to.edge);
      segment = next == starts_.end() || segments_[next->second].used ? nullptr
                                                                      : &segments_[next->second];
      if (!segment) line.closed = next != starts_.end() && &segments_[next->second] == &first;
    }
    if (line.closed) line.points.pop_back();
    return line;
  }

  const HourGrid& grid_;
  double level_;
  std::vector<Segment> segments_;
  std::unordered_map<CellEdge, std::size_t> starts_;
  std::unordered_set<CellEdge> ends_;
};

}  // namespace

std::vector<ContourLine> contoursOf(const HourGrid& grid, double level) {
  return Tracer(grid, level).lines();
}

double lengthOf(const ContourLine& line) {
  double length = line.closed ? distance(line.points.back(), line.points.front()) : 0.0;
  for (std::size_t i = 1; i < line.points.size(); ++i)
    length += distance(line.points[i - 1], line.points[i]);
  return length;
}

Point middleOf(const ContourLine& line) {
  double left = lengthOf(line) / 2.0;
  for (std::size_t i = 1; i < line.points.size(); ++i) {
    const double step = distance(line.points[i - 1], line.points[i]);
    if (step >= left && step > 0.0)
      return line.points[i - 1] + (line.points[i] - line.points[i - 1]) * (left / step);
    left -= step;
  }
  return line.points.back();
}

}  // namespace tussock
