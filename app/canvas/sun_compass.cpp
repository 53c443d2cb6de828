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
#include "core/sun/horizon.h"

namespace tussock {

namespace {

constexpr int kPathStep = 5;           // minutes
constexpr int kSkyline = 120;          // directions in which the skyline is drawn
constexpr double kBesideNorth = 22.0;  // pixels: a time keeps clear of the arrow
constexpr double kHold = 12.0;         // pixels from the path within which it is taken hold of

Angle azimuthAt(std::optional<UtcTime> time, const Settings& settings) {
  return time ? sunPosition(*time, settings.latitude, settings.longitude).azimuth : Angle();
}

std::optional<SunCompass::Mark> markAt(std::optional<UtcTime> time, const CivilDay& day,
                                       const Settings& settings) {
  if (!time) return std::nullopt;
  return SunCompass::Mark{{azimuthAt(time, settings), Angle()}, day.clock(*time)};
}

// Hills and far buildings stand up from the rim.
void paintSkyline(QPainter& painter, QPointF middle, const SunCompass& compass,
                  const Theme& theme) {
  if (compass.skyline.empty()) return;
  QPainterPath rim;
  rim.addEllipse(middle, compass.radius, compass.radius);
  QPolygonF sky;
  for (std::size_t i = 0; i < compass.skyline.size(); ++i)
    sky << onCompass(compass, middle,
                     {Angle::degrees(360.0 * double(i) / kSkyline), compass.skyline[i]});
  QPainterPath open;
  open.addPolygon(sky);
  open.closeSubpath();
  painter.fillPath(rim.subtracted(open), faded(theme.quietInk, 0.45));
}

void paintHorizon(QPainter& painter, QPointF middle, const SunCompass& compass,
                  const Theme& theme) {
  const double horizon = compass.radius;
  const double plate = horizon + kCompassPlate;
  painter.setPen(Qt::NoPen);
  painter.setBrush(faded(theme.paper, 0.88));
  painter.drawEllipse(middle, plate, plate);
  paintSkyline(painter, middle, compass, theme);
  painter.setPen(QPen(theme.edge, 1.0));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(middle, horizon, horizon);
  painter.setPen(QPen(theme.line, 1.0));
  for (const double altitude : {30.0, 60.0}) {
    const double radius = horizon * (1.0 - altitude / 90.0);
    painter.drawEllipse(middle, radius, radius);
  }
  painter.setPen(QPen(theme.edge, 1.0));
  for (int degrees = 30; degrees < 360; degrees += 30) {
    const Point way = directionOf(Angle::degrees(degrees));
    const QPointF out(way.x, -way.y);
    painter.drawLine(middle + out * (horizon - (degrees % 90 == 0 ? 7 : 4)),
                     middle + out * horizon);
  }
}

// Beyond the rim, where the midnight sun does not pass under it.
void paintNorth(QPainter& painter, QPointF middle, double horizon, const Theme& theme) {
  const QPointF top = middle - QPointF(0.0, horizon + 21.0);
  const QPolygonF west({top, top + QPointF(-6, 17), top + QPointF(0, 14)});
  const QPolygonF east({top, top + QPointF(6, 17), top + QPointF(0, 14)});
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
  const QPen shining(theme.caution, 2.0, Qt::SolidLine, Qt::RoundCap);
  const QPen hidden(theme.quietInk, 1.4, Qt::DotLine, Qt::RoundCap);
  for (const auto& stretch : compass.paths) {
    QPainterPath seen, unseen;
    for (std::size_t i = 1; i < stretch.size(); ++i) {
      QPainterPath& path = stretch[i].hidden ? unseen : seen;
      path.moveTo(onCompass(compass, middle, stretch[i - 1].sun));
      path.lineTo(onCompass(compass, middle, stretch[i].sun));
    }
    painter.strokePath(unseen, hidden);
    painter.strokePath(seen, shining);
  }
  painter.setPen(QPen(theme.caution, 1.4));
  painter.setBrush(theme.paper);
  for (const SunCompass::Mark& hour : compass.hours)
    painter.drawEllipse(onCompass(compass, middle, hour.sun), 2.2, 2.2);
}

// Outside the horizon, on the side where the sun crosses it.
QRectF placeOfWords(const SunCompass& compass, QPointF middle, const SunCompass::Mark& mark) {
  const QPointF out = (onCompass(compass, middle, mark.sun) - middle) / compass.radius;
  QPointF words = middle + out * (compass.radius + 23.0);
  if (out.y() < -0.85) words.rx() += out.x() < 0.0 ? -kBesideNorth : kBesideNorth;
  return {words.x() - 24.0, words.y() - 8.0, 48.0, 16.0};
}

// Where the sun is up for an hour or so, or down, its two times are side by side.
void moveApart(QRectF& one, QRectF& other) {
  if (!one.intersects(other)) return;
  const double overlap = one.width() - std::abs(one.x() - other.x());
  QRectF& west = one.x() < other.x() ? one : other;
  QRectF& east = one.x() < other.x() ? other : one;
  west.translate(-overlap / 2.0, 0.0);
  east.translate(overlap / 2.0, 0.0);
}

void paintCrossing(QPainter& painter, QPointF middle, const SunCompass& compass,
                   const SunCompass::Mark& mark, const QRectF& words, const Theme& theme) {
  const QPointF out = (onCompass(compass, middle, mark.sun) - middle) / compass.radius;
  painter.setPen(QPen(theme.caution, 2.0));
  painter.drawLine(middle + out * (compass.radius - 4.0), middle + out * (compass.radius + 5.0));
  painter.setFont(fontFor(TextRole::Note));
  painter.setPen(theme.ink);
  painter.drawText(words, Qt::AlignCenter, mark.words);
}

void paintCrossings(QPainter& painter, QPointF middle, const SunCompass& compass,
                    const Theme& theme) {
  QRectF rise, set;
  if (compass.rise) rise = placeOfWords(compass, middle, *compass.rise);
  if (compass.set) set = placeOfWords(compass, middle, *compass.set);
  moveApart(rise, set);
  if (compass.rise) paintCrossing(painter, middle, compass, *compass.rise, rise, theme);
  if (compass.set) paintCrossing(painter, middle, compass, *compass.set, set, theme);
}

void paintSun(QPainter& painter, QPointF middle, const SunCompass& compass, const Theme& theme) {
  const QPointF at = onCompass(compass, middle, compass.now);
  if (compass.shining) {
    painter.setPen(QPen(faded(theme.ink, 0.55), 1.2, Qt::DashLine));
    painter.drawLine(at, middle);
  }
  painter.setPen(QPen(theme.ink, 1.4));
  painter.setBrush(compass.shining ? sunColour(kSunScaleTop) : theme.paper);
  painter.drawEllipse(at, 6.0, 6.0);
}

}  // namespace

SunCompass sunCompassFor(const CivilDay& day, UtcTime now, const Settings& settings) {
  SunCompass compass;
  const auto sunAt = [&](UtcTime time) {
    return sunPosition(time, settings.latitude, settings.longitude);
  };
  const Horizon horizon(settings);
  if (!settings.skyline.empty())
    for (int i = 0; i < kSkyline; ++i)
      compass.skyline.push_back(horizon.elevationAt(Angle::degrees(360.0 * i / kSkyline)));
  bool wasUp = false;
  const UtcTime end = day.at(kMinutesInDay);
  for (UtcTime time = day.at(0); time <= end; time += std::chrono::minutes(kPathStep)) {
    const SunPosition sun = sunAt(time);
    const bool up = sun.altitude > Angle();
    if (up && !wasUp) compass.paths.emplace_back();
    if (up) compass.paths.back().push_back({sun, day.minuteOf(time), !horizon.clears(sun)});
    if (up && day.minuteOf(time) % 60 == 0) compass.hours.push_back({sun, day.clock(time)});
    wasUp = up;
  }
  const Daylight light = daylight(day.date(), settings.latitude, settings.longitude);
  compass.rise = markAt(light.sunrise, day, settings);
  compass.set = markAt(light.sunset, day, settings);
  compass.now = sunAt(now);
  compass.shining = horizon.clears(compass.now);
  return compass;
}

QPointF onCompass(const SunCompass& compass, QPointF middle, const SunPosition& sun) {
  const double altitude = std::clamp(sun.altitude.degrees(), 0.0, 90.0);
  const Point way = directionOf(sun.azimuth) * (compass.radius * (1.0 - altitude / 90.0));
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
      const double away = distance(onCompass(compass, middle, step.sun), at);
      if (nearest == nullptr || away < least) nearest = &step, least = away;
    }
  return nearest;
}

}  // namespace

bool holdsSun(const SunCompass& compass, QPointF middle, QPointF at) {
  if (distance(onCompass(compass, middle, compass.now), at) <= kHold) return true;
  const SunCompass::Step* step = nearestStep(compass, middle, at);
  return step != nullptr && distance(onCompass(compass, middle, step->sun), at) <= kHold;
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
  paintHorizon(painter, middle, compass, theme);
  paintNorth(painter, middle, compass.radius, theme);
  paintPath(painter, middle, compass, theme);
  paintCrossings(painter, middle, compass, theme);
  paintSun(painter, middle, compass, theme);
  painter.restore();
}

}  // namespace tussock
