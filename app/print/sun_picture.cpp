// SPDX-License-Identifier: MIT
#include "app/print/sun_picture.h"

#include <algorithm>
#include <cmath>
#include <QImage>
#include <QPainter>
#include <QPainterPath>

#include "app/files/whole_file.h"
#include "app/look/sun_scale.h"
#include "app/look/theme.h"

namespace tussock {

namespace {

constexpr int kMapPixels = 1400;  // the longer side of the map
constexpr int kHeaderHeight = 64;
constexpr int kLegendHeight = 92;
constexpr int kLeastWidth = 640;
constexpr int kNoteLine = 18;
constexpr int kNoteColumns = 2;

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

void paintBeds(QPainter& painter, const Yard& yard, const Frame& frame, const Theme& theme) {
  painter.setBrush(Qt::NoBrush);
  for (const auto& [colour, width] : {std::pair(theme.paper, 3.5), std::pair(theme.ink, 1.5)}) {
    painter.setPen(QPen(colour, width));
    for (const Bed& bed : yard.beds) painter.drawPath(pathOf(bed.outline, frame));
  }
}

// Walls as they are drawn, crowns as circles around their trunks.
void paintSolids(QPainter& painter, const Yard& yard, const Frame& frame, const Theme& theme) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme.ink, 1.5));
  for (const Building& building : yard.buildings)
    painter.drawPath(pathOf(building.footprint, frame));
  for (const Barrier& barrier : yard.barriers) {
    if (!barrier.footprint.empty()) {
      painter.drawPath(pathOf(barrier.footprint, frame));
      continue;
    }
    QPolygonF line;
    for (const Point p : barrier.line) line << frame(p);
    painter.setPen(QPen(theme.ink, 2.5));
    painter.drawPolyline(line);
    painter.setPen(QPen(theme.ink, 1.5));
  }
  for (const Tree& tree : yard.trees) {
    const double radius = tree.crownRadius.metres() * frame.pixelsPerMetre;
    painter.setPen(QPen(theme.paper, 2.5));
    painter.drawEllipse(frame(tree.at), radius, radius);
    painter.setPen(QPen(theme.ink, 1.0, Qt::DashLine));
    painter.drawEllipse(frame(tree.at), radius, radius);
    painter.setPen(QPen(theme.ink, 1.5));
    painter.drawEllipse(frame(tree.at), 3.0, 3.0);
  }
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
      QObject::tr("Mean hours of direct sun a day, %1").arg(QString::fromStdString(text.span)));
}

// A round length of which about an eighth of the picture's width is left.
double barMetres(double metresAcross) {
  const double most = metresAcross / 8.0;
  const double power = std::pow(10.0, std::floor(std::log10(most)));
  for (const double step : {5.0, 2.0})
    if (step * power <= most) return step * power;
  return power;
}

// North is up. Beside the arrow, a length to go by.
void paintNorthAndScale(QPainter& painter, const Frame& frame, int right, const Theme& theme) {
  painter.setPen(QPen(theme.ink, 1.5));
  painter.setFont(fontFor(TextRole::Body));
  const int foot = kHeaderHeight - kSpace3;
  const QPolygonF arrow{QPointF(right - 5, foot - 18), QPointF(right - 10, foot),
                        QPointF(right - 5, foot - 4), QPointF(right, foot)};
  painter.setBrush(theme.ink);
  painter.drawPolygon(arrow);
  painter.setBrush(Qt::NoBrush);
  painter.drawText(QRect(right - 15, foot - 40, 20, 20), Qt::AlignCenter, QObject::tr("N"));
  const double metres = barMetres(frame.area.width());
  const int end = right - kSpace6 - kSpace2;
  const int start = end - qRound(metres * frame.pixelsPerMetre);
  painter.drawLine(start, foot, end, foot);
  for (const int x : {start, end}) painter.drawLine(x, foot - kSpace1, x, foot);
  painter.drawText(QRect(start - 60, foot - 26, end - start + 120, 20), Qt::AlignCenter,
                   QObject::tr("%1 m").arg(metres));
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

// Where the classes of sun begin, under the hours.
void paintClasses(QPainter& painter, QRect strip, const SunProfile& classes, const Theme& theme) {
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.quietInk);
  const auto mark = [&](double hours, const QString& words) {
    const int x = strip.left() + static_cast<int>(hours / kSunScaleTop * strip.width());
    painter.drawText(QRect(x - 120, strip.bottom() + 28, 240, 18), Qt::AlignHCenter, words);
    painter.fillRect(QRect(x, strip.top() - kSpace1, 1, strip.height() + kSpace1), theme.ink);
  };
  mark(classes.partFrom, QObject::tr("part sun from %1 h").arg(classes.partFrom));
  mark(classes.fullFrom, QObject::tr("full sun from %1 h").arg(classes.fullFrom));
}

int noteRows(const SunPictureText& text) {
  return (static_cast<int>(text.notes.size()) + kNoteColumns - 1) / kNoteColumns;
}

void paintNotes(QPainter& painter, const SunPictureText& text, QRect area, const Theme& theme) {
  painter.setFont(fontFor(TextRole::Note));
  const int rows = noteRows(text);
  const int width = area.width() / kNoteColumns;
  for (int i = 0; i < static_cast<int>(text.notes.size()); ++i) {
    const SunNote& note = text.notes[static_cast<std::size_t>(i)];
    const QPoint at(area.left() + i / rows * width, area.top() + i % rows * kNoteLine);
    painter.setPen(theme.quietInk);
    painter.drawText(QRect(at, QSize(64, kNoteLine)), Qt::AlignVCenter,
                     QString::fromStdString(note.name));
    painter.setPen(theme.ink);
    const QRect rest(at + QPoint(64, 0), QSize(width - 64 - kSpace4, kNoteLine));
    painter.drawText(rest, Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(QString::fromStdString(note.value),
                                                      Qt::ElideRight, rest.width()));
  }
}

}  // namespace

void writeSunPicture(const SunMap& map, const Yard& yard, const SunPictureText& text,
                     const QString& path) {
  const Theme theme = Theme::light();
  const double longer = std::max(map.area().width(), map.area().height());
  const Frame frame{map.area(), kMapPixels / longer};
  const QRect area(kSpace5, kHeaderHeight, frame.width(), frame.height());
  const int width = std::max(frame.width(), kLeastWidth);
  const int legend = area.bottom() + 1 + kSpace4;
  const int notes = area.bottom() + 1 + kLegendHeight;
  QImage image(width + 2 * kSpace5, notes + noteRows(text) * kNoteLine + kSpace4,
               QImage::Format_RGB32);
  image.fill(theme.paper);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
  painter.drawImage(QRectF(area), cellsOf(map, theme));
  painter.setClipRect(area);
  paintSolids(painter, yard, frame, theme);
  paintBeds(painter, yard, frame, theme);
  painter.setClipping(false);
  paintHeader(painter, text, width, theme);
  paintNorthAndScale(painter, frame, kSpace5 + width, theme);
  const QRect strip(kSpace5 + 60, legend, width - 120, kSpace4);
  paintLegend(painter, strip, theme);
  paintClasses(painter, strip, text.classes, theme);
  paintNotes(painter, text, QRect(kSpace5, notes, width, 0), theme);
  painter.end();
  if (!image.save(path))
    throw std::runtime_error("Cannot write " + path.toStdString() +
                             ". Choose a folder that exists and can be written to.");
}

}  // namespace tussock
