// SPDX-License-Identifier: MIT
// Botanical names as they are set: Latin in italics; cultivars, ranks and the hybrid sign upright
// (International Code of Nomenclature for Cultivated Plants, 9th ed., recommendation 14A).
#pragma once

#include <QFont>
#include <QList>
#include <QPainter>
#include <QString>

namespace tussock {

enum class Slant { Italic, Upright };
struct NamePart {
  QString text;
  Slant slant = Slant::Italic;
  bool operator==(const NamePart&) const = default;
};
[[nodiscard]] QList<NamePart> nameParts(const QString& botanicalName);
[[nodiscard]] QString botanicalHtml(const QString& botanicalName);
// On one line from `baseline`, cut short with an ellipsis at `width`. Gives the width used.
double drawBotanical(QPainter& painter, QPointF baseline, double width, const QString& name,
                     const QFont& upright);

// Pixels that it takes in full.
[[nodiscard]] double botanicalWidth(const QString& name, const QFont& upright);

}  // namespace tussock
