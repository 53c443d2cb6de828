// SPDX-License-Identifier: MIT
#include "app/print/paper_symbols.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QPainterPath>

#include <QPolygonF>

namespace tussock {

namespace {

constexpr double kSmallest = 1.7;  // mm of radius under which only a circle can be told
constexpr double kCross = 0.95;    // half the length of a centre mark, mm
constexpr double kDot = 0.5;

// A closed edge round the unit circle whose radius goes in by `depth` between its points.
template <class Shape>
QPainterPath edge(int points, double depth, Shape shape) {
  QPolygonF polygon;
  const int steps = points * 8;
  for (int i = 0; i < steps; ++i) {
    const double turn = 2.0 * std::numbers::pi * i / steps;
    const double part = std::fmod(static_cast<double>(i) / 8.0, 1.0);  // within one point
    const double r = 1.0 - depth * shape(part);
    polygon << QPointF(r * std::cos(turn), r * std::sin(turn));
  }
  QPainterPath path;
  path.addPolygon(polygon);
  path.closeSubpath();
  return path;
}

QPainterPath scallops(int lobes, double depth) {
  return edge(lobes, depth, [](double part) {
    return 1.0 - std::sin(part * std::numbers::pi);  // round outwards, sharp inwards
  });
}

QPainterPath points(int count, double depth) {
  return edge(count, depth, [](double part) { return 1.0 - std::abs(2.0 * part - 1.0); });
}

QPainterPath circle(double radius) {
  QPainterPath path;
  path.addEllipse(QPointF(0, 0), radius, radius);
  return path;
}

QPainterPath rays(int count, double from, double to, double bend) {
  QPainterPath path;
  for (int i = 0; i < count; ++i) {
    const double turn = 2.0 * std::numbers::pi * i / count, end = turn + bend;
    path.moveTo(from * std::cos(turn), from * std::sin(turn));
    path.quadTo(0.7 * std::cos(turn), 0.7 * std::sin(turn), to * std::cos(end), to * std::sin(end));
  }
  return path;
}

struct Symbol {
  QPainterPath outline;  // stroked with the plant's weight
  QPainterPath detail;   // always thin
};

Symbol flower(FlowerForm form) {
  switch (form) {
    case FlowerForm::Daisy:
      return {scallops(12, 0.13), {}};
    case FlowerForm::Spire:
      return {points(9, 0.20), {}};
    case FlowerForm::Umbel:
      return {circle(1.0), rays(10, 0.72, 1.0, 0.0)};
    case FlowerForm::Globe:
      return {circle(1.0), circle(0.72)};
    case FlowerForm::Bell:
      return {scallops(6, 0.17), {}};
    case FlowerForm::Plume:
      return {points(18, 0.13), {}};
    case FlowerForm::None:
      break;
  }
  return {circle(1.0), {}};
}

Symbol symbolOf(Habit habit, FlowerForm form) {
  switch (habit) {
    case Habit::Grass:
      return {{}, rays(18, 0.30, 1.0, 0.16)};
    case Habit::Sedge:
      return {circle(1.0), rays(12, 0.45, 1.0, 0.5)};
    case Habit::Fern:
      return {scallops(8, 0.22), rays(8, 0.25, 0.76, 0.0)};
    case Habit::Shrub:
      return {scallops(9, 0.16), scallops(5, 0.1).simplified()};
    case Habit::Vine:
      return {scallops(16, 0.10), circle(0.55)};
    case Habit::Bulb:
      return {circle(0.8), circle(0.45)};
    case Habit::Forb:
      break;
  }
  return flower(form);
}

QPainterPath sized(const QPainterPath& unit, const PaperPlant& plant) {
  return QTransform::fromTranslate(plant.at.x, plant.at.y)
      .scale(plant.radius, plant.radius)
      .map(unit);
}

QPen inkPen(double width) {
  return QPen(paperInk(), width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
}

void paintCentre(QPainter& painter, const PaperPlant& plant, double reach) {
  const QPointF at(plant.at.x, plant.at.y);
  if (plant.existing) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(paperInk());
    painter.drawEllipse(at, kDot * reach / kCross, kDot * reach / kCross);
    return;
  }
  painter.setPen(inkPen(millimetres(Weight::Hair)));
  painter.drawLine(at - QPointF(reach, 0), at + QPointF(reach, 0));
  painter.drawLine(at - QPointF(0, reach), at + QPointF(0, reach));
}

}  // namespace

QColor paperInk() {
  return {0x1E, 0x1D, 0x1B};
}

QColor washOf(const Rgb& flower) {
  const auto light = [](int part) { return std::clamp(255 - (255 - part) * 26 / 100, 0, 255); };
  return {light(flower.red), light(flower.green), light(flower.blue)};
}

QColor washOf(Wash wash, const Rgb& flower) {
  switch (wash) {
    case Wash::Soil:
      return {0xF4, 0xEE, 0xE3};
    case Wash::Paving:
      return {0xF0, 0xF0, 0xEE};
    case Wash::Building:
      return {0xF6, 0xF5, 0xF2};
    case Wash::Crown:
    case Wash::Hedge:
      return {0xE4, 0xEC, 0xDC};
    case Wash::Drift:
      return washOf(flower);
    case Wash::Ink:
      return paperInk();
    case Wash::Paper:
    case Wash::None:
      break;
  }
  return Qt::white;
}

void paintPaperPlant(QPainter& painter, const PaperPlant& plant) {
  if (plant.mark == PlantMark::CentreOnly)
    return paintCentre(painter, plant, std::min(kCross, plant.radius * 0.4));
  const double hair = millimetres(Weight::Hair);
  if (plant.radius < kSmallest) {
    painter.setPen(inkPen(std::min(hair, plant.radius * 0.2)));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(sized(circle(1.0), plant));
    paintCentre(painter, plant, std::min(kCross, plant.radius * 0.4));
    return;
  }
  const Symbol symbol = symbolOf(plant.habit, plant.form);
  const double weight = std::min(millimetres(plant.weight), plant.radius * 0.11);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(inkPen(hair));
  if (!symbol.detail.isEmpty()) painter.drawPath(sized(symbol.detail, plant));
  painter.setPen(inkPen(weight));
  if (!symbol.outline.isEmpty()) painter.drawPath(sized(symbol.outline, plant));
  paintCentre(painter, plant, std::min(kCross, plant.radius * 0.35));
}

}  // namespace tussock
