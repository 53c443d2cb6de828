// SPDX-License-Identifier: MIT
#include "app/panels/card_paint.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include "app/look/botanical.h"
#include "app/look/glyphs.h"
#include "app/look/oklab.h"
#include "app/look/theme.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kGlyphRadius = 22;

void paintGround(QPainter& painter, const QRect& rect, const CardState& state) {
  const Theme& theme = currentTheme();
  const QColor ground =
      state.lifted ? theme.panel
                   : (state.hovered ? mixed(theme.raised, theme.ink, 0.035) : theme.raised);
  painter.setBrush(ground);
  const bool strong = state.focused || state.lifted;
  painter.setPen(QPen(strong ? theme.sky : (state.hovered ? theme.edge : theme.line),
                      strong ? 2.0 : 1.0, state.lifted ? Qt::DashLine : Qt::SolidLine));
  const double inset = strong ? 1.0 : 0.5;
  painter.drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), kCorner, kCorner);
}

// Genus on one line, the rest on the next, as labels in a nursery have it.
void paintNames(QPainter& painter, const QRectF& box, const Species& species) {
  const QString name = text(species.botanicalName);
  const qsizetype gap = name.indexOf(QLatin1Char(' '));
  QFont font = fontFor(TextRole::Body);
  font.setWeight(QFont::Bold);
  const double line = QFontMetricsF(font).height();
  painter.setPen(currentTheme().ink);
  drawBotanical(painter, box.topLeft() + QPointF(0, line * 0.8), box.width(), name.left(gap), font);
  if (gap > 0)
    drawBotanical(painter, box.topLeft() + QPointF(0, line * 1.85), box.width(), name.mid(gap + 1),
                  font);
}

void paintCommonName(QPainter& painter, QPointF baseline, double width, const Species& species) {
  QFont font = fontFor(TextRole::Body);
  font.setPixelSize(12);
  painter.setFont(font);
  painter.setPen(currentTheme().quietInk);
  painter.drawText(baseline,
                   QFontMetricsF(font).elidedText(text(species.commonName), Qt::ElideRight, width));
}

void paintFacts(QPainter& painter, const QRectF& foot, const Species& species, UnitSystem units) {
  QFont note = fontFor(TextRole::Note);
  note.setPixelSize(12);
  painter.setFont(note);
  painter.setPen(currentTheme().ink);
  painter.drawText(QPointF(foot.left(), foot.bottom() - 10), sizeWords(species, units));
  const double top = foot.bottom() - 10 - kMarkSide + 2;
  const double drops = 3 * kDropStep + kMarkSide, suns = 2 * kSunStep + kMarkSide;
  const double right = foot.right() + 2;
  paintMoistureMarks(painter, QPointF(right - drops, top), species);
  paintSunMarks(painter, QPointF(right - drops - 6 - suns, top), species);
}

void paintNote(QPainter& painter, const QRectF& foot, const QString& note) {
  const QFont font = fontFor(TextRole::Note);
  painter.setFont(font);
  painter.setPen(currentTheme().caution);
  painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, note);
}

}  // namespace

void paintCard(QPainter& painter, const QRect& rect, const Species& species, UnitSystem units,
               const CardState& state) {
  const Theme& theme = currentTheme();
  paintGround(painter, rect, state);
  if (state.lifted) painter.setOpacity(0.45);
  const double left = rect.left() + kSpace3, width = rect.width() - 2.0 * kSpace3;
  const QPointF glyph(rect.left() + kSpace2 + kGlyphRadius + 1,
                      rect.top() + kSpace2 + kGlyphRadius);
  painter.drawPixmap(glyph - QPointF(kGlyphRadius, kGlyphRadius),
                     glyphSprite(glyphLook(species, std::nullopt, theme.dark), kGlyphRadius,
                                 painter.device()->devicePixelRatioF()));
  const double nameLeft = glyph.x() + kGlyphRadius + kSpace2;
  paintNames(painter, QRectF(nameLeft, rect.top() + kSpace3, rect.right() - kSpace2 - nameLeft, 40),
             species);
  paintCommonName(painter, QPointF(left, rect.top() + 68), width, species);
  paintBloomBar(painter, QRectF(left, rect.top() + 76, width + 2, 7), species);
  const QRectF foot(left, rect.bottom() - 31, width, 30);
  state.note.isEmpty() ? paintFacts(painter, foot, species, units)
                       : paintNote(painter, foot, state.note);
  painter.setOpacity(1.0);
}

QString cardWords(const Species& species, UnitSystem units) {
  const auto sentence = [](QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
  };
  const QString format = QCoreApplication::translate(
      "Card", "%1, %2\n%3 tall and set %4 apart\nIn flower: %5\n%6; %7");
  QString words = format.arg(text(species.botanicalName), text(species.commonName),
                             text(formatPlantSize(species.height(), units)),
                             text(formatPlantSize(species.spacing, units)), bloomWords(species),
                             sentence(sunWords(species)), moistureWords(species));
  for (const std::string& note : {species.toxicityNote, species.cautionNote, species.regulated})
    if (!note.empty())
      words += QCoreApplication::translate("Card", "\nCaution: %1").arg(text(note));
  return words;
}

}  // namespace tussock
