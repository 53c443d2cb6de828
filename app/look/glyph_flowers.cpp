// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>
#include <QPainterPath>

#include "app/look/glyph_parts.h"
#include "app/look/oklab.h"

namespace tussock {

namespace {

// The darker rim keeps white flowers visible on white paper.
QPen rim(const GlyphBrush& b) {
  if (b.detail < 2) return Qt::NoPen;
  const bool pale = toOklab(b.look.flower).lightness > 0.86;
  return {lightened(b.look.flower, pale ? -0.22 : -0.13), std::max(0.020, b.hairline * 0.6)};
}

// Calls draw(painter turned so that +x points outward) at each flower's place.
template <class Draw>
void around(const GlyphBrush& b, int count, double inner, double outer, Draw draw) {
  for (int i = 0; i < count; ++i) {
    const double turn = 360.0 / count * i + b.look.variety * 2.3;
    const double r = i % 2 ? inner : outer;
    b.painter.save();
    b.painter.rotate(turn);
    b.painter.translate(r, 0);
    draw(i);
    b.painter.restore();
  }
}

void daisy(const GlyphBrush& b, double size) {
  const int petals = 7 + b.pick(4, 3);
  b.painter.setPen(rim(b));
  b.painter.setBrush(b.look.flower);
  for (int k = 0; k < petals; ++k) {
    b.painter.rotate(360.0 / petals);
    b.painter.drawEllipse(QPointF(size * 0.62, 0), size * 0.42, size * 0.20);
  }
  b.painter.setPen(Qt::NoPen);
  const bool yellow = toOklab(b.look.flower).b > 0.08;  // a dark eye on yellow, a gold one else
  b.painter.setBrush(yellow ? QColor(0x5B, 0x3A, 0x1E) : QColor(0xD0, 0x9A, 0x2B));
  b.painter.drawEllipse(QPointF(0, 0), size * 0.30, size * 0.30);
}

// A spike seen from above leans outward: florets that grow small towards its tip.
void spire(const GlyphBrush& b, double length) {
  b.painter.setPen(rim(b));
  b.painter.setBrush(b.look.flower);
  const int florets = b.detail > 1 ? 6 : 3;
  for (int k = 0; k < florets; ++k) {
    const double share = double(k) / florets, size = 0.115 * (1.0 - 0.72 * share);
    const double side = (k % 2 ? 0.035 : -0.035) * (1.0 - share);
    b.painter.drawEllipse(QPointF(length * share, side), size * 1.15, size);
  }
}

void umbel(const GlyphBrush& b, double size) {
  b.painter.setPen(rim(b));
  b.painter.setBrush(b.look.flower);
  b.painter.drawEllipse(QPointF(0, 0), size * 0.36, size * 0.36);
  for (int k = 0; k < 6; ++k) {
    b.painter.rotate(60.0);
    b.painter.drawEllipse(QPointF(size * 0.70, 0), size * 0.33, size * 0.33);
  }
}

void globe(const GlyphBrush& b, double size) {
  QPen ray(b.look.flower, std::max(0.045, b.hairline));
  ray.setCapStyle(Qt::RoundCap);
  b.painter.setPen(ray);
  for (int k = 0; k < 11 && b.detail > 0; ++k) {
    b.painter.rotate(360.0 / 11);
    b.painter.drawLine(QPointF(size * 0.5, 0), QPointF(size, 0));
  }
  b.painter.setPen(rim(b));
  b.painter.setBrush(lightened(b.look.flower, -0.03));
  b.painter.drawEllipse(QPointF(0, 0), size * 0.66, size * 0.66);
}

void bell(const GlyphBrush& b, double size) {
  QPainterPath cup(QPointF(-size * 0.8, 0));
  cup.cubicTo(-size * 0.5, -size * 0.75, size * 0.2, -size * 0.35, size, -size * 0.62);
  cup.quadTo(size * 0.62, 0, size, size * 0.62);
  cup.cubicTo(size * 0.2, size * 0.35, -size * 0.5, size * 0.75, -size * 0.8, 0);
  b.painter.setPen(rim(b));
  b.painter.setBrush(b.look.flower);
  b.painter.drawPath(cup);
}

void plume(const GlyphBrush& b, double length) {
  QPen stroke(b.look.flower, std::max(0.06, b.hairline));
  stroke.setCapStyle(Qt::RoundCap);
  b.painter.setPen(stroke);
  b.painter.drawLine(QPointF(0, 0), QPointF(length, 0));
  const int barbs = b.detail > 1 ? 4 : 2;
  for (int k = 0; k < barbs; ++k) {
    const double x = length * (0.1 + 0.75 * k / barbs), reach = 0.15 * (1.0 - 0.6 * k / barbs);
    b.painter.drawLine(QPointF(x, 0), QPointF(x + reach * 0.9, -reach));
    b.painter.drawLine(QPointF(x, 0), QPointF(x + reach * 0.9, reach));
  }
}

// Grasses and sedges flower in slender heads at the ends of their blades, whatever the form.
void seedHeads(const GlyphBrush& b, double spread) {
  b.painter.setPen(Qt::NoPen);
  for (int k = 0; k < (b.detail > 1 ? 4 : 2); ++k) {
    const double share = k / 4.0, side = (k % 2 ? spread : -spread) * (1.0 - 0.6 * share);
    b.painter.setBrush(lightened(b.look.flower, k % 2 ? 0.05 : -0.04));
    b.painter.drawEllipse(QPointF(0.30 * share, side), 0.085, 0.042);
  }
}

}  // namespace

void paintFlowers(const GlyphBrush& b) {
  if (b.look.habit == Habit::Grass || b.look.habit == Habit::Sedge) {
    const double spread = b.look.form == FlowerForm::Plume ? 0.06 : 0.028;
    return around(b, b.detail > 1 ? 11 : 7, 0.46, 0.66, [&](int) { seedHeads(b, spread); });
  }
  const int few = b.detail > 1 ? 5 + b.pick(6, 2) : 4;
  switch (b.look.form) {
    case FlowerForm::None:
      return;
    case FlowerForm::Daisy:
      return around(b, few, 0.42, 0.66, [&](int) { daisy(b, 0.29); });
    case FlowerForm::Spire:
      return around(b, few + 1, 0.26, 0.34, [&](int i) { spire(b, i % 2 ? 0.50 : 0.62); });
    case FlowerForm::Umbel:
      return around(b, few, 0.44, 0.64, [&](int i) { umbel(b, i % 2 ? 0.25 : 0.30); });
    case FlowerForm::Globe:
      return around(b, few, 0.42, 0.64, [&](int i) { globe(b, i % 2 ? 0.24 : 0.29); });
    case FlowerForm::Bell:
      return around(b, few + 2, 0.42, 0.70, [&](int) { bell(b, 0.19); });
    case FlowerForm::Plume:
      return around(b, few + 2, 0.36, 0.44, [&](int i) { plume(b, i % 2 ? 0.38 : 0.50); });
  }
}

}  // namespace tussock
