// SPDX-License-Identifier: MIT
#include "app/panels/arrangement_picture.h"

#include <algorithm>
#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include "app/canvas/item.h"
#include "app/look/botanical.h"
#include "app/look/glyphs.h"
#include "app/look/theme.h"
#include "app/panels/species_marks.h"
#include "core/planting/edit_drift.h"

namespace tussock {

ArrangementPicture::ArrangementPicture(Document& document, Id<Bed> bed,
                                       std::vector<KeptDrift> drifts, QWidget* parent)
    : QAbstractButton(parent), document_(document), bed_(bed), drifts_(std::move(drifts)) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
}

void ArrangementPicture::paintBed(QPainter& painter, const Bed& bed) const {
  QPen edge(currentTheme().ink, 1.0);
  edge.setCosmetic(true);
  painter.setPen(edge);
  painter.setBrush(currentTheme().soil);
  painter.drawPath(pathOf(bed.outline));
}

// As long as drawing a plan takes: what is looked at is shaped once. The ground layer lies under
// the main one; bulbs, gone by summer, are left out.
void ArrangementPicture::shapeDrifts() {
  const bool dark = currentTheme().dark;
  if (!shapes_.empty() && dark == dark_) return;
  shapes_.clear();
  dark_ = dark;
  for (const Layer layer : {Layer::Ground, Layer::Main})
    for (const KeptDrift& drift : drifts_)
      if (drift.layer == layer) shapes_.push_back(shapeOf(drift));
}

ArrangementPicture::Shape ArrangementPicture::shapeOf(const KeptDrift& drift) const {
  Shape shape;
  shape.drift = &drift;
  for (const Polygon& piece : outlineOf(drift)) shape.outline.addPath(pathOf(piece));
  const Species* species = document_.facts().find(drift.species);
  const GlyphLook look = species ? glyphLook(*species, std::nullopt, dark_) : GlyphLook();
  shape.colour = look.flower.isValid() ? look.flower : look.foliage;
  return shape;
}

// Outlines, and the places of the plants where they can be told apart.
void ArrangementPicture::paintDrifts(QPainter& painter, double scale) const {
  QPen edge(faded(currentTheme().ink, 0.55), 0.8);
  edge.setCosmetic(true);
  painter.setPen(edge);
  for (const Shape& shape : shapes_) {
    painter.setBrush(shape.colour);
    painter.drawPath(shape.outline);
  }
  constexpr double kApart = 5.0;  // pixels
  painter.setPen(Qt::NoPen);
  painter.setBrush(faded(currentTheme().ink, 0.7));
  for (const KeptDrift& drift : drifts_)
    if (drift.layer == Layer::Main && drift.spacing.metres() * scale >= kApart)
      for (const Point place : drift.places)
        painter.drawEllipse(QPointF(place.x, place.y), 0.9 / scale, 0.9 / scale);
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
  const QTransform onBed = onPicture(*bed);
  painter.setTransform(onBed, true);
  shapeDrifts();
  paintBed(painter, *bed);
  paintDrifts(painter, onBed.m11());
}

QTransform ArrangementPicture::onPicture(const Bed& bed) const {
  const Box box = boundsOf(bed.outline);
  const double wide = box.high.x - box.low.x, high = box.high.y - box.low.y;
  const double scale = std::min((width() - 16.0) / wide, (height() - 16.0) / high);
  QTransform onBed;
  onBed.translate(width() / 2.0, height() / 2.0);
  onBed.scale(scale, -scale);
  onBed.translate(-(box.low.x + box.high.x) / 2.0, -(box.low.y + box.high.y) / 2.0);
  return onBed;
}

// Of drifts that lie over each other, the one drawn last.
QString ArrangementPicture::wordsAt(QPointF at) {
  const Bed* bed = document_.yard().beds.find(bed_);
  if (!bed) return {};
  shapeDrifts();
  const QPointF place = onPicture(*bed).inverted().map(at);
  const auto found = std::find_if(shapes_.rbegin(), shapes_.rend(), [&](const Shape& shape) {
    return shape.outline.contains(place);
  });
  if (found == shapes_.rend()) return {};
  const KeptDrift& here = *found->drift;
  std::size_t all = 0;
  for (const KeptDrift& drift : drifts_)
    if (drift.species == here.species) all += drift.places.size();
  const QString count = all == here.places.size()
                            ? QString::number(all)
                            : tr("%1 here, %2 in all").arg(here.places.size()).arg(all);
  const Species* species = document_.facts().find(here.species);
  const QString name = botanicalHtml(QString::fromStdString(here.species));
  return species ? tr("%1<br>%2: %3")
                       .arg(name, tussock::text(species->commonName).toHtmlEscaped(), count)
                 : tr("%1: %2").arg(name, count);
}

bool ArrangementPicture::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QAbstractButton::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const QString words = wordsAt(help->pos());
  if (words.isEmpty()) return QAbstractButton::event(event);
  QToolTip::showText(help->globalPos(), words, this);
  return true;
}

}  // namespace tussock
