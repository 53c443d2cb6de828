// SPDX-License-Identifier: MIT
#include "app/panels/sun_words.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QLocale>

namespace tussock {

namespace {

QString tr(const char* source) {
  return QCoreApplication::translate("Sun", source);
}

QString hours(double value) {
  return QLocale().toString(value, 'f', 1);
}

QString monthHours(const MonthHours& month) {
  return QStringLiteral("%1 %2").arg(monthWords(month.month), hours(month.hours.total()));
}

}  // namespace

QString monthWords(std::chrono::month month) {
  return QLocale().standaloneMonthName(int(unsigned(month)));
}

QString sunWordsAt(const SunMap& map, Point at) {
  const auto year = map.yearAt(at);
  if (!year) return {};
  const QString words = tr("%1 h of sun: %2 before noon, %3 after")
                            .arg(hours(year->mean.total()), hours(year->mean.beforeNoon),
                                 hours(year->mean.afterNoon));
  if (year->months.size() < 2) return words;
  const auto [least, most] = std::minmax_element(
      year->months.begin(), year->months.end(),
      [](const MonthHours& a, const MonthHours& b) { return a.hours.total() < b.hours.total(); });
  return tr("%1; %2, %3").arg(words, monthHours(*most), monthHours(*least));
}

QString differenceWords(double hours) {
  const QString figure = QLocale().toString(std::abs(hours), 'f', 1);
  if (figure == QLocale().toString(0.0, 'f', 1)) return tr("%1 h").arg(figure);
  return tr("%1%2 h").arg(hours < 0.0 ? QStringLiteral("−") : QStringLiteral("+"), figure);
}

QString daylightWords(const CivilDay& day, const Settings& settings) {
  const Daylight light = daylight(day.date(), settings.latitude, settings.longitude);
  if (light.sunrise && light.sunset)
    return tr("Sunrise %1, sunset %2 %3")
        .arg(day.clock(*light.sunrise), day.clock(*light.sunset), day.zone(light.transit));
  return light.hours > 12.0 ? tr("Midnight sun: it does not set on this day")
                            : tr("Polar night: the sun does not rise on this day");
}

QString growthWords(const Yard& yard) {
  const auto still = std::count_if(yard.trees.begin(), yard.trees.end(),
                                   [](const Tree& tree) { return tree.growth <= Length(); });
  if (still == 0) return {};
  return tr("%1 of %2 trees have no growth told and stay as they are")
      .arg(still)
      .arg(yard.trees.size());
}

}  // namespace tussock
