// SPDX-License-Identifier: MIT
// Draws the pointer to corners, edges and right angles that are near.
#pragma once

#include <optional>
#include <QPainter>
#include <utility>
#include <vector>

#include "core/model/yard.h"

class QPainter;

namespace tussock {

class SceneMapping;

enum class SnapKind { None, First, Corner, Edge, RightAngle, Axis };

struct Snap {
  Point at;
  SnapKind kind = SnapKind::None;
  Point from;  // where a guide starts, for right angles and axes
};

struct SnapTargets {
  std::vector<Point> corners;
  std::vector<std::pair<Point, Point>> edges;
};
// Everything with corners, and centres of trees, but for the objects left out.
[[nodiscard]] SnapTargets snapTargets(const Yard& yard, const std::vector<ObjectRef>& without);

// The corners drawn so far decide the right angles; three or more can be closed at the first.
// `reach` in metres.
[[nodiscard]] Snap snapped(Point p, const SnapTargets& targets, const std::vector<Point>& drawn,
                           double reach);

inline constexpr double kSnapPixels = 9.0;
void paintSnap(QPainter& painter, const SceneMapping& mapping, const Snap& snap);

}  // namespace tussock
