// SPDX-License-Identifier: MIT
#include "app/panels/place_words.h"

#include <cmath>
#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QRegularExpression>

namespace tussock {

namespace {

QString hemisphere(double degrees, Axis axis) {
  const char* word = axis == Axis::Latitude ? (degrees < 0 ? "S" : "N") : (degrees < 0 ? "W" : "E");
  return QCoreApplication::translate("Place", word);
}

QString coordinate(Angle angle, Axis axis, int decimals) {
  const double degrees = angle.degrees();
  return QStringLiteral("%1° %2")
      .arg(std::abs(degrees), 0, 'f', decimals)
      .arg(hemisphere(degrees, axis));
}

std::optional<MonthDay> dayOf(const QDate& date) {
  if (!date.isValid()) return std::nullopt;
  return MonthDay{std::chrono::month{unsigned(date.month())},
                  std::chrono::day{unsigned(date.day())}};
}

}  // namespace

QString placeWords(const Settings& settings) {
  const QString at = coordinate(settings.latitude, Axis::Latitude, 2) + QStringLiteral(", ") +
                     coordinate(settings.longitude, Axis::Longitude, 2);
  if (settings.hardinessZone.empty()) return at;
  return QCoreApplication::translate("Place", "%1, zone %2")
      .arg(at, QString::fromStdString(settings.hardinessZone));
}

QString coordinateWords(Angle angle, Axis axis) {
  return coordinate(angle, axis, 4);
}

std::optional<Angle> parseCoordinate(const QString& typed, Axis axis) {
  static const QRegularExpression form(QStringLiteral(
      R"(^\s*([-−+]?)(\d+(?:\.\d+)?)\s*°?\s*(?:(\d+(?:\.\d+)?)\s*['′]\s*)?(?:(\d+(?:\.\d+)?)\s*["″]\s*)?([NSEWnsew]?)\s*$)"));
  const auto match = form.match(typed);
  if (!match.hasMatch()) return std::nullopt;
  double degrees = match.captured(2).toDouble() + match.captured(3).toDouble() / 60.0 +
                   match.captured(4).toDouble() / 3600.0;
  const QString side = match.captured(5).toUpper();
  const QString allowed = axis == Axis::Latitude ? QStringLiteral("NS") : QStringLiteral("EW");
  if (!side.isEmpty() && !allowed.contains(side)) return std::nullopt;
  const QString sign = match.captured(1);
  const bool minus = sign == QStringLiteral("-") || sign == QStringLiteral("−");
  if (minus != (side == QStringLiteral("S") || side == QStringLiteral("W"))) degrees = -degrees;
  if (std::abs(degrees) > (axis == Axis::Latitude ? 90.0 : 180.0)) return std::nullopt;
  return Angle::degrees(degrees);
}

std::optional<MonthDay> parseDay(const QString& typed) {
  const QString trimmed = typed.trimmed();
  if (const auto day = parseMonthDay(trimmed.toStdString())) return day;
  for (const QLocale& locale : {QLocale(), QLocale::c()}) {
    for (const char* form : {"d MMMM yyyy", "d MMM yyyy", "MMMM d yyyy", "MMM d yyyy"}) {
      const QString leap = trimmed + QStringLiteral(" 2028");  // a leap year, for 29 February
      if (const auto day = dayOf(locale.toDate(leap, QLatin1String(form)))) return day;
    }
  }
  return std::nullopt;
}

}  // namespace tussock
