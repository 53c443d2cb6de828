// SPDX-License-Identifier: MIT
// Plant symbols for paper: line drawings whose edge tells habit and flower, so that they read in
// black and white, on a light wash of the flower's colour.
#pragma once

#include <QPainter>

#include "core/sheets/sheet.h"

namespace tussock {

// One unit of the painter is a millimetre.
void paintPaperPlant(QPainter& painter, const PaperPlant& plant);
[[nodiscard]] QColor washOf(const Rgb& flower);  // light enough for ink to read on
// Of ground that a path covers; of a drift, of its flowers' colour. White where there is none.
[[nodiscard]] QColor washOf(Wash wash, const Rgb& flower);
[[nodiscard]] QColor paperInk();

}  // namespace tussock
