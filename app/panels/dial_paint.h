// SPDX-License-Identifier: MIT
// What the dials of the day and the year have in common: their measures, ticks and handle.
#pragma once

#include <QPainter>

#include "core/units/date.h"

namespace tussock {

// Pixels: left and right of the dial, above it, and its height.
inline constexpr double kDialSide = 14.0, kDialTop = 8.0, kDialHigh = 16.0;
inline constexpr double kNightHours = 0.6;   // of the sun scale, the colour of night
inline constexpr double kHiddenHours = 3.4;  // and of a sun behind the skyline

// A line one pixel wide under the dial.
void paintDialTick(QPainter& painter, int x);
void paintDialHandle(QPainter& painter, QPointF at, bool focus);
// A day that the month does not have becomes its last; no further than the years in which the
// sun's place is exact.
[[nodiscard]] Date stepped(Date from, int days, int months);

}  // namespace tussock
