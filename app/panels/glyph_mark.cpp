// SPDX-License-Identifier: MIT
#include "app/panels/glyph_mark.h"

#include <QPainter>

#include "app/look/glyphs.h"
#include "app/look/theme.h"

namespace tussock {

namespace {
constexpr int kMarkRadius = 10;  // pixels
}

GlyphMark::GlyphMark(Document& document, std::string species, QWidget* parent)
    : QWidget(parent), document_(document), species_(std::move(species)) {
  setFixedSize(2 * kMarkRadius, 2 * kMarkRadius);
}

void GlyphMark::paintEvent(QPaintEvent*) {
  const Species* species = document_.facts().find(species_);
  if (species == nullptr) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintGlyph(
      painter, QPointF(kMarkRadius, kMarkRadius), kMarkRadius,
      glyphLook(*species, std::nullopt, currentTheme().dark, document_.facts().hemisphere()));
}

}  // namespace tussock
