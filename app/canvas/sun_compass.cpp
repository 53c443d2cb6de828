// SPDX-License-Identifier: MIT
#include "app/canvas/sun_compass.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QPainterPath>

#include "app/canvas/furniture.h"
#include "app/canvas/item.h"
#include "app/document/civil_day.h"
#include "app/look/sun_scale.h"

namespace tussock {

namespace {

constexpr int kPathStep = 5;     // minutes
constexpr double kPlate = 44.0;  // pixels around the horizon
constexpr double kHold = 12.0;   // pixels from the path within which it is taken hold of

Angle azimuthAt(std::optional<UtcTime> time, const Settings& settings) {
  return time ? sunPosition(*time, settings.latitude, settings.longitude).azimuth : Angle();
}

std::optional<SunCompass::Mark> markAt(std::optional<UtcTime> time, const CivilDay& day,
                                       const Settings& settings) {
  if (!time) return std::nullopt;
  return SunCompass::Mark{{azimuthAt(time, settings), Angle()}, day.clock(*time)};
}

void paintHorizon(QPainter& painter, QPointF middle, const Theme& theme) {
  const double plate = kCompassRadius + kPlate;
  painter.setPen(Qt::NoPen);
  painter.setBrush(faded(theme.paper, 0.88));
  painter.drawEllipse(middle, plate, plate);
  painter.setPen(QPen(theme.edge, 1.0));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(middle, kCompassRadius, kCompassRadius);
  painter.setPen(QPen(theme.line, 1.0));
  for (const double altitude : {30.0, 60.0}) {
    const double radius = kCompassRadius * (1.0 - altitude / 90.0);
    painter.drawEllipse(middle, radius, radius);
  }
  painter.setPen(QPen(theme.edge, 1.0));
  for (int degrees = 30; degrees < 360; degrees += 30) {
    const Point way = directionOf(Angle::degrees(degrees));
    const QPointF out(way.x, -way.y);
    painter.drawLine(middle + out * (kCompassRadius - (degrees % 90 == 0 ? 7 : 4)),
                     middle + out * kCompassRadius);
  }
}

void paintNorth(QPainter& painter, QPointF middle, const Theme& theme) {
  const QPointF top = middle - QPointF(0.0, kCompassRadius + 11.0);
  const QPolygonF west({top, top + QPointF(-6, 19), top + QPointF(0, 15)});
  const QPolygonF east({top, top + QPointF(6, 19), top + QPointF(0, 15)});
  painter.setPen(QPen(theme.ink, 1.1));
  painter.setBrush(theme.paper);
  painter.drawPolygon(east);
  painter.setBrush(theme.ink);
  painter.drawPolygon(west);
  QFont font = fontFor(TextRole::Note);
  font.setWeight(QFont::Bold);
  painter.setFont(font);
  painter.drawText(QRectF(top.x() - 20, top.y() - 15, 40, 14), Qt::AlignCenter,
                   QCoreApplication::translate("NorthArrow", "N"));
}

void paintPath(QPainter& painter, QPointF middle, const SunCompass& compass, const Theme& theme) {
  for (const auto& stretch : compass.paths) {
    QPainterPath path;
    for (const SunCompass::Step& step : stretch) {
      const QPointF at = onCompass(middle, step.sun);
      path.elementCount() == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    painter.strokePath(path, QPen(theme.caution, 2.0, Qt::SolidLine, Qt::RoundCap));
  }
  painter.setPen(QPen(theme.caution, 1.4));
  painter.setBrush(theme.paper);
  for (const SunCompass::Mark& hour : compass.hours)
    painter.drawEllipse(onCompass(middle, hour.sun), 2.2, 2.2);
}

// A time outside the horizon, on the side where the sun crosses it.
void paintCrossing(QPainter& painter, QPointF middle, const SunCompass::Mark& mark,
                   const Theme& theme) {
  const QPointF at = onCompass(middle, mark.sun);
  const QPointF out = (at - middle) / kCompassRadius;
  painter.setPen(QPen(theme.caution, 2.0));
  painter.drawLine(middle + out * (kCompassRadius - 4.0), middle + out * (kCompassRadius + 5.0));
  const QPointF words = middle + out * (kCompassRadius + 25.0);
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.ink);
  painter.drawText(QRectF(words.x() - 24.0, words.y() - 8.0, 48.0, 16.0), Qt::AlignCenter,
                   mark.words);
}

void paintSun(QPainter& painter, QPointF middle, const SunPosition& sun, const Theme& theme) {
  const bool up = sun.altitude > Angle();
  const QPointF at = onCompass(middle, sun);
  if (up) {
    painter.setPen(QPen(faded(theme.ink, 0.55), 1.2, Qt::DashLine));
    painter.drawLine(at, middle);
  }
  painter.setPen(QPen(theme.ink, 1.4));
  painter.setBrush(up ? sunColour(kSunScaleTop) : theme.paper);
  painter.drawEllipse(at, 6.0, 6.0);
}

}  // namespace

SunCompass sunCompassFor(const CivilDay& day, UtcTime now, const Settings& settings) {
  SunCompass compass;
  const auto sunAt = [&](UtcTime time) {
    return sunPosition(time, settings.latitude, settings.longitude);
  };
  bool wasUp = false;
  const UtcTime end = day.at(kMinutesInDay);
  for (UtcTime time = day.at(0); time <= end; time += std::chrono::minutes(kPathStep)) {
    const SunPosition sun = sunAt(time);
    const bool up = sun.altitude > Angle();
    if (up && !wasUp) compass.paths.emplace_back();
    if (up) compass.paths.back().push_back({sun, day.minuteOf(time)});
    if (up && day.minuteOf(time) % 60 == 0) compass.hours.push_back({sun, day.clock(time)});
    wasUp = up;
  }
  const Daylight light = daylight(day.date(), settings.latitude, settings.longitude);
  compass.rise = markAt(light.sunrise, day, settings);
  compass.set = markAt(light.sunset, day, settings);
  compass.now = sunAt(now);
  return compass;
}

QPointF onCompass(QPointF middle, const SunPosition& sun) {
  const double altitude = std::clamp(sun.altitude.degrees(), 0.0, 90.0);
  const Point way = directionOf(sun.azimuth) * (kCompassRadius * (1.0 - altitude / 90.0));
  return middle + QPointF(way.x, -way.y);
}

namespace {

double distance(QPointF a, QPointF b) {
  return std::hypot(a.x() - b.x(), a.y() - b.y());
}

const SunCompass::Step* nearestStep(const SunCompass& compass, QPointF middle, QPointF at) {
  const SunCompass::Step* nearest = nullptr;
  double least = 0.0;
  for (const auto& stretch : compass.paths)
    for (const SunCompass::Step& step : stretch) {
      const double away = distance(onCompass(middle, step.sun), at);
      if (nearest == nullptr || away < least) nearest = &step, least = away;
    }
  return nearest;
}

}  // namespace

bool holdsSun(const SunCompass& compass, QPointF middle, QPointF at) {
  if (distance(onCompass(middle, compass.now), at) <= kHold) return true;
  const SunCompass::Step* step = nearestStep(compass, middle, at);
  return step != nullptr && distance(onCompass(middle, step->sun), at) <= kHold;
}

std::optional<int> minuteNear(const SunCompass& compass, QPointF middle, QPointF at) {
  const SunCompass::Step* step = nearestStep(compass, middle, at);
  if (step == nullptr) return std::nullopt;
  return step->minute;
}

void paintSunCompass(QPainter& painter, QPointF middle, const SunCompass& compass,
                     const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  paintHorizon(painter, middle, theme);
  paintNorth(painter, middle, theme);
  paintPath(painter, middle, compass, theme);
  for (const auto& crossing : {compass.rise, compass.set})
    if (crossing) paintCrossing(painter, middle, *crossing, theme);
  paintSun(painter, middle, compass.now, theme);
  painter.restore();
}

}  // namespace tussock
