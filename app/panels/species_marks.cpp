// SPDX-License-Identifier: MIT
#include "app/panels/species_marks.h"

#include <algorithm>
#include <QCoreApplication>
#include <QLocale>
#include <QPainterPath>
#include <QTextDocument>

#include "app/look/glyphs.h"
#include "app/look/oklab.h"
#include "app/look/theme.h"

namespace tussock {

namespace {

QString markTr(const char* source) {
  return QCoreApplication::translate("SpeciesMarks", source);
}

template <class E>
bool suits(const std::vector<E>& classes, E one) {
  return std::find(classes.begin(), classes.end(), one) != classes.end();
}

void paintDisc(QPainter& painter, QPointF middle, SunNeed need, const QColor& colour) {
  const double r = kMarkSide / 2.0 - 1.2;
  const QRectF box(middle.x() - r, middle.y() - r, 2 * r, 2 * r);
  painter.setPen(QPen(colour, 1.3));
  painter.setBrush(need == SunNeed::Shade ? QBrush(colour) : QBrush(Qt::NoBrush));
  painter.drawEllipse(box);
  if (need != SunNeed::Part) return;
  painter.setBrush(colour);
  painter.drawPie(box, -90 * 16, 180 * 16);
}

QPainterPath drop(QPointF middle) {
  const double r = kMarkSide * 0.30;
  QPainterPath path(middle + QPointF(0, -1.75 * r));
  path.cubicTo(middle + QPointF(0.6 * r, -0.7 * r), middle + QPointF(r, -0.2 * r),
               middle + QPointF(r, 0.45 * r));
  path.arcTo(QRectF(middle.x() - r, middle.y() - 0.55 * r, 2 * r, 2 * r), 0, -180);
  path.cubicTo(middle + QPointF(-r, -0.2 * r), middle + QPointF(-0.6 * r, -0.7 * r),
               middle + QPointF(0, -1.75 * r));
  return path;
}

QString joined(const QStringList& words) {
  return words.join(QLatin1Char(' ') + markTr("or") + QLatin1Char(' '));
}

}  // namespace

QString text(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), qsizetype(utf8.size()));
}

// A tip breaks the lines of rich text alone.
QString plainTip(const QString& words) {
  constexpr qsizetype kLongestLine = 80;
  const QStringList lines = words.split(QLatin1Char('\n'));
  const bool wide = std::any_of(lines.begin(), lines.end(),
                                [](const QString& line) { return line.size() > kLongestLine; });
  return wide || Qt::mightBeRichText(words) ? Qt::convertFromPlainText(words, Qt::WhiteSpaceNormal)
                                            : words;
}

QString heightMark(double metres, UnitSystem units) {
  if (units == UnitSystem::Metres) return markTr("%1 m").arg(QLocale().toString(metres));
  return markTr("%1 ft").arg(qRound(Length::metres(metres).inches() / 12.0));
}

void paintBloomBar(QPainter& painter, const QRectF& rect, const Species& species) {
  const Theme& theme = currentTheme();
  const QColor flower = glyphLook(species, std::nullopt, theme.dark).flower;
  const bool pale = !theme.dark && flower.isValid() && toOklab(flower).lightness > 0.86;
  const double step = rect.width() / 12.0;
  for (int month = 1; month <= 12; ++month) {
    const bool blooms = flower.isValid() && species.bloomsInMonth(month);
    const QRectF cell(rect.left() + (month - 1) * step, rect.top(), step - 2.0, rect.height());
    painter.setPen(blooms && pale ? QPen(theme.edge, 0.8) : QPen(Qt::NoPen));
    painter.setBrush(blooms ? flower : theme.line);
    painter.drawRoundedRect(blooms ? cell : cell.adjusted(0, 1.5, 0, -1.5), 1.5, 1.5);
  }
}

void paintSunMarks(QPainter& painter, QPointF topLeft, const Species& species) {
  const Theme& theme = currentTheme();
  QPointF middle = topLeft + QPointF(kMarkSide / 2.0, kMarkSide / 2.0);
  for (const SunNeed need : {SunNeed::Full, SunNeed::Part, SunNeed::Shade}) {
    paintDisc(painter, middle, need, suits(species.sun, need) ? theme.ink : theme.line);
    middle.rx() += kSunStep;
  }
}

void paintMoistureMarks(QPainter& painter, QPointF topLeft, const Species& species) {
  const Theme& theme = currentTheme();
  QPointF middle = topLeft + QPointF(kMarkSide / 2.0, kMarkSide / 2.0 + 0.5);
  for (const Moisture m : {Moisture::Dry, Moisture::Medium, Moisture::Moist, Moisture::Wet}) {
    const QColor colour = suits(species.moisture, m) ? theme.sky : theme.line;
    painter.setPen(QPen(colour, 1.2));
    painter.setBrush(m == Moisture::Dry ? QBrush(Qt::NoBrush) : QBrush(colour));
    painter.drawPath(drop(middle));
    middle.rx() += kDropStep;
  }
}

QString sunWords(const Species& species) {
  QStringList words;
  if (suits(species.sun, SunNeed::Full)) words << markTr("full sun");
  if (suits(species.sun, SunNeed::Part)) words << markTr("part shade");
  if (suits(species.sun, SunNeed::Shade)) words << markTr("shade");
  return joined(words);
}

QString moistureWords(const Species& species) {
  QStringList words;
  if (suits(species.moisture, Moisture::Dry)) words << markTr("dry");
  if (suits(species.moisture, Moisture::Medium)) words << markTr("medium");
  if (suits(species.moisture, Moisture::Moist)) words << markTr("moist");
  if (suits(species.moisture, Moisture::Wet)) words << markTr("wet");
  return words.isEmpty() ? QString() : joined(words) + QLatin1Char(' ') + markTr("soil");
}

QString bloomWords(const Species& species) {
  const auto months = species.bloomMonths();
  if (!months) return markTr("no flowers to speak of");
  const QLocale locale;
  const QString first = locale.standaloneMonthName(months->first);
  const QString last = locale.standaloneMonthName(months->last);
  const QString when = first == last ? first : markTr("%1 to %2").arg(first, last);
  return when + QStringLiteral(", ") + text(species.flowerColourWord);
}

QString sizeWords(const Species& species, UnitSystem units) {
  return text(formatPlantSize(species.height(), units)) + QStringLiteral(" × ") +
         text(formatPlantSize(species.spacing, units));
}

}  // namespace tussock
