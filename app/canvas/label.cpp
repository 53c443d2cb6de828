// SPDX-License-Identifier: MIT
#include "app/canvas/label.h"

#include <algorithm>
#include <array>
#include <QFontMetricsF>
#include <QPainterPath>

namespace tussock {

namespace {

const QFont& fontOf(const Label& label, qsizetype line) {
  return line == 0 ? label.font : label.otherFont;
}

QSizeF sizeOf(const Label& label) {
  QSizeF size;
  for (qsizetype i = 0; i < label.lines.size(); ++i) {
    const QFontMetricsF metrics(fontOf(label, i));
    size.rwidth() = std::max(size.width(), metrics.horizontalAdvance(label.lines[i]));
    size.rheight() += metrics.height();
  }
  return size;
}

bool collides(const QRectF& box, const std::vector<QRectF>& taken) {
  return std::any_of(taken.begin(), taken.end(),
                     [&](const QRectF& other) { return box.intersects(other); });
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
      placed.push_back({std::move(wish), box});
      break;
    }
  }
  return placed;
}

void paintLabel(QPainter& painter, const PlacedLabel& placed, const QColor& halo) {
  QPainterPath path;
  double top = placed.box.top();
  for (qsizetype i = 0; i < placed.label.lines.size(); ++i) {
    const QFont& font = fontOf(placed.label, i);
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(placed.label.lines[i]);
    path.addText(QPointF(placed.box.center().x() - width / 2.0, top + metrics.ascent()), font,
                 placed.label.lines[i]);
    top += metrics.height();
  }
  painter.setPen(QPen(halo, 3.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);
  painter.setPen(Qt::NoPen);
  painter.fillPath(path, placed.label.ink);
}

}  // namespace tussock
