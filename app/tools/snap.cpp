// SPDX-License-Identifier: MIT
#include "app/tools/snap.h"

#include <array>
#include <cmath>

#include "app/canvas/scene_mapping.h"
#include "app/look/theme.h"
#include "app/tools/outline.h"

namespace tussock {

namespace {

void addOutline(SnapTargets& targets, const Outline& outline) {
  for (const Ring& ring : outline.rings) {
    targets.corners.insert(targets.corners.end(), ring.begin(), ring.end());
    for (std::size_t i = 0; i + 1 < ring.size(); ++i)
      targets.edges.emplace_back(ring[i], ring[i + 1]);
    if (outline.closed && ring.size() > 2) targets.edges.emplace_back(ring.back(), ring.front());
  }
}

bool isAmong(ObjectRef ref, const std::vector<ObjectRef>& refs) {
  return std::find(refs.begin(), refs.end(), ref) != refs.end();
}

struct Best {
  Snap snap;
  double away;
  void offer(Point at, double distanceTo, SnapKind kind, Point from = {}) {
    if (distanceTo >= away) return;
    snap = {at, kind, from};
    away = distanceTo;
  }
};

// Along the last side, square to it, and along the axes, all through the last corner.
void offerAngles(Best& best, Point p, const std::vector<Point>& drawn) {
  if (drawn.empty()) return;
  const Point from = drawn.back();
  const auto offer = [&](Point direction, SnapKind kind) {
    const Point at = from + direction * dot(p - from, direction);
    best.offer(at, distance(p, at), kind, from);
  };
  if (drawn.size() >= 2) {
    const Point side = from - drawn[drawn.size() - 2];
    const double length = std::hypot(side.x, side.y);
    if (length > 0.0) {
      const Point along = side * (1.0 / length);
      offer({-along.y, along.x}, SnapKind::RightAngle);
      offer(along, SnapKind::RightAngle);
    }
  }
  offer({1.0, 0.0}, SnapKind::Axis);
  offer({0.0, 1.0}, SnapKind::Axis);
}

}  // namespace

SnapTargets snapTargets(const Yard& yard, const std::vector<ObjectRef>& without) {
  SnapTargets targets;
  forEachObject(yard, [&](const auto& object) {
    using T = std::decay_t<decltype(object)>;
    if constexpr (std::is_same_v<T, Tree>) {
      targets.corners.push_back(object.at);
    } else if constexpr (!std::is_same_v<T, Settings> && !std::is_same_v<T, Drift>) {
      if (isAmong(refTo(object.id), without)) return;
      if (const auto outline = outlineOf(Object(object))) addOutline(targets, *outline);
    }
  });
  return targets;
}

Snap snapped(Point p, const SnapTargets& targets, const std::vector<Point>& drawn, double reach) {
  Best corner{{p, SnapKind::None, {}}, reach};
  for (const Point candidate : targets.corners)
    corner.offer(candidate, distance(p, candidate), SnapKind::Corner);
  if (drawn.size() >= 3 && distance(p, drawn.front()) < reach)
    return {drawn.front(), SnapKind::First, {}};
  if (corner.snap.kind != SnapKind::None) return corner.snap;
  Best line{{p, SnapKind::None, {}}, reach};
  for (const auto& [a, b] : targets.edges) {
    const Point at = nearestOnSegment(p, a, b);
    line.offer(at, distance(p, at), SnapKind::Edge);
  }
  offerAngles(line, p, drawn);
  return line.snap;
}

void paintSnap(QPainter& painter, const SceneMapping& mapping, const Snap& snap) {
  if (snap.kind == SnapKind::None) return;
  const Theme& theme = currentTheme();
  const QPointF at = mapping.toPixels(snap.at);
  painter.setPen(QPen(theme.sky, 1.6));
  painter.setBrush(Qt::NoBrush);
  switch (snap.kind) {
    case SnapKind::None:
      return;
    case SnapKind::First:
      painter.setBrush(theme.sky);
      painter.drawEllipse(at, 6, 6);
      return;
    case SnapKind::Corner:
      painter.drawRect(QRectF(at.x() - 5, at.y() - 5, 10, 10));
      return;
    case SnapKind::Edge:
      painter.drawPolygon(QPolygonF(
          {at + QPointF(0, -6), at + QPointF(6, 0), at + QPointF(0, 6), at + QPointF(-6, 0)}));
      return;
    case SnapKind::RightAngle:
    case SnapKind::Axis: {
      const QLineF guide(mapping.toPixels(snap.from), at);
      painter.setPen(QPen(theme.sky, 1.0, Qt::DashLine));
      painter.drawLine(
          guide.p1(), guide.length() > 0 ? guide.pointAt(1.0 + 40.0 / guide.length()) : guide.p2());
      if (snap.kind == SnapKind::Axis || guide.length() < 24.0) return;
      const QPointF along = (guide.p2() - guide.p1()) / guide.length() * 9.0;
      const QPointF across(-along.y(), along.x());
      painter.setPen(QPen(theme.sky, 1.4));
      painter.drawPolyline(
          QPolygonF({guide.p1() + along, guide.p1() + along + across, guide.p1() + across}));
      return;
    }
  }
}

}  // namespace tussock
