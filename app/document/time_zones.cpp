// SPDX-License-Identifier: MIT
#include "app/document/time_zones.h"

#include <cmath>
#include <QCoreApplication>
#include <QDateTime>

#include "core/model/settings_text.h"

namespace tussock {

namespace {

QString zoneTr(const char* source) {
  return QCoreApplication::translate("TimeZones", source);
}

std::chrono::seconds standardOffset(const QTimeZone& zone) {
  return std::chrono::seconds(zone.standardTimeOffset(QDateTime::currentDateTimeUtc()));
}

}  // namespace

std::string zoneFor(const QTimeZone& own, Angle longitude) {
  const std::string name = own.id().toStdString();
  const bool usable = own.isValid() && looksLikeTimeZone(name);
  return usable && zoneSuits(standardOffset(own), longitude) ? name : "UTC";
}

std::string ownZoneFor(Angle longitude) {
  return zoneFor(QTimeZone(QTimeZone::systemTimeZoneId()), longitude);
}

QString clockWords(const std::string& zone, Angle longitude) {
  const QTimeZone known(QByteArray::fromStdString(zone));
  if (!known.isValid()) return zoneTr("not known to this computer");
  const std::chrono::seconds offset = standardOffset(known);
  const double ahead = hoursAheadOfSun(offset, longitude);
  const QString hours = QString::number(std::abs(ahead), 'f', 1);
  if (zoneSuits(offset, longitude))
    return ahead < 0.0 ? zoneTr("%1 h behind the sun").arg(hours)
                       : zoneTr("%1 h ahead of the sun").arg(hours);
  return zoneTr(
             "%1 h off the sun at this longitude. Write the zone of the place, such as "
             "America/New_York.")
      .arg(hours);
}

}  // namespace tussock
