// SPDX-License-Identifier: MIT
// What the canvas paints: the plan as kept, and over it what comes and goes.
#include <QPaintEvent>

#include "app/canvas/canvas.h"
#include "app/canvas/furniture.h"

namespace tussock {

namespace {}

void Canvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintPlan(painter);
  paintSun(painter);
  painter.setRenderHint(QPainter::Antialiasing);
  paintOverlay(painter);
}

void Canvas::paintPlan(QPainter& painter) {
  if (zooming_.isActive() && frame_.paintStretched(painter, mapping_, look_.theme.paper)) return;
  look_.dpr = devicePixelRatioF();
  const QPixmap& plan =
      frame_.picture(mapping_, look_.dpr, [this](QPainter& onPlan, const QRectF& part) {
        painter_.paint(onPlan, part, mapping_, look_);
        growing_.paint(onPlan, scene_, mapping_, look_);
      });
  painter.drawPixmap(0, 0, plan);
}

// Over the plan and under its words, so that what follows the pointer does not paint the plan anew.
void Canvas::paintSun(QPainter& painter) {
  switch (sunView_.choice().look) {
    case SunLook::Off:
      return;
    case SunLook::Hours:
      sun_.paint(painter, mapping_, look_, painter_.takenByLabels());
      break;
    case SunLook::Shadows:
      shadows_.paint(painter, mapping_, look_);
      break;
  }
  paintGrowth(painter);
  paintReadings(painter);
  if (zooming_.isActive()) return;
  painter_.paintLabels(painter, rect(), mapping_, look_);
}

// Where the sun was seen, over the map that it is held against.
void Canvas::paintReadings(QPainter& painter) const {
  for (const SunReading& reading : document_.yard().sunReadings) {
    const ObjectRef ref = refTo(reading.id);
    const Item* item = painter_.hidden().contains(ref) ? nullptr : scene_.find(ref);
    if (!item) continue;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    item->paint(painter, mapping_, look_);
    painter.restore();
  }
}

// How far the crowns reach that have grown on.
void Canvas::paintGrowth(QPainter& painter) const {
  if (sunView_.choice().yearsAhead == 0) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look_.theme.leaf, 1.4, Qt::DashLine));
  for (const Tree& tree : sunView_.yard().trees) {
    const Tree* now = document_.yard().trees.find(tree.id);
    if (!now || now->crownRadius == tree.crownRadius) continue;
    const double radius = mapping_.pixels(tree.crownRadius.metres());
    painter.drawEllipse(mapping_.toPixels(tree.at), radius, radius);
  }
  painter.restore();
}

void Canvas::paintOverlay(QPainter& painter) {
  preview_.paint(painter, scene_, mapping_, look_);
  if (preview_.empty()) paintSelection(painter);
  paintPlace(painter);
  paintMarked(painter);
  marks_.paint(painter, mapping_);
  if (tool_) {
    painter.save();
    tool_->paint(painter, mapping_);
    painter.restore();
  }
  if (figure_) paintFigure(painter, figureBox(), figure_->figure, figure_->note, look_.theme);
  paintFurniture(painter);
}

// Where it hides no name, if it can; where it is as long as that holds, for it must not jump about.
QRectF Canvas::figureBox() {
  if (!figure_) return {};
  const auto plate = [this](int way) {
    return figurePlate(mapping_.toPixels(figure_->at), figure_->figure, figure_->note, rect(), way);
  };
  if (!hasWordsIn(plate(figureWay_))) return plate(figureWay_);
  for (int way = 0; way < kFigureWays; ++way)
    if (!hasWordsIn(plate(way))) return plate(figureWay_ = way);
  return plate(figureWay_);
}

void Canvas::paintFurniture(QPainter& painter) {
  paintScaleBar(painter, mapping_, look_, foot_);
  if (sunView_.choice().look == SunLook::Shadows)
    paintSunCompass(painter, compassMiddle(), compass_, look_.theme);
  else
    paintNorthArrow(painter, mapping_, look_);
}

void Canvas::paintSelection(QPainter& painter) {
  painter.save();
  painter.setTransform(mapping_.transform(), true);
  for (const ObjectRef ref : document_.selection()) {
    const Item* item = scene_.find(ref);
    if (!item) continue;
    painter.strokePath(item->shape(), linePen(faded(look_.theme.paper, 0.8), 4.5));
    painter.strokePath(item->shape(), linePen(look_.theme.sky, 2.2));
  }
  painter.restore();
  for (const ObjectRef ref : document_.selection())
    if (const Item* item = scene_.find(ref))
      painter_.paintLabels(painter, mapping_.toPixels(item->bounds()), mapping_, look_);
}

void Canvas::paintPlace(QPainter& painter) const {
  painter.save();
  painter.setTransform(mapping_.transform(), true);
  for (const Polygon& part : place_) {
    painter.setPen(linePen(look_.theme.alert, 2.0, Qt::DashLine));
    painter.setBrush(faded(look_.theme.alert, 0.10));
    painter.drawPath(pathOf(part));
  }
  painter.restore();
}

// A ring with a cross, light under dark so that it shows on any ground.
void Canvas::paintMarked(QPainter& painter) const {
  if (!marked_) return;
  constexpr double kRing = 7.0, kArm = 12.0;
  const QPointF at = mapping_.toPixels(*marked_);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  for (const auto& [colour, width] : {std::pair{look_.theme.paper, 4.5}, {look_.theme.sky, 2.0}}) {
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawEllipse(at, kRing, kRing);
    painter.drawLine(at - QPointF(kArm, 0), at + QPointF(kArm, 0));
    painter.drawLine(at - QPointF(0, kArm), at + QPointF(0, kArm));
  }
  painter.restore();
}

}  // namespace tussock
