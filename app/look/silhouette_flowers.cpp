// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <QPainterPath>

#include "app/look/oklab.h"
#include "app/look/silhouette_parts.h"

namespace tussock {

namespace {

QPen rim(const SideBrush& b) {
  const bool pale = toOklab(b.look().flower).lightness > 0.86;
  return {lightened(b.look().flower, pale ? -0.22 : -0.13), b.hairline * 0.7};
}

// A ray flower a little from above: petals spread flat, a domed eye.
void daisy(const SideBrush& b, QPointF at, double size) {
  const double r = size * 0.5;
  b.painter.setPen(rim(b));
  b.painter.setBrush(b.look().flower);
  for (int k = -2; k <= 2; ++k)
    b.painter.drawEllipse(at + QPointF(k * r * 0.38, -std::abs(k) * r * 0.06), r * 0.30, r * 0.34);
  b.painter.setPen(Qt::NoPen);
  const bool yellow = toOklab(b.look().flower).b > 0.08;
  b.painter.setBrush(yellow ? QColor(0x5B, 0x3A, 0x1E) : QColor(0xD0, 0x9A, 0x2B));
  b.painter.drawEllipse(at + QPointF(0, r * 0.10), r * 0.34, r * 0.24);
}

// Florets up a stem, the tip still in bud; `size` is its length, which ends at the tip.
void spire(const SideBrush& b, QPointF tip, double size) {
  b.painter.setPen(rim(b));
  for (int k = 0; k < 9; ++k) {
    const double down = k / 9.0, r = size * (0.030 + 0.055 * down);
    const double side = (k % 2 ? 1.0 : -1.0) * r * 0.5;
    b.painter.setBrush(k < 2 ? mixed(b.look().flower, b.look().foliage, 0.5) : b.look().flower);
    b.painter.drawEllipse(tip + QPointF(side, -size * down - r), r * 1.25, r);
  }
}

void umbel(const SideBrush& b, QPointF at, double size) {
  const QPen ray(lightened(b.look().foliage, -0.05), b.hairline);
  for (int k = -3; k <= 3; ++k) {
    const QPointF end = at + QPointF(k * size * 0.15, -size * 0.02 * k * k);
    b.painter.setPen(ray);
    b.painter.drawLine(at - QPointF(0, size * 0.35), end - QPointF(0, size * 0.12));
    b.painter.setPen(rim(b));
    b.painter.setBrush(b.look().flower);
    b.painter.drawEllipse(end - QPointF(0, size * 0.07), size * 0.11, size * 0.07);
  }
}

void globe(const SideBrush& b, QPointF at, double size) {
  const double r = size * 0.36;
  const QPointF middle = at - QPointF(0, r);
  b.painter.setPen(QPen(b.look().flower, std::max(size * 0.03, b.hairline)));
  for (int k = 0; k < 14; ++k) {
    const double angle = k * 0.4488;
    b.painter.drawLine(middle, middle + QPointF(std::cos(angle), std::sin(angle)) * r);
  }
  b.painter.setPen(Qt::NoPen);
  b.painter.setBrush(lightened(b.look().flower, -0.03));
  b.painter.drawEllipse(middle, r * 0.72, r * 0.72);
}

// Hangs mouth down from its stem.
void bell(const SideBrush& b, QPointF at, double size) {
  const double w = size * 0.28, h = size * 0.55;
  QPainterPath cup(at - QPointF(w * 0.35, 0));
  cup.cubicTo(at + QPointF(-w * 0.9, -h * 0.25), at + QPointF(-w * 0.7, -h * 0.7),
              at + QPointF(-w * 1.1, -h));
  cup.lineTo(at + QPointF(w * 1.1, -h));
  cup.cubicTo(at + QPointF(w * 0.7, -h * 0.7), at + QPointF(w * 0.9, -h * 0.25),
              at + QPointF(w * 0.35, 0));
  cup.closeSubpath();
  b.painter.setPen(rim(b));
  b.painter.setBrush(b.look().flower);
  b.painter.drawPath(cup);
}

void plume(const SideBrush& b, QPointF tip, double size) {
  QPen pen(b.look().flower, std::max(size * 0.035, b.hairline));
  pen.setCapStyle(Qt::RoundCap);
  b.painter.setPen(pen);
  b.painter.drawLine(tip - QPointF(0, size), tip - QPointF(0, size * 0.05));
  for (int k = 0; k < 10; ++k) {  // barbs rise from the rib, longest low down
    const double down = (k + 0.8) / 10.0, reach = size * (0.05 + 0.17 * down);
    const QPointF at = tip - QPointF(0, size * down);
    b.painter.drawLine(at, at + QPointF(-reach, reach * 0.65));
    b.painter.drawLine(at, at + QPointF(reach, reach * 0.65));
  }
}

// How far down from the top its flowers reach, and how wide one head is.
double headSize(const SideBrush& b) {
  const double most = std::max(0.04, std::min(b.half() * 0.8, b.top() * 0.30));
  switch (b.look().form) {
    case FlowerForm::Spire:
    case FlowerForm::Plume:
      return std::clamp(b.top() - b.leafTop() * 0.9, 0.06, std::max(0.06, b.top() * 0.35));
    case FlowerForm::Umbel:
      return std::min(most, 0.22);
    case FlowerForm::None:
    case FlowerForm::Daisy:
    case FlowerForm::Globe:
    case FlowerForm::Bell:
      return std::min(most, 0.11);
  }
  return most;
}

int stemsOf(const SideBrush& b) {
  if (b.look().habit == Habit::Grass || b.look().habit == Habit::Sedge)
    return b.plant.seeThrough ? 5 : 9;
  if (b.look().form == FlowerForm::Spire) return 5;
  if (b.look().habit == Habit::Shrub || b.look().habit == Habit::Vine) return 11;
  return b.plant.seeThrough ? 5 : 7;
}

}  // namespace

std::vector<StemTip> paintStems(const SideBrush& b) {
  std::vector<StemTip> tips;
  const int stems = stemsOf(b);
  for (int i = 0; i < stems; ++i) {
    const double side = stems == 1 ? 0.0 : -0.75 + 1.5 * i / (stems - 1);
    const double x = (side + 0.08 * b.scatter(i)) * b.half();
    const bool tallest = i == stems / 2;
    const double height =
        tallest ? b.top() : b.top() * (0.97 - 0.16 * side * side - 0.04 * (1 + b.scatter(i + 5)));
    QPainterPath stem(QPointF(x * 0.3, 0));
    stem.quadTo(QPointF(x * 0.5, height * 0.6), QPointF(x, height - headSize(b) * 0.3));
    QPen pen(lightened(b.look().foliage, -0.06), std::max(0.006, b.hairline));
    b.painter.setBrush(Qt::NoBrush);
    b.painter.strokePath(stem, pen);
    tips.push_back({QPointF(x, height), headSize(b)});
  }
  return tips;
}

void paintSideFlower(const SideBrush& b, const StemTip& tip) {
  if (b.look().habit == Habit::Grass || b.look().habit == Habit::Sedge)
    return plume(b, tip.at, tip.size);
  switch (b.look().form) {
    case FlowerForm::None:
      return;
    case FlowerForm::Daisy:
      return daisy(b, tip.at - QPointF(0, tip.size * 0.18), tip.size);
    case FlowerForm::Spire:
      return spire(b, tip.at, tip.size);
    case FlowerForm::Umbel:
      return umbel(b, tip.at, tip.size);
    case FlowerForm::Globe:
      return globe(b, tip.at, tip.size);
    case FlowerForm::Bell:
      return bell(b, tip.at, tip.size);
    case FlowerForm::Plume:
      return plume(b, tip.at, tip.size);
  }
}

}  // namespace tussock
