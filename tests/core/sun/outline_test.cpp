// SPDX-License-Identifier: MIT
// Outlines of arcs and edges, and the rows of cells that run through them.
#include "core/sun/outline.h"

#include <cmath>
#include <numbers>
#include <random>

#include <gtest/gtest.h>

#include "core/sun/row_spans.h"

namespace tussock {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;

double within(std::mt19937_64& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

Point turn(double t) {
  return {std::cos(t), std::sin(t)};
}

// An ellipse that leans, somewhere about a ground of 20 m by 20 m.
Arc anyEllipse(std::mt19937_64& random) {
  const Point u = turn(within(random, 0, kTurn)) * within(random, 0.05, 8);
  const Point left = Point{-u.y, u.x} * within(random, 0.1, 3);
  return {{within(random, -4, 24), within(random, -4, 24)}, u, left + u * within(random, -1, 1)};
}

// Its edge cut off, in two places, by what a cone, a column or a sawn-off disc would have there.
Outline anyOutline(std::mt19937_64& random) {
  Arc arc = anyEllipse(random);
  const double from = within(random, 0, kTurn);
  switch (random() % 4) {
    case 0:
      return {{arc}, {}};
    case 1: {
      const double half = within(random, 0.1, 1.5);
      arc.from = turn(from + half), arc.to = turn(from - half);
      return {{arc}, {arc.at(turn(from) * (1.0 / std::cos(half)))}};
    }
    case 2: {
      Arc far = arc;
      arc.from = turn(from), arc.to = arc.from * -1.0;
      far.from = arc.to, far.to = arc.from;
      far.centre += (arc.at({arc.from.y, -arc.from.x}) - arc.centre) * within(random, 0, 4);
      return {{arc, far}, {}};
    }
    default:
      arc.from = turn(from), arc.to = turn(from + within(random, 0.2, 6));
      return {{arc}, {}};
  }
}

Grid gridOf(int columns, int rows, double cell) {
  return {{0, 0}, cell, columns, rows, AskedCells(columns, rows)};
}

TEST(OutlineTest, HoldsTheAreaThatItsCornersClose) {
  std::mt19937_64 random(5);
  for (int i = 0; i < 200; ++i) {
    const Outline outline = anyOutline(random);
    const Ring ring = ringOf(outline, 2000);
    int inside = 0;
    for (int k = 0; k < 200; ++k) {
      const Point p{within(random, -10, 30), within(random, -10, 30)};
      EXPECT_EQ(contains(outline, p), contains(ring, p)) << i;
      inside += contains(ring, p);
    }
    const double ellipse = std::numbers::pi * cross(outline.arcs[0].u, outline.arcs[0].v);
    if (outline.arcs[0].isWhole()) {
      EXPECT_NEAR(signedArea(ring) / ellipse, 1.0, 1e-5);
    }
    EXPECT_GE(signedArea(ring), 0.0);
  }
}

// Every cell's centre, one by one.
TEST(OutlineTest, RowsRunThroughTheCellsWhoseCentresItHolds) {
  std::mt19937_64 random(6);
  const Grid grid = gridOf(80, 70, 0.25);
  RowSpans spans(grid);
  int shaded = 0;
  for (int i = 0; i < 500; ++i) {
    const Outline outline = anyOutline(random);
    spans.follow(outline);
    for (int row = 0; row < grid.rows; ++row)
      for (int column = 0; column < grid.columns; ++column) {
        const Point centre{(column + 0.5) * grid.cell, (row + 0.5) * grid.cell};
        const bool isIn = row >= spans.first() && row < spans.end() &&
                          column >= spans.at(row).from && column < spans.at(row).to;
        ASSERT_EQ(isIn, contains(outline, centre)) << i << " row " << row << " column " << column;
        shaded += isIn;
      }
  }
  EXPECT_GT(shaded, 100'000);
}

// Edges along a row, through the centres of its cells, and a corner that is there twice.
TEST(OutlineTest, EdgesAlongARowBoundItFromEndToEnd) {
  const Grid grid = gridOf(8, 6, 1.0);
  RowSpans spans(grid);
  spans.follow({{}, {{1.5, 1.5}, {5.5, 1.5}, {5.5, 1.5}, {5.5, 3.5}, {1.5, 3.5}}});
  ASSERT_EQ(spans.first(), 1);
  ASSERT_EQ(spans.end(), 4);
  for (int row = 1; row < 4; ++row) {
    EXPECT_EQ(spans.at(row).from, 1) << row;
    EXPECT_EQ(spans.at(row).to, 6) << row;
  }
}

TEST(OutlineTest, NothingHoldsNothing) {
  const Grid grid = gridOf(4, 4, 1.0);
  RowSpans spans(grid);
  spans.follow(Outline());
  EXPECT_EQ(spans.first(), spans.end());
  EXPECT_FALSE(contains(Outline(), {1, 1}));
}

}  // namespace
}  // namespace tussock
