// SPDX-License-Identifier: MIT
#include "app/canvas/reading_words.h"

#include <cmath>
#include <QCoreApplication>
#include <QLocale>

namespace tussock {

namespace {

QString readingTr(const char* source) {
  return QCoreApplication::translate("Sun", source);
}

QString figure(double hours) {
  return QLocale().toString(hours, 'f', 1);
}

}  // namespace

QString differenceWords(double hours) {
  const QString size = figure(std::abs(hours));
  if (size == figure(0.0)) return readingTr("%1 h").arg(size);
  return readingTr("%1%2 h").arg(hours < 0.0 ? QStringLiteral("−") : QStringLiteral("+"), size);
}

QString readingWords(double seen, std::optional<double> computed) {
  if (!computed) return readingTr("%1 h seen").arg(figure(seen));
  return readingTr("%1 h seen, %2 computed: %3")
      .arg(figure(seen), figure(*computed), differenceWords(seen - *computed));
}

QString briefReading(double seen, std::optional<double> computed) {
  if (!computed) return readingTr("%1 h").arg(figure(seen));
  return readingTr("%1 h (%2)").arg(figure(seen), figure(*computed));
}

}  // namespace tussock
