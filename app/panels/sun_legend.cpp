// SPDX-License-Identifier: MIT
#include "app/panels/sun_legend.h"

#include <algorithm>
#include <cmath>
#include <QLocale>
#include <QPainter>

#include "app/look/sun_scale.h"
#include "app/look/theme.h"

namespace tussock {

namespace {
constexpr double kLegendSide = 14.0;  // pixels left and right of the scale
constexpr double kLegendTop = 16.0, kHigh = 10.0;
constexpr double kLabelRoom = 34.0;
}  // namespace

SunLegend::SunLegend(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("sun-legend"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SunLegend::setProfile(const SunProfile& profile) {
  profile_ = profile;
  const QLocale locale;
  setAccessibleName(tr("Hours of direct sun a day: shade under %1 h, part sun from %1 h, full sun "
                       "from %2 h")
                        .arg(locale.toString(profile.partFrom), locale.toString(profile.fullFrom)));
  update();
}

void SunLegend::setPointer(std::optional<double> hours) {
  pointer_ = hours;
  update();
}

QRectF SunLegend::ramp() const {
  return {kLegendSide, kLegendTop, width() - 2.0 * kLegendSide, kHigh};
}

double SunLegend::xOf(double hours) const {
  return kLegendSide + std::clamp(hours / kSunScaleTop, 0.0, 1.0) * (width() - 2.0 * kLegendSide);
}

void SunLegend::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Theme& theme = currentTheme();
  const QRectF scale = ramp();
  for (int x = 0; x < int(scale.width()); ++x)
    painter.fillRect(QRectF(scale.left() + x, scale.top(), 1.0, scale.height()),
                     sunColourOnGround(kSunScaleTop * x / (scale.width() - 1.0), theme));
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.quietInk);
  const int top = int(kSunScaleTop);
  const int step = xOf(2.0) - xOf(0.0) < kLabelRoom ? 4 : 2;
  for (int hour = 0; hour <= top; hour += 2) {
    if (hour < top && (hour % step != 0 || top - hour < step)) continue;
    const QString text = hour == top ? tr("%1 h+").arg(hour) : tr("%1 h").arg(hour);
    painter.drawText(QRectF(xOf(hour) - 24, kLegendTop + kHigh + 2, 48, 15), Qt::AlignCenter, text);
  }
  paintClasses(painter);
  if (!pointer_) return;
  const double x = xOf(*pointer_);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.ink, 1.2));
  painter.setBrush(theme.raised);
  painter.drawPolygon(
      QPolygonF({{x, kLegendTop + kHigh}, {x - 5, kLegendTop - 3}, {x + 5, kLegendTop - 3}}));
}

// Names over the scale, parted at the limits.
void SunLegend::paintClasses(QPainter& painter) const {
  const Theme& theme = currentTheme();
  const double part = xOf(profile_.partFrom), full = xOf(profile_.fullFrom);
  painter.setPen(theme.ink);
  const auto name = [&](double from, double to, const QString& words) {
    painter.drawText(QRectF(from, 0, to - from, kLegendTop - 2), Qt::AlignCenter, words);
  };
  name(xOf(0.0), part, tr("shade"));
  name(part, full, tr("part sun"));
  name(full, xOf(kSunScaleTop), tr("full sun"));
  for (const double x : {part, full})
    painter.fillRect(QRectF(std::round(x), 2.0, 1.0, kLegendTop + kHigh - 2.0), theme.ink);
}

}  // namespace tussock
