// SPDX-License-Identifier: MIT
// Small drawn marks for the facts of a species, and the same in words.
#pragma once

#include <QPainter>
#include <QString>

#include "core/catalog/species.h"
#include "core/units/measure_text.h"

namespace tussock {

// Twelve months, those in flower in the flower's colour.
void paintBloomBar(QPainter& painter, const QRectF& rect, const Species& species);
// An open, a half and a full disc for full sun, part and shade; four drops from dry to wet. What
// does not suit is faint. Both are painted from the left into boxes of the rect's height.
void paintSunMarks(QPainter& painter, QPointF topLeft, const Species& species);
void paintMoistureMarks(QPainter& painter, QPointF topLeft, const Species& species);
inline constexpr double kMarkSide = 10.0, kSunStep = 11.5, kDropStep = 9.0;

[[nodiscard]] QString sunWords(const Species& species);       // "full sun or part shade"
[[nodiscard]] QString moistureWords(const Species& species);  // "dry or medium soil"
[[nodiscard]] QString bloomWords(const Species& species);     // "July to September, violet"
[[nodiscard]] QString sizeWords(const Species& species, UnitSystem units);  // "3.0 ft × 18 in"
[[nodiscard]] QString heightMark(double metres, UnitSystem units);  // of a scale: "2 ft", "0.5 m"
// For a tool tip: what looks like markup in a plant's own text is shown, not followed; long lines
// are broken.
[[nodiscard]] QString plainTip(const QString& words);
[[nodiscard]] QString text(std::string_view utf8);

}  // namespace tussock
