// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>
#include <QPainterPath>

#include "app/look/glyph_parts.h"
#include "app/look/oklab.h"

namespace tussock {

namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;

// A leaf along +x from the centre: narrow lance, oval, or broad heart.
QPainterPath leafShape(int shape, double length) {
  constexpr double kHalfWidths[] = {0.13, 0.20, 0.27, 0.17};
  constexpr double kBellies[] = {0.45, 0.55, 0.70, 0.85};
  const double w = kHalfWidths[shape], belly = kBellies[shape] * length;
  QPainterPath leaf(QPointF(0.06, 0));
  leaf.cubicTo(length * 0.25, -w * 1.3, belly, -w * 1.3, length, 0);
  leaf.cubicTo(belly, w * 1.3, length * 0.25, w * 1.3, 0.06, 0);
  return leaf;
}

QPen vein(const GlyphBrush& b, double width) {
  QPen pen(lightened(b.look.foliage, -0.12), std::max(width, b.hairline));
  pen.setCapStyle(Qt::RoundCap);
  return pen;
}

void paintRosette(const GlyphBrush& b) {
  const int leaves = 5 + b.pick(0, 4);
  const QPainterPath leaf = leafShape(b.pick(2, 4), 0.98);
  b.painter.setPen(b.detail > 1 ? vein(b, 0.025) : QPen(Qt::NoPen));
  for (int i = 0; i < leaves; ++i) {
    b.painter.save();
    b.painter.rotate(360.0 / leaves * i + b.look.variety * 1.4);
    b.painter.scale(i % 2 ? 0.86 : 1.0, 1.0);
    b.painter.setBrush(lightened(b.look.foliage, i % 2 ? 0.035 : -0.015));
    b.painter.drawPath(leaf);
    if (b.detail > 1) b.painter.drawLine(QPointF(0.12, 0), QPointF(0.8, 0));
    b.painter.restore();
  }
}

// Blades that arch out from the crown; sedges swirl one way and are fewer and broader.
void paintBlades(const GlyphBrush& b, int count, double bend, double width) {
  b.painter.setBrush(Qt::NoBrush);
  for (int i = 0; i < count; ++i) {
    const double angle = kTurn * i / count + b.look.variety * 0.02;
    const double length = 0.70 + 0.28 * (((i * 7 + b.look.variety) % 5) / 4.0);
    const double side = b.look.habit == Habit::Sedge ? 1.0 : (i % 2 ? 1.0 : -1.0);
    const double tip = angle + side * bend;
    QPainterPath blade(QPointF(0.05 * std::cos(angle), 0.05 * std::sin(angle)));
    blade.quadTo(QPointF(0.55 * std::cos(angle), 0.55 * std::sin(angle)),
                 QPointF(length * std::cos(tip), length * std::sin(tip)));
    QPen pen(lightened(b.look.foliage, (i % 3 - 1) * 0.055), std::max(width, b.hairline));
    pen.setCapStyle(Qt::RoundCap);
    b.painter.strokePath(blade, pen);
  }
}

// Five to nine fronds with leaflets that grow short towards the tip.
void paintFronds(const GlyphBrush& b) {
  const int fronds = 6 + b.pick(0, 3);
  const QPen rib = vein(b, 0.035);
  QPen leaflet(b.look.foliage, std::max(0.085, b.hairline));
  leaflet.setCapStyle(Qt::RoundCap);
  for (int i = 0; i < fronds; ++i) {
    b.painter.save();
    b.painter.rotate(360.0 / fronds * i + b.look.variety * 1.4);
    b.painter.setPen(leaflet);
    for (int k = 0; k < (b.detail > 1 ? 6 : 3); ++k) {
      const double share = k / (b.detail > 1 ? 6.0 : 3.0);
      const double x = 0.20 + 0.70 * share,
                   reach = 0.23 * std::sin(std::numbers::pi * (0.22 + 0.72 * share));
      b.painter.drawLine(QPointF(x, 0), QPointF(x + reach * 0.55, -reach));
      b.painter.drawLine(QPointF(x, 0), QPointF(x + reach * 0.55, reach));
    }
    b.painter.setPen(rib);
    b.painter.drawLine(QPointF(0.04, 0), QPointF(0.96, 0));
    b.painter.restore();
  }
}

QPainterPath scallops(int bumps, double depth, double phase) {
  QPainterPath path;
  const double inner = 1.0 - depth;
  const auto at = [&](double step, double radius) {
    const double angle = kTurn * step / bumps + phase;
    return QPointF(radius * std::cos(angle), radius * std::sin(angle));
  };
  path.moveTo(at(0, inner));
  for (int i = 0; i < bumps; ++i)
    path.cubicTo(at(i + 0.2, 1.12), at(i + 0.8, 1.12), at(i + 1, inner));
  path.closeSubpath();
  return path;
}

void paintShrub(const GlyphBrush& b) {
  const int bumps = 8 + b.pick(0, 4);
  b.painter.setPen(vein(b, 0.05));
  b.painter.setBrush(withAlpha(b.look.foliage, 0.92));
  b.painter.drawPath(scallops(bumps, 0.13, b.look.variety * 0.03));
  if (b.detail < 1) return;
  const int branches = 5;
  for (int i = 0; i < branches; ++i) {
    b.painter.save();
    b.painter.rotate(360.0 / branches * i + b.look.variety);
    b.painter.drawLine(QPointF(0.1, 0), QPointF(0.72, 0));
    b.painter.drawLine(QPointF(0.42, 0), QPointF(0.66, 0.22));
    b.painter.drawLine(QPointF(0.36, 0), QPointF(0.56, -0.2));
    b.painter.restore();
  }
}

// A low carpet: a scalloped edge filled with small round leaves.
void paintMat(const GlyphBrush& b) {
  b.painter.setPen(b.detail > 1 ? vein(b, 0.02) : QPen(Qt::NoPen));
  b.painter.setBrush(withAlpha(lightened(b.look.foliage, 0.04), 0.75));
  b.painter.drawPath(scallops(13 + b.pick(0, 4), 0.10, b.look.variety * 0.05));
  b.painter.setBrush(lightened(b.look.foliage, -0.03));
  const double leaf = 0.10 + 0.02 * b.pick(2, 3);
  for (int i = 1; i < (b.detail > 1 ? 18 : 9); ++i) {  // Vogel's spiral
    const double r = 0.21 * std::sqrt(double(i)) * (b.detail > 1 ? 1.0 : 1.4), angle = i * 2.39996;
    b.painter.drawEllipse(QPointF(r * std::cos(angle), r * std::sin(angle)), leaf, leaf * 0.8);
  }
}

// A stem that winds outward, with a leaf at each step.
void paintVine(const GlyphBrush& b) {
  QPainterPath stem;
  const QPainterPath leaf = leafShape(2, 0.38);
  b.painter.setPen(Qt::NoPen);
  for (int i = 0; i <= 14; ++i) {
    const double angle = i * 0.72 + b.look.variety, r = 0.06 + 0.040 * i;
    const QPointF p(r * std::cos(angle), r * std::sin(angle));
    i ? stem.lineTo(p) : stem.moveTo(p);
    if (i < 4) continue;
    b.painter.save();
    b.painter.translate(p);
    b.painter.rotate(angle * 180.0 / std::numbers::pi + (i % 2 ? 50 : -20));
    b.painter.setBrush(lightened(b.look.foliage, i % 2 ? 0.04 : -0.02));
    b.painter.drawPath(leaf);
    b.painter.restore();
  }
  b.painter.strokePath(stem, vein(b, 0.05));
}

void paintStraps(const GlyphBrush& b) {
  const int leaves = 5 + b.pick(0, 2);
  for (int i = 0; i < leaves; ++i) {
    b.painter.save();
    b.painter.rotate(360.0 / leaves * i + b.look.variety * 1.4);
    QPainterPath strap(QPointF(0.04, -0.05));
    strap.cubicTo(0.5, -0.14, 0.8, -0.02, 0.98, 0.12);
    strap.cubicTo(0.75, 0.10, 0.5, 0.03, 0.04, 0.06);
    b.painter.setPen(b.detail > 1 ? vein(b, 0.02) : QPen(Qt::NoPen));
    b.painter.setBrush(lightened(b.look.foliage, i % 2 ? 0.03 : -0.01));
    b.painter.drawPath(strap);
    b.painter.restore();
  }
}

}  // namespace

void paintFoliage(const GlyphBrush& b) {
  b.painter.setPen(Qt::NoPen);  // a wash that gives a thin plant its mass
  b.painter.setBrush(withAlpha(b.look.foliage, 0.26));
  b.painter.drawEllipse(QPointF(0, 0), 0.86, 0.86);
  if (b.look.mat) return paintMat(b);
  switch (b.look.habit) {
    case Habit::Forb:
      return paintRosette(b);
    case Habit::Grass:
      return paintBlades(b, b.detail > 1 ? 22 + b.pick(0, 3) * 5 : 13, 0.22, 0.045);
    case Habit::Sedge:
      return paintBlades(b, b.detail > 1 ? 15 + b.pick(0, 3) * 2 : 10, 0.75, 0.075);
    case Habit::Fern:
      return paintFronds(b);
    case Habit::Shrub:
      return paintShrub(b);
    case Habit::Vine:
      return paintVine(b);
    case Habit::Bulb:
      return paintStraps(b);
  }
}

}  // namespace tussock
