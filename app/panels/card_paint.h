// SPDX-License-Identifier: MIT
// One species card of the bench.
#pragma once

#include <QPainter>
#include <QRect>
#include <QString>

#include "core/catalog/species.h"
#include "core/units/measure_text.h"

namespace tussock {

inline constexpr int kCardWidth = 190, kCardHeight = 116;

struct CardState {
  bool hovered = false;
  bool focused = false;
  bool lifted = false;
  QString note = {};  // in place of size and needs: why the species is left out
};
void paintCard(QPainter& painter, const QRect& rect, const Species& species, UnitSystem units,
               const CardState& state);
// All that a card shows, as sentences: tool tip and screen reader.
[[nodiscard]] QString cardWords(const Species& species, UnitSystem units);

}  // namespace tussock
