// SPDX-License-Identifier: MIT
#include "app/look/botanical.h"

#include <algorithm>
#include <QFontMetricsF>
#include <QStringList>

namespace tussock {

namespace {

bool isUprightWord(const QString& word) {
  static const QStringList words{QStringLiteral("var."), QStringLiteral("subsp."),
                                 QStringLiteral("f."),   QStringLiteral("sp."),
                                 QStringLiteral("spp."), QStringLiteral("×")};
  return words.contains(word);
}

}  // namespace

QList<NamePart> nameParts(const QString& botanicalName) {
  QList<NamePart> parts;
  bool quoted = false;
  for (const QString& word : botanicalName.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    quoted = quoted || word.startsWith(QLatin1Char('\''));
    const Slant slant = quoted || isUprightWord(word) ? Slant::Upright : Slant::Italic;
    if (word.endsWith(QLatin1Char('\''))) quoted = false;
    if (!parts.isEmpty() && parts.last().slant == slant) {
      parts.last().text += QLatin1Char(' ') + word;
    } else {
      parts.append({word, slant});
    }
  }
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

}  // namespace tussock
