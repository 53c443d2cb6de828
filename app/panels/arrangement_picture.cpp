// SPDX-License-Identifier: MIT
#include "app/panels/arrangement_picture.h"

#include <algorithm>
#include <QPainter>
#include <QPainterPath>

#include "app/look/glyphs.h"
#include "app/look/theme.h"

namespace tussock {

namespace {

void addRing(QPainterPath& path, const Ring& ring) {
  QPolygonF corners;
  for (const Point p : ring) corners << QPointF(p.x, p.y);
  path.addPolygon(corners);
  path.closeSubpath();
}

}  // namespace

ArrangementPicture::ArrangementPicture(Document& document, Id<Bed> bed,
                                       std::vector<KeptDrift> drifts, QWidget* parent)
    : QAbstractButton(parent), document_(document), bed_(bed), drifts_(std::move(drifts)) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
}

void ArrangementPicture::paintBed(QPainter& painter, const Bed& bed) const {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  addRing(path, bed.outline.outer);
  for (const Ring& hole : bed.outline.holes) addRing(path, hole);
  QPen edge(currentTheme().ink, 1.0);
  edge.setCosmetic(true);
  painter.setPen(edge);
  painter.setBrush(currentTheme().soil);
  painter.drawPath(path);
}

void ArrangementPicture::paintDrifts(QPainter& painter, double scale) const {
  painter.setPen(Qt::NoPen);
  for (const KeptDrift& drift : drifts_) {
    const Species* species = document_.facts().find(drift.species);
    const GlyphLook look =
        species ? glyphLook(*species, std::nullopt, currentTheme().dark) : GlyphLook();
    painter.setBrush(look.flower.isValid() ? look.flower : look.foliage);
    const double radius = std::max(drift.spacing.metres() * 0.46, 1.0 / scale);
    for (const Point place : drift.places)
      painter.drawEllipse(QPointF(place.x, place.y), radius, radius);
  }
}

void ArrangementPicture::paintEvent(QPaintEvent*) {
  const Bed* bed = document_.yard().beds.find(bed_);
  if (!bed) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Theme& theme = currentTheme();
  const bool marked = hasFocus() || underMouse();
  painter.setPen(QPen(marked ? theme.sky : theme.line, marked ? 2.0 : 1.0));
  painter.setBrush(theme.paper);
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), kCorner, kCorner);
  const Box box = boundsOf(bed->outline);
  const double wide = box.high.x - box.low.x, high = box.high.y - box.low.y;
  const double scale = std::min((width() - 16.0) / wide, (height() - 16.0) / high);
  painter.translate(width() / 2.0, height() / 2.0);
  painter.scale(scale, -scale);
  painter.translate(-(box.low.x + box.high.x) / 2.0, -(box.low.y + box.high.y) / 2.0);
  paintBed(painter, *bed);
  paintDrifts(painter, scale);
}

}  // namespace tussock
