// SPDX-License-Identifier: MIT
#include "app/canvas/furniture.h"

#include <algorithm>
#include <array>
#include <QCoreApplication>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <utility>

#include "app/canvas/item.h"

namespace tussock {

namespace {

constexpr double kPlateOver = 0.88;  // how much of the plan the plate of the scale bar hides

void haloText(QPainter& painter, QPointF baselineMiddle, const QString& text, const QFont& font,
              const Theme& theme) {
  const QFontMetricsF metrics(font);
  QPainterPath path;
  path.addText(baselineMiddle - QPointF(metrics.horizontalAdvance(text) / 2.0, 0.0), font, text);
  painter.strokePath(
      path, QPen(faded(theme.paper, 0.85), 3.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.fillPath(path, theme.ink);
}

QString inUnits(double metres, UnitSystem units) {
  const double value = units == UnitSystem::FeetInches ? metres / kMetresPerFoot : metres;
  return QLocale().toString(value, 'g', 6);
}

QFont largeFigure() {
  QFont large = fontFor(TextRole::LargeHeading);
  large.setPixelSize(34);
  return large;
}

void paintPlate(QPainter& painter, const QRectF& box, const Theme& theme) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(QColor(0, 0, 0, theme.dark ? 90 : 26));
  painter.drawRoundedRect(box.translated(0, 2), kCorner, kCorner);
  painter.setPen(QPen(theme.edge, 1.0));
  painter.setBrush(theme.raised);
  painter.drawRoundedRect(box, kCorner, kCorner);
}

}  // namespace

ScaleBar scaleBarFor(const SceneMapping& mapping, UnitSystem units) {
  constexpr double kLeast = 150.0;  // pixels
  const double unit = units == UnitSystem::FeetInches ? kMetresPerFoot : 1.0;
  for (double decade = 0.1; decade < 1e6; decade *= 10.0)
    for (const double step : {1.0, 2.0, 5.0})
      if (mapping.pixels(unit * decade * step * 3.0) >= kLeast) return {unit * decade * step, 3};
  return {unit * 1e6, 3};
}

void paintScaleBar(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look,
                   int foot) {
  const ScaleBar bar = scaleBarFor(mapping, look.units);
  const double step = mapping.pixels(bar.step);
  const QPointF left(kSpace6, mapping.view().height() - kSpace5 - foot);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF right = left + QPointF(step * bar.ticks, 0.0);
  // Words of the plan that come to lie under it must not be read into it.
  painter.setPen(Qt::NoPen);
  painter.setBrush(faded(look.theme.paper, kPlateOver));
  painter.drawRoundedRect(QRectF(left, right).adjusted(-14.0, -26.0, 24.0, 8.0), kCorner, kCorner);
  painter.setPen(QPen(look.theme.ink, 1.6));
  painter.drawLine(left, right);
  const QString unit = look.units == UnitSystem::FeetInches
                           ? QCoreApplication::translate("ScaleBar", "ft")
                           : QCoreApplication::translate("ScaleBar", "m");
  for (int i = 0; i <= bar.ticks; ++i) {
    const QPointF at = left + QPointF(step * i, 0.0);
    painter.setPen(QPen(look.theme.ink, 1.6));
    painter.drawLine(at + QPointF(0, -6), at + QPointF(0, 0));
    const QString text = inUnits(bar.step * i, look.units);
    haloText(painter, at + QPointF(0, -10), i == 0 ? text : text + QLatin1Char(' ') + unit,
             fontFor(TextRole::Note), look.theme);
  }
}

void paintNorthArrow(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) {
  const QPointF top(mapping.view().width() - kSpace6, kSpace5);
  painter.setRenderHint(QPainter::Antialiasing);
  QPainterPath halo, west, east;
  west.addPolygon(QPolygonF({top, top + QPointF(-8, 30), top + QPointF(0, 23), top}));
  east.addPolygon(QPolygonF({top, top + QPointF(8, 30), top + QPointF(0, 23), top}));
  halo = west.united(east);
  painter.strokePath(
      halo, QPen(faded(look.theme.paper, 0.85), 5.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.fillPath(halo, look.theme.paper);
  painter.fillPath(west, look.theme.ink);
  painter.strokePath(halo, QPen(look.theme.ink, 1.2));
  QFont font = fontFor(TextRole::Body);
  font.setWeight(QFont::Bold);
  haloText(painter, top + QPointF(0, 46), QCoreApplication::translate("NorthArrow", "N"), font,
           look.theme);
}

QRectF figurePlate(QPointF above, const QString& figure, const QString& note, const QRectF& view,
                   int way) {
  const double wide = std::max(QFontMetricsF(largeFigure()).horizontalAdvance(figure),
                               QFontMetricsF(fontFor(TextRole::Note)).horizontalAdvance(note)) +
                      2.0 * kSpace3;
  const double high = note.isEmpty() ? 48.0 : 66.0;
  constexpr std::array<std::pair<double, double>, kFigureWays> kWays{
      {{0.0, 0.0}, {1.0, 0.0}, {-1.0, 0.0}, {0.0, 1.0}, {1.0, 1.0}, {-1.0, 1.0}}};
  const auto [aside, up] = kWays.at(std::size_t(way));
  QRectF plate(above.x() + (aside - 0.5) * wide, above.y() - (1.0 + up) * high - kSpace3, wide,
               high);
  const QRectF room = view.adjusted(kSpace1, kSpace1, -kSpace1, -kSpace1);
  plate.moveTop(std::max(plate.top(), room.top()));
  plate.moveLeft(std::max(room.left(), std::min(plate.left(), room.right() - wide)));
  return plate;
}

void paintFigure(QPainter& painter, const QRectF& plate, const QString& figure, const QString& note,
                 const Theme& theme) {
  const QFont large = largeFigure(), small = fontFor(TextRole::Note);
  painter.setRenderHint(QPainter::Antialiasing);
  paintPlate(painter, plate, theme);
  painter.setPen(theme.ink);
  painter.setFont(large);
  painter.drawText(plate.adjusted(0, 2, 0, note.isEmpty() ? -2 : -20), Qt::AlignCenter, figure);
  painter.setFont(small);
  painter.setPen(theme.quietInk);
  painter.drawText(plate.adjusted(0, 44, 0, -4), Qt::AlignCenter, note);
}

void paintNote(QPainter& painter, QPointF at, const QString& text, const Theme& theme) {
  if (text.isEmpty()) return;
  const QFont font = fontFor(TextRole::Body);
  const QFontMetricsF metrics(font);
  QRectF plate(at + QPointF(kSpace4, kSpace4),
               QSizeF(metrics.horizontalAdvance(text) + 2.0 * kSpace2, metrics.height() + kSpace1));
  if (plate.right() > painter.viewport().right() - kSpace1) plate.moveRight(at.x() - kSpace4);
  painter.setRenderHint(QPainter::Antialiasing);
  paintPlate(painter, plate, theme);
  painter.setPen(theme.ink);
  painter.setFont(font);
  painter.drawText(plate, Qt::AlignCenter, text);
}

}  // namespace tussock
