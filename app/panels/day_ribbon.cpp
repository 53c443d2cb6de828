// SPDX-License-Identifier: MIT
#include "app/panels/day_ribbon.h"

#include <algorithm>
#include <cmath>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "app/look/sun_scale.h"
#include "app/look/theme.h"
#include "app/panels/dial_paint.h"
#include "core/sun/horizon.h"

namespace tussock {

namespace {
constexpr int kPart = 5;  // minutes
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
  const Horizon horizon(settings);
  for (int part = 0; part < kMinutesInDay; part += kPart) {
    const SunPosition sun =
        sunPosition(day.at(part + kPart / 2), settings.latitude, settings.longitude);
    light_.push_back(horizon.clears(sun)      ? Light::Sun
                     : sun.altitude > Angle() ? Light::Hidden
                                              : Light::Night);
  }
  setAccessibleName(tr("Time of day: %1").arg(day.clock(day.at(minute))));
  update();
}

double DayRibbon::xOf(int minute) const {
  return kDialSide + (width() - 2.0 * kDialSide) * minute / kMinutesInDay;
}

void DayRibbon::choose(int minute) {
  minute = std::clamp(minute, 0, kMinutesInDay - 1);
  if (minute != minute_) emit minuteChosen(minute);
}

void DayRibbon::chooseAt(double x) {
  const double share = (x - kDialSide) / std::max(1.0, width() - 2.0 * kDialSide);
  choose(int(std::clamp(share, 0.0, 1.0) * kMinutesInDay / kPart + 0.5) * kPart);
}

void DayRibbon::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Theme& theme = currentTheme();
  for (std::size_t i = 0; i < light_.size(); ++i) {
    const double from = xOf(int(i) * kPart), to = xOf(int(i + 1) * kPart);
    painter.fillRect(QRectF(from, kDialTop, to - from + 0.5, kDialHigh),
                     sunColour(light_[i] == Light::Sun      ? kSunScaleTop
                               : light_[i] == Light::Hidden ? kHiddenHours
                                                            : kNightHours));
  }
  painter.setFont(fontFor(TextRole::Note));
  const double wide = painter.fontMetrics().horizontalAdvance(QStringLiteral("00:00"));
  const int stride = xOf(180) - xOf(0) > wide + kSpace2 ? 3 : 6;  // hours between two ticks
  for (int hour = 0; hour <= 24; hour += stride) {
    const double x = xOf(hour * 60);
    paintDialTick(painter, int(std::lround(x)));
    painter.setPen(theme.quietInk);
    painter.drawText(QRectF(x - 24, kDialTop + kDialHigh + 4, 48, 14), Qt::AlignCenter,
                     QStringLiteral("%1:00").arg(hour));
  }
  paintDialHandle(painter, {xOf(minute_), kDialTop + kDialHigh / 2.0}, hasFocus());
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
