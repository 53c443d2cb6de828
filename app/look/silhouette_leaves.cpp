// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <QPainterPath>

#include "app/look/oklab.h"
#include "app/look/silhouette_parts.h"

namespace tussock {

namespace {

QPen stroke(const QColor& colour, double width, const SideBrush& b) {
  QPen pen(colour, std::max(width, b.hairline));
  pen.setCapStyle(Qt::RoundCap);
  pen.setJoinStyle(Qt::RoundJoin);
  return pen;
}

// A blade from the crown that arches over: up to `height`, out to `reach`.
void blade(const SideBrush& b, double reach, double height, double width, double shade) {
  QPainterPath path(QPointF(reach * 0.06, 0));
  path.cubicTo(reach * 0.15, height * 0.75, reach * 0.55, height * 1.04, reach, height * 0.72);
  b.painter.setBrush(Qt::NoBrush);
  b.painter.strokePath(path, stroke(lightened(b.look().foliage, shade), width, b));
}

void paintTuft(const SideBrush& b, int blades, double width) {
  for (int i = 0; i < blades; ++i) {
    const double side = -1.0 + 2.0 * (i + 0.5) / blades;
    const double height = b.leafTop() * (1.0 - 0.35 * side * side) * (0.9 + 0.08 * b.scatter(i));
    blade(b, side * b.half(), height, width, (i % 3 - 1) * 0.05);
  }
}

// Leafy stems that stand close: pairs of lance leaves up each one.
void leafyStem(const SideBrush& b, double x, double height, double lean, int n) {
  const QColor green = lightened(b.look().foliage, (n % 3 - 1) * 0.035);
  b.painter.strokePath(
      [&] {
        QPainterPath path(QPointF(x * 0.5, 0));
        path.quadTo(QPointF(x * 0.6, height * 0.6), QPointF(x + lean, height * 0.98));
        return path;
      }(),
      stroke(lightened(green, -0.10), height * 0.010, b));
  b.painter.setPen(Qt::NoPen);
  b.painter.setBrush(green);
  const int pairs = std::clamp(int(height / 0.12), 3, 9);
  for (int k = 0; k < pairs; ++k) {
    const double up = (k + 0.6) / pairs, length = b.half() * (0.62 - 0.36 * up);
    const double at = x * (0.5 + 0.5 * up) + lean * up * up;
    for (const double side : {-1.0, 1.0}) {
      const double y = height * 0.9 * up, rise = std::min(length * 0.55, height * 0.98 - y);
      QPainterPath leaf(QPointF(at, y));
      leaf.quadTo(QPointF(at + side * length * 0.45, y + rise * 1.1),
                  QPointF(at + side * length, y + rise * 0.5));
      leaf.quadTo(QPointF(at + side * length * 0.45, y - length * 0.05), QPointF(at, y));
      b.painter.drawPath(leaf);
    }
  }
}

void paintForb(const SideBrush& b) {
  const int stems = b.plant.seeThrough ? 3 : 5;
  for (int i = 0; i < stems; ++i) {
    const double side = stems == 1 ? 0.0 : -0.55 + 1.1 * i / (stems - 1);
    const double height = b.leafTop() * (1.0 - 0.28 * side * side) * (0.95 + 0.04 * b.scatter(i));
    leafyStem(b, side * b.half(), height, 0.08 * b.half() * b.scatter(i + 3), i);
  }
}

// A frond is an arching rib with leaflets that grow short towards its tip.
void frond(const SideBrush& b, double reach, double height, double shade) {
  const QColor green = lightened(b.look().foliage, shade);
  QPainterPath rib(QPointF(0, 0));
  rib.quadTo(QPointF(reach * 0.15, height), QPointF(reach, height * 0.86));
  b.painter.setBrush(Qt::NoBrush);
  b.painter.strokePath(rib, stroke(lightened(green, -0.10), b.half() * 0.02, b));
  for (int k = 2; k < 14; ++k) {
    const double t = k / 14.0, leaflet = 0.24 * b.half() * std::sin(3.14 * (0.10 + 0.84 * t));
    const double turn = -rib.angleAtPercent(t) * 3.14159 / 180.0;
    b.painter.setPen(stroke(green, leaflet * 0.26, b));
    for (const double side : {-1.1, 1.1}) {
      const QPointF tip =
          rib.pointAtPercent(t) + QPointF(std::cos(turn + side), std::sin(turn + side)) * leaflet;
      b.painter.drawLine(rib.pointAtPercent(t),
                         QPointF(tip.x(), std::clamp(tip.y(), 0.0, b.leafTop())));
    }
  }
}

void paintFern(const SideBrush& b) {
  for (int i = 0; i < 7; ++i) {
    const double side = -1.0 + 2.0 * i / 6.0;
    frond(b, side * b.half() * 0.9, b.leafTop() * (0.95 - 0.40 * side * side), (i % 3 - 1) * 0.04);
  }
}

void paintShrub(const SideBrush& b) {
  for (int i = 0; i < 4; ++i) {
    const double side = -0.6 + 0.4 * i;
    QPainterPath stem(QPointF(side * b.half() * 0.15, 0));
    stem.quadTo(QPointF(side * b.half() * 0.3, b.leafTop() * 0.4),
                QPointF(side * b.half(), b.leafTop() * 0.7));
    b.painter.strokePath(stem, stroke(QColor(0x6B, 0x54, 0x3C), b.leafTop() * 0.018, b));
  }
  b.painter.setPen(Qt::NoPen);
  for (int i = 0; i < 110; ++i) {
    const double turn = i * 2.39996, out = std::sqrt((i + 0.5) / 110.0);  // evenly over a disc
    const double r = std::min(b.half(), b.leafTop()) * (0.10 + 0.02 * b.scatter(i + 9));
    const double x = std::cos(turn) * out * (b.half() - r);
    const double middle = b.leafTop() * 0.60, tall = b.leafTop() * 0.40 - r;
    b.painter.setBrush(lightened(b.look().foliage, 0.05 * std::sin(turn) + 0.03 * b.scatter(i)));
    b.painter.drawEllipse(QPointF(x, middle + std::sin(turn) * out * tall), r * 1.15, r * 0.85);
  }
}

// A twining stem with leaves to either side of it.
void paintVine(const SideBrush& b) {
  const int turns = std::clamp(int(b.leafTop() / 0.03), 12, 110);
  const double swing = b.half() * 0.3, leaf = std::min(b.half() * 0.42, 0.20);
  b.painter.setPen(Qt::NoPen);
  for (int k = 0; k < turns; ++k) {
    const double up = (k + 0.5) / turns, y = std::max(leaf * 0.35, b.leafTop() * up - leaf * 0.35);
    b.painter.setBrush(lightened(b.look().foliage, (k % 3 - 1) * 0.04));
    const double x = swing * std::sin(k * 0.9) + 0.5 * b.half() * b.scatter(k);
    b.painter.drawEllipse(QPointF(x, y), leaf * 0.55, leaf * 0.35);
  }
}

void paintStraps(const SideBrush& b) {
  for (int i = 0; i < 7; ++i) {
    const double side = -1.0 + i / 3.0;
    blade(b, side * b.half() * 0.9, b.leafTop() * (0.94 - 0.2 * side * side), b.half() * 0.10,
          (i % 3 - 1) * 0.05);
  }
}

}  // namespace

void paintSideFoliage(const SideBrush& b) {
  switch (b.look().habit) {
    case Habit::Forb:
      return paintForb(b);
    case Habit::Grass:
      return paintTuft(b, b.plant.seeThrough ? 16 : 26, b.half() * 0.022);
    case Habit::Sedge:
      return paintTuft(b, 22, b.half() * 0.034);
    case Habit::Fern:
      return paintFern(b);
    case Habit::Shrub:
      return paintShrub(b);
    case Habit::Vine:
      return paintVine(b);
    case Habit::Bulb:
      return paintStraps(b);
  }
}

}  // namespace tussock
