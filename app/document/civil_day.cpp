// SPDX-License-Identifier: MIT
#include "app/document/civil_day.h"

#include <cmath>
#include <QDateTime>

namespace tussock {

namespace {

QTimeZone zoneOf(const Settings& settings) {
  const QTimeZone zone(QByteArray::fromStdString(settings.timeZone));
  return zone.isValid() ? zone : QTimeZone::utc();
}

QDate calendarDay(Date day) {
  return {int(day.year()), int(unsigned(day.month())), int(unsigned(day.day()))};
}

QDateTime localTime(UtcTime time, const QTimeZone& zone) {
  return QDateTime::fromSecsSinceEpoch(time.time_since_epoch().count(), zone);
}

// Where clocks are put back and show the time of an instant twice, the first time they do.
QDateTime firstShown(const QDateTime& time, const QTimeZone& zone) {
  const QTimeZone::OffsetData change = zone.previousTransition(time.addSecs(1));
  if (!change.atUtc.isValid()) return time;
  const int before = zone.offsetFromUtc(change.atUtc.addSecs(-1));
  const QDateTime earlier = time.addSecs(change.offsetFromUtc - before);
  const bool sameOnClocks = earlier.date() == time.date() && earlier.time() == time.time();
  return sameOnClocks ? earlier : time;
}

}  // namespace

CivilDay::CivilDay(Date day, const Settings& settings) : day_(day), zone_(zoneOf(settings)) {}

Date CivilDay::today(const Settings& settings) {
  const QDate day = QDateTime::currentDateTimeUtc().toTimeZone(zoneOf(settings)).date();
  return Date(std::chrono::year(day.year()), std::chrono::month(unsigned(day.month())),
              std::chrono::day(unsigned(day.day())));
}

UtcTime CivilDay::at(int minute) const {
  const auto days = int(std::floor(double(minute) / kMinutesInDay));
  const int left = minute - days * kMinutesInDay;
  const QDateTime time(calendarDay(day_).addDays(days), QTime(left / 60, left % 60), zone_);
  return UtcTime(std::chrono::seconds(firstShown(time, zone_).toSecsSinceEpoch()));
}

int CivilDay::minuteOf(UtcTime time) const {
  const QDateTime local = localTime(time, zone_);
  const auto days = int(calendarDay(day_).daysTo(local.date()));
  return days * kMinutesInDay + local.time().hour() * 60 + local.time().minute();
}

QString CivilDay::clock(UtcTime time) const {
  return localTime(time, zone_).time().toString(QStringLiteral("HH:mm"));
}

QString CivilDay::zone(UtcTime time) const {
  return zone_.abbreviation(localTime(time, zone_));
}

}  // namespace tussock
