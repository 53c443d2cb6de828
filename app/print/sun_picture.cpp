// SPDX-License-Identifier: MIT
#include "app/print/sun_picture.h"

#include <algorithm>
#include <QImage>
#include <QPainter>
#include <QPainterPath>

#include "app/files/whole_file.h"
#include "app/look/sun_scale.h"
#include "app/look/theme.h"

namespace tussock {

namespace {

constexpr int kMapPixels = 1400;  // the longer side of the map
constexpr int kLegendHeight = 92;
constexpr int kHeaderHeight = 64;

// Where the map lies in the picture, and metres to pixels with y turned.
struct Frame {
  Box area;
  double pixelsPerMetre = 1.0;
  [[nodiscard]] QPointF operator()(Point p) const {
    return {kSpace5 + (p.x - area.low.x) * pixelsPerMetre,
            kHeaderHeight + (area.high.y - p.y) * pixelsPerMetre};
  }
  [[nodiscard]] int width() const { return qRound(area.width() * pixelsPerMetre); }
  [[nodiscard]] int height() const { return qRound(area.height() * pixelsPerMetre); }
};

QImage cellsOf(const SunMap& map, const Theme& theme) {
  QImage image(map.columns(), map.rows(), QImage::Format_RGB32);
  for (int row = 0; row < map.rows(); ++row)
    for (int column = 0; column < map.columns(); ++column) {
      const QColor colour =
          map.underBuilding(column, row) ? theme.building : sunColour(map.at(column, row).total());
      image.setPixelColor(column, map.rows() - 1 - row, colour);
    }
  return image;
}

QPainterPath pathOf(const Polygon& polygon, const Frame& frame) {
  QPainterPath path;
  auto add = [&](const Ring& ring) {
    QPolygonF points;
    for (const Point p : ring) points << frame(p);
    path.addPolygon(points);
    path.closeSubpath();
  };
  add(polygon.outer);
  for (const Ring& hole : polygon.holes) add(hole);
  return path;
}

void paintOutlines(QPainter& painter, const Yard& yard, const Frame& frame, const Theme& theme) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme.ink, 1.5));
  for (const Building& building : yard.buildings)
    painter.drawPath(pathOf(building.footprint, frame));
  painter.setPen(QPen(theme.paper, 3.5));
  for (const Bed& bed : yard.beds) painter.drawPath(pathOf(bed.outline, frame));
  painter.setPen(QPen(theme.ink, 1.5));
  for (const Bed& bed : yard.beds) painter.drawPath(pathOf(bed.outline, frame));
  for (const Tree& tree : yard.trees) painter.drawEllipse(frame(tree.at), 3.0, 3.0);
}

void paintHeader(QPainter& painter, const SunPictureText& text, int width, const Theme& theme) {
  painter.setPen(theme.ink);
  painter.setFont(fontFor(TextRole::LargeHeading));
  painter.drawText(QRect(kSpace5, kSpace2, width, 28), Qt::AlignVCenter,
                   QString::fromStdString(text.title));
  painter.setFont(fontFor(TextRole::Body));
  painter.setPen(theme.quietInk);
  painter.drawText(
      QRect(kSpace5, 34, width, 20), Qt::AlignVCenter,
      QObject::tr("Hours of direct sun a day, %1 · %2")
          .arg(QString::fromStdString(text.span), QString::fromStdString(text.parameters)));
}

void paintLegend(QPainter& painter, QRect strip, const Theme& theme) {
  const QList<QRgb> ramp = sunRamp();
  const double step = static_cast<double>(strip.width()) / static_cast<double>(ramp.size());
  for (qsizetype i = 0; i < ramp.size(); ++i)
    painter.fillRect(QRectF(strip.left() + static_cast<double>(i) * step, strip.top(), step + 1.0,
                            strip.height()),
                     QColor(ramp[i]));
  painter.setPen(theme.ink);
  painter.setFont(fontFor(TextRole::Body));
  for (int hour = 0; hour <= static_cast<int>(kSunScaleTop); hour += 2) {
    const int x = strip.left() + static_cast<int>(hour / kSunScaleTop * strip.width());
    painter.drawLine(x, strip.bottom(), x, strip.bottom() + kSpace1);
    const QString label = hour < static_cast<int>(kSunScaleTop)
                              ? QObject::tr("%1 h").arg(hour)
                              : QObject::tr("%1 h and more").arg(hour);
    painter.drawText(QRect(x - 60, strip.bottom() + kSpace2, 120, 20), Qt::AlignHCenter, label);
  }
}

}  // namespace

void writeSunPicture(const SunMap& map, const Yard& yard, const SunPictureText& text,
                     const QString& path) {
  const Theme theme = Theme::light();
  const double longer = std::max(map.area().width(), map.area().height());
  const Frame frame{map.area(), kMapPixels / longer};
  QImage image(std::max(frame.width(), 640) + 2 * kSpace5,
               kHeaderHeight + frame.height() + kLegendHeight, QImage::Format_RGB32);
  image.fill(theme.paper);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
  painter.drawImage(QRectF(kSpace5, kHeaderHeight, frame.width(), frame.height()),
                    cellsOf(map, theme));
  painter.setClipRect(QRectF(kSpace5, kHeaderHeight, frame.width(), frame.height()));
  paintOutlines(painter, yard, frame, theme);
  painter.setClipping(false);
  paintHeader(painter, text, image.width() - 2 * kSpace5, theme);
  paintLegend(painter,
              QRect(kSpace5 + 60, kHeaderHeight + frame.height() + kSpace4,
                    image.width() - 2 * kSpace5 - 120, kSpace4),
              theme);
  painter.end();
  savePng(path, image);
}

}  // namespace tussock
