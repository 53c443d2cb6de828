// SPDX-License-Identifier: MIT
#include "app/panels/year_dial.h"

#include <algorithm>
#include <cmath>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

#include "app/look/sun_scale.h"
#include "app/look/theme.h"
#include "app/panels/dial_paint.h"
#include "core/sun/position.h"

namespace tussock {

namespace {

constexpr int kStride = 5;  // days between those measured

std::chrono::sys_days firstOf(std::chrono::year year) {
  return std::chrono::sys_days(year / std::chrono::January / 1);
}

int daysIn(std::chrono::year year) {
  return year.is_leap() ? 366 : 365;
}

}  // namespace

YearDial::YearDial(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("sun-year"));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setToolTip(
      tr("Drag through the year, or use the arrow keys; Page up and Page down step a month"));
}

void YearDial::show(Date day, const Settings& settings) {
  day_ = day;
  if (measuredYear_ != day.year() || measuredAt_ != settings.latitude || light_.empty())
    measure(settings);
  setAccessibleName(tr("Date: %1").arg(QString::fromStdString(formatDate(day))));
  update();
}

void YearDial::measure(const Settings& settings) {
  measuredYear_ = day_.year();
  measuredAt_ = settings.latitude;
  light_.clear();
  for (int day = 0; day < daysIn(measuredYear_); day += kStride)
    light_.push_back(timeAbove(Angle(), Date(firstOf(measuredYear_) + std::chrono::days(day)),
                               settings.latitude, settings.longitude)
                         .hours /
                     24.0);
}

double YearDial::xOf(Date day) const {
  const auto since = (std::chrono::sys_days(day) - firstOf(day.year())).count();
  return kDialSide + (width() - 2.0 * kDialSide) * (double(since) + 0.5) / daysIn(day.year());
}

void YearDial::choose(Date day) {
  if (day != day_) emit dayChosen(day);
}

void YearDial::chooseAt(double x) {
  const int days = daysIn(day_.year());
  const double share = (x - kDialSide) / std::max(1.0, width() - 2.0 * kDialSide);
  const int since = std::clamp(int(std::floor(share * days)), 0, days - 1);
  choose(Date(firstOf(day_.year()) + std::chrono::days(since)));
}

// Daylight in the middle of each day's column, night above and below it.
void YearDial::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const QRectF ground(kDialSide, kDialTop, width() - 2.0 * kDialSide, kDialHigh);
  painter.fillRect(ground, sunColour(kNightHours));
  painter.setRenderHint(QPainter::Antialiasing);
  QPolygonF light;
  const auto at = [&](std::size_t i, double side) {
    const double day = std::min(double(i) * kStride + 0.5, double(daysIn(measuredYear_)));
    return QPointF(ground.left() + ground.width() * day / daysIn(measuredYear_),
                   ground.center().y() + side * light_[i] * ground.height() / 2.0);
  };
  for (std::size_t i = 0; i < light_.size(); ++i) light << at(i, -1.0);
  if (!light.empty()) {
    light.prepend({ground.left(), light.first().y()});
    light << QPointF(ground.right(), light.last().y());
    const qsizetype top = light.size();
    for (qsizetype i = top - 1; i >= 0; --i)
      light << QPointF(light[i].x(), 2.0 * ground.center().y() - light[i].y());
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(sunColour(kSunScaleTop));
  painter.drawPolygon(light);
  paintMonths(painter);
  paintDialHandle(painter, {xOf(day_), ground.center().y()}, hasFocus());
}

void YearDial::paintMonths(QPainter& painter) const {
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setFont(fontFor(TextRole::Note));
  const double wide = (width() - 2.0 * kDialSide) / 12.0;
  const bool narrow = wide < painter.fontMetrics().horizontalAdvance(QStringLiteral("Mmm"));
  for (unsigned month = 1; month <= 12; ++month) {
    const Date first = day_.year() / std::chrono::month(month) / 1;
    const int left = int(std::lround(kDialSide + (xOf(first) - kDialSide)));
    paintDialTick(painter, left);
    painter.setPen(currentTheme().quietInk);
    painter.drawText(QRectF(left, kDialTop + kDialHigh + 4, wide, 14), Qt::AlignCenter,
                     QLocale().standaloneMonthName(
                         int(month), narrow ? QLocale::NarrowFormat : QLocale::ShortFormat));
  }
}

void YearDial::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) chooseAt(event->position().x());
}

void YearDial::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) chooseAt(event->position().x());
}

void YearDial::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return choose(stepped(day_, -1, 0));
    case Qt::Key_Right:
      return choose(stepped(day_, 1, 0));
    case Qt::Key_PageDown:
      return choose(stepped(day_, 0, -1));
    case Qt::Key_PageUp:
      return choose(stepped(day_, 0, 1));
    default:
      return QWidget::keyPressEvent(event);
  }
}

void YearDial::focusInEvent(QFocusEvent*) {
  update();
}

void YearDial::focusOutEvent(QFocusEvent*) {
  update();
}

}  // namespace tussock
