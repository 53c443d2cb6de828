// SPDX-License-Identifier: MIT
#include <QFontMetricsF>
#include <QPaintEngine>
#include <QPainterPath>
#include <QPolygonF>

#include "app/print/paper_symbols.h"
#include "app/print/plan_output.h"
#include "core/sheets/text_width.h"

namespace tussock {

namespace {

constexpr double kFontUnits = 200.0;  // the font is made this large and scaled, so never rounded
constexpr double kHalo = 0.6;         // mm
constexpr double kHatch = 1.7;        // mm between lines of a hatch

QFont fontOf(const PaperText& text) {
  QFont font;
  font.setFamilies({QStringLiteral("Lato"), QStringLiteral("Carlito"), QStringLiteral("Noto Sans"),
                    QStringLiteral("sans-serif")});
  font.setPixelSize(static_cast<int>(kFontUnits));
  font.setBold(text.bold);
  font.setItalic(text.italic);
  font.setHintingPreference(QFont::PreferNoHinting);
  // Spaced letters are not joined into ligatures, which searching a PDF does not find.
  font.setLetterSpacing(QFont::AbsoluteSpacing, 0.05);
  return font;
}

void paintHalo(QPainter& painter, QPointF at, const QFont& font, const QString& text,
               double perMillimetre) {
  QPainterPath outline;
  outline.addText(at, font, text);
  painter.setPen(
      QPen(Qt::white, 2.0 * kHalo * perMillimetre, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::white);
  painter.drawPath(outline);
}

// A picture file goes to machines that lack the font: there the letters are shapes.
void paintWords(QPainter& painter, QPointF at, const QFont& font, const QString& words) {
  if (painter.paintEngine()->type() == QPaintEngine::SVG) {
    QPainterPath letters;
    letters.addText(at, font, words);
    return painter.fillPath(letters, paperInk());
  }
  painter.setFont(font);
  painter.setPen(paperInk());
  painter.drawText(at, words);
}

void paintText(QPainter& painter, const PaperText& text) {
  const QString words = QString::fromStdString(text.text);
  const QFont font = fontOf(text);
  const double width = QFontMetricsF(font).horizontalAdvance(words);
  const double unit = points(text.size) * kMillimetresPerPoint / kFontUnits;
  const QPointF at(text.align == Align::Left     ? 0.0
                   : text.align == Align::Centre ? -width / 2.0
                                                 : -width,
                   0.0);
  painter.save();
  painter.translate(text.at.x, text.at.y);
  painter.rotate(-text.turnDegrees);
  painter.scale(unit, unit);
  if (text.halo) paintHalo(painter, at, font, words, 1.0 / unit);
  paintWords(painter, at, font, words);
  painter.restore();
}

QPainterPath pathOf(const PaperPath& path) {
  QPainterPath result;
  result.setFillRule(Qt::OddEvenFill);
  for (const auto& ring : path.rings) {
    QPolygonF polygon;
    for (const PaperPoint p : ring) polygon << QPointF(p.x, p.y);
    result.addPolygon(polygon);
    if (path.closed) result.closeSubpath();
  }
  return result;
}

QPen penOf(Weight weight, Dash dash) {
  const double width = millimetres(weight);
  QPen pen(paperInk(), width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
  switch (dash) {
    case Dash::Solid:
      break;
    case Dash::Dashed:
      pen.setDashPattern({1.8 / width, 1.2 / width});
      break;
    case Dash::DashDot:
      pen.setDashPattern({4.0 / width, 1.0 / width, 0.5 / width, 1.0 / width});
      break;
  }
  return pen;
}

// Slanting lines inside a shape: drawn, not a brush, which would depend on the device.
void paintHatch(QPainter& painter, const QPainterPath& shape) {
  const QRectF box = shape.boundingRect();
  painter.save();
  painter.setClipPath(shape, Qt::IntersectClip);
  painter.setPen(penOf(Weight::Hair, Dash::Solid));
  for (double x = box.left() - box.height(); x < box.right(); x += kHatch)
    painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
  painter.restore();
}

void paintPath(QPainter& painter, const PaperPath& path) {
  const QPainterPath shape = pathOf(path);
  if (path.wash != Wash::None) painter.fillPath(shape, washOf(path.wash, path.colour));
  if (path.wash == Wash::Building) paintHatch(painter, shape);
  if (!path.stroked) return;
  painter.strokePath(shape, penOf(path.weight, path.dash));
}

// Cut off at the drawing's edge, where a match line may run through a symbol.
void paintPlant(QPainter& painter, const PaperPlant& plant, const PaperBox& window) {
  const QRectF box(window.left, window.top, window.width(), window.height());
  const double r = plant.radius + 0.5;
  if (box.contains(QRectF(plant.at.x - r, plant.at.y - r, 2.0 * r, 2.0 * r)))
    return paintPaperPlant(painter, plant);
  painter.save();
  painter.setClipRect(box, Qt::IntersectClip);
  paintPaperPlant(painter, plant);
  painter.restore();
}

void paintLabel(QPainter& painter, const PaperLabel& label) {
  if (!label.leader.empty()) {
    PaperPath leader;
    leader.rings = {label.leader};
    leader.closed = false, leader.weight = Weight::Hair;
    paintPath(painter, leader);
    painter.setPen(penOf(Weight::Fine, Dash::Solid));  // a ring: a dot is a plant that is there
    painter.setBrush(Qt::white);
    painter.drawEllipse(QPointF(label.leader.back().x, label.leader.back().y), 0.6, 0.6);
  }
  paintText(painter, label.text);
}

}  // namespace

void paintSheet(QPainter& painter, const Sheet& sheet) {
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  for (const PaperItem& item : sheet.items) {
    if (const auto* path = std::get_if<PaperPath>(&item)) paintPath(painter, *path);
    if (const auto* text = std::get_if<PaperText>(&item)) paintText(painter, *text);
    if (const auto* plant = std::get_if<PaperPlant>(&item))
      paintPlant(painter, *plant, sheet.drawing);
    if (const auto* label = std::get_if<PaperLabel>(&item)) paintLabel(painter, *label);
  }
  painter.restore();
}

}  // namespace tussock
