// SPDX-License-Identifier: MIT
#include "app/look/botanical.h"

#include <algorithm>
#include <QFontMetricsF>
#include <QStringList>

#include "core/catalog/botanical_parts.h"

namespace tussock {

QList<NamePart> nameParts(const QString& botanicalName) {
  QList<NamePart> parts;
  for (const BotanicalPart& part : botanicalParts(botanicalName.toStdString()))
    parts.append({QString::fromStdString(part.text), part.italic ? Slant::Italic : Slant::Upright});
  return parts;
}

QString botanicalHtml(const QString& botanicalName) {
  QStringList texts;
  for (const NamePart& part : nameParts(botanicalName)) {
    const QString escaped = part.text.toHtmlEscaped();
    texts << (part.slant == Slant::Italic ? QStringLiteral("<i>%1</i>").arg(escaped) : escaped);
  }
  return texts.join(QLatin1Char(' '));
}

double drawBotanical(QPainter& painter, QPointF baseline, double width, const QString& name,
                     const QFont& upright) {
  double x = 0.0;
  for (const NamePart& part : nameParts(name)) {
    QFont font = upright;
    font.setItalic(part.slant == Slant::Italic);
    const QFontMetricsF metrics(font);
    const double left = width - x;
    if (left <= metrics.averageCharWidth()) break;
    const QString text = metrics.elidedText(part.text, Qt::ElideRight, left);
    painter.setFont(font);
    painter.drawText(baseline + QPointF(x, 0), text);
    x += metrics.horizontalAdvance(text) + metrics.horizontalAdvance(QLatin1Char(' '));
  }
  return std::max(0.0, x);
}

double botanicalWidth(const QString& name, const QFont& upright) {
  double width = 0.0;
  for (const NamePart& part : nameParts(name)) {
    QFont font = upright;
    font.setItalic(part.slant == Slant::Italic);
    const QFontMetricsF metrics(font);
    width += metrics.horizontalAdvance(part.text + QLatin1Char(' '));
  }
  return width;
}

}  // namespace tussock
