// SPDX-License-Identifier: MIT
#include "app/panels/dial_paint.h"

#include "app/look/theme.h"
#include "core/sun/position.h"

namespace tussock {

void paintDialTick(QPainter& painter, int x) {
  painter.fillRect(QRectF(x, kDialTop + kDialHigh, 1.0, 4.0), currentTheme().quietInk);
}

void paintDialHandle(QPainter& painter, QPointF at, bool focus) {
  const Theme& theme = currentTheme();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(focus ? theme.sky : theme.ink, focus ? 2.4 : 1.4));
  painter.setBrush(theme.raised);
  painter.drawEllipse(at, 8.0, 8.0);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.caution);
  painter.drawEllipse(at, 4.0, 4.0);
}

Date stepped(Date from, int days, int months) {
  Date day = from + std::chrono::months(months);
  if (!day.ok()) day = day.year() / day.month() / std::chrono::last;
  day = std::chrono::sys_days(day) + std::chrono::days(days);
  return isInExactYears(day) ? day : from;
}

}  // namespace tussock
