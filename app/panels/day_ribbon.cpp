// SPDX-License-Identifier: MIT
#include "app/panels/day_ribbon.h"

#include <algorithm>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "app/look/sun_scale.h"
#include "app/look/theme.h"
#include "core/sun/position.h"

namespace tussock {

namespace {
constexpr int kPart = 5;  // minutes
constexpr double kSide = 14.0, kTop = 8.0, kHigh = 16.0;
}  // namespace

DayRibbon::DayRibbon(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("sun-day"));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setToolTip(tr("Drag the sun, or use the arrow keys; Page up and Page down step an hour"));
}

void DayRibbon::show(const CivilDay& day, const Settings& settings, int minute) {
  minute_ = minute;
  light_.clear();
  for (int part = 0; part < kMinutesInDay; part += kPart)
    light_.push_back(
        sunPosition(day.at(part + kPart / 2), settings.latitude, settings.longitude).altitude >
        Angle());
  setAccessibleName(tr("Time of day: %1").arg(day.clock(day.at(minute))));
  update();
}

double DayRibbon::xOf(int minute) const {
  return kSide + (width() - 2.0 * kSide) * minute / kMinutesInDay;
}

void DayRibbon::choose(int minute) {
  minute = std::clamp(minute, 0, kMinutesInDay - 1);
  if (minute != minute_) emit minuteChosen(minute);
}

void DayRibbon::chooseAt(double x) {
  const double share = (x - kSide) / std::max(1.0, width() - 2.0 * kSide);
  choose(int(std::clamp(share, 0.0, 1.0) * kMinutesInDay / kPart + 0.5) * kPart);
}

void DayRibbon::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Theme& theme = currentTheme();
  for (std::size_t i = 0; i < light_.size(); ++i) {
    const double from = xOf(int(i) * kPart), to = xOf(int(i + 1) * kPart);
    painter.fillRect(QRectF(from, kTop, to - from + 0.5, kHigh),
                     sunColour(light_[i] ? kSunScaleTop : 0.6));
  }
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.quietInk);
  for (int hour = 0; hour <= 24; hour += 3) {
    const double x = xOf(hour * 60);
    painter.drawLine(QPointF(x, kTop + kHigh), QPointF(x, kTop + kHigh + 3));
    painter.drawText(QRectF(x - 24, kTop + kHigh + 4, 48, 14), Qt::AlignCenter,
                     QStringLiteral("%1:00").arg(hour));
  }
  paintHandle(painter);
}

void DayRibbon::paintHandle(QPainter& painter) const {
  const Theme& theme = currentTheme();
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF at(xOf(minute_), kTop + kHigh / 2.0);
  painter.setPen(QPen(hasFocus() ? theme.sky : theme.ink, hasFocus() ? 2.4 : 1.4));
  painter.setBrush(theme.raised);
  painter.drawEllipse(at, 8.0, 8.0);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.caution);
  painter.drawEllipse(at, 4.0, 4.0);
}

void DayRibbon::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) chooseAt(event->position().x());
}

void DayRibbon::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) chooseAt(event->position().x());
}

void DayRibbon::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return choose(minute_ - kPart);
    case Qt::Key_Right:
      return choose(minute_ + kPart);
    case Qt::Key_PageDown:
      return choose(minute_ - 60);
    case Qt::Key_PageUp:
      return choose(minute_ + 60);
    default:
      return QWidget::keyPressEvent(event);
  }
}

void DayRibbon::focusInEvent(QFocusEvent*) {
  update();
}

void DayRibbon::focusOutEvent(QFocusEvent*) {
  update();
}

}  // namespace tussock
