// SPDX-License-Identifier: MIT
#include "app/canvas/label.h"

#include <algorithm>
#include <array>
#include <QFontMetricsF>
#include <QHash>
#include <QPainterPath>
#include <QPixmapCache>

namespace tussock {

namespace {

constexpr double kHalo = 3.6;  // pixels, the width of its pen and the room left for it
constexpr int kMostKnown = 4000;

const QFont& fontOf(const Label& label, qsizetype line) {
  return line == 0 ? label.font : label.otherFont;
}

// Measured once: the same few words come again at every scale.
QSizeF sizeOf(const QString& line, const QFont& font) {
  static QHash<std::pair<QFont, QString>, QSizeF> known;
  const std::pair key(font, line);
  if (const auto found = known.constFind(key); found != known.constEnd()) return *found;
  if (known.size() >= kMostKnown) known.clear();
  const QFontMetricsF metrics(font);
  return *known.insert(key, {metrics.horizontalAdvance(line), metrics.height()});
}

QSizeF sizeOf(const Label& label) {
  QSizeF size;
  for (qsizetype i = 0; i < label.lines.size(); ++i) {
    const QSizeF line = sizeOf(label.lines[i], fontOf(label, i));
    size = {std::max(size.width(), line.width()), size.height() + line.height()};
  }
  return size;
}

bool collides(const QRectF& box, const std::vector<QRectF>& taken) {
  return std::any_of(taken.begin(), taken.end(),
                     [&](const QRectF& other) { return box.intersects(other); });
}

// The words as one path, from the top left corner of their box.
QPainterPath pathOf(const PlacedLabel& placed) {
  QPainterPath path;
  double top = 0.0;
  for (qsizetype i = 0; i < placed.label.lines.size(); ++i) {
    const QFont& font = fontOf(placed.label, i);
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(placed.label.lines[i]);
    path.addText(QPointF((placed.box.width() - width) / 2.0, top + metrics.ascent()), font,
                 placed.label.lines[i]);
    top += metrics.height();
  }
  return path;
}

QPixmap drawPicture(const PlacedLabel& placed, double dpr, const QColor& halo) {
  const QSizeF size = placed.box.size() + QSizeF(2.0 * kHalo, 2.0 * kHalo);
  QPixmap picture((size * dpr).toSize() + QSize(1, 1));
  picture.setDevicePixelRatio(dpr);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(kHalo, kHalo);
  const QPainterPath path = pathOf(placed);
  painter.strokePath(path, QPen(halo, kHalo, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.fillPath(path, placed.label.ink);
  return picture;
}

// Kept for all labels that read alike, whatever the scale.
QPixmap pictureOf(const PlacedLabel& placed, double dpr, const QColor& halo) {
  const Label& label = placed.label;
  const QString key = QStringLiteral("label/%1/%2/%3/%4/%5/%6")
                          .arg(dpr)
                          .arg(label.ink.rgba())
                          .arg(halo.rgba())
                          .arg(label.font.key(), label.otherFont.key(), label.lines.join('\n'));
  QPixmap picture;
  if (QPixmapCache::find(key, &picture)) return picture;
  picture = drawPicture(placed, dpr, halo);
  QPixmapCache::insert(key, picture);
  return picture;
}

}  // namespace

std::vector<PlacedLabel> placeLabels(std::vector<Label> wishes, std::vector<QRectF> taken) {
  std::stable_sort(wishes.begin(), wishes.end(),
                   [](const Label& a, const Label& b) { return a.weight > b.weight; });
  std::vector<PlacedLabel> placed;
  for (Label& wish : wishes) {
    QSizeF size = sizeOf(wish);
    if (size.width() > wish.room && wish.lines.size() > 1) {
      wish.lines = {wish.lines.first()};
      size = sizeOf(wish);
    }
    if (size.width() > wish.room) continue;
    for (const double share : {0.0, 0.5, -0.5, 1.0, -1.0}) {
      QRectF box(QPointF(), size);
      box.moveCenter(wish.middle + QPointF(0.0, share * wish.slide));
      if (collides(box.adjusted(-3, 0, 3, 0), taken)) continue;
      taken.push_back(box);
      placed.push_back({std::move(wish), box, {}});
      break;
    }
  }
  return placed;
}

void paintLabel(QPainter& painter, PlacedLabel& placed, QPointF origin, const QColor& halo) {
  const double dpr = painter.device()->devicePixelRatioF();
  if (placed.picture.isNull() || placed.picture.devicePixelRatio() != dpr)
    placed.picture = pictureOf(placed, dpr, halo);
  const QPointF corner = origin + placed.box.topLeft() - QPointF(kHalo, kHalo);
  painter.drawPixmap(corner.toPoint(), placed.picture);
}

}  // namespace tussock
