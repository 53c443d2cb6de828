// SPDX-License-Identifier: MIT
#include "app/panels/field_text.h"

#include <cmath>
#include <QCoreApplication>
#include <QLocale>

#include "app/panels/place_words.h"

namespace tussock {

namespace {

QString fieldTr(const char* source) {
  return QCoreApplication::translate("FieldText", source);
}

// Digits with a point, or with the comma of the person's own language.
std::optional<double> readNumber(QString typed) {
  bool fine = false;
  typed = typed.trimmed();
  double value = typed.toDouble(&fine);
  if (!fine) value = QLocale().toDouble(typed, &fine);
  return fine && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

QString withoutSign(QString typed, QChar sign) {
  typed = typed.trimmed();
  if (typed.endsWith(sign)) typed.chop(1);
  return typed;
}

}  // namespace

QString lengthText(Length length, UnitSystem units) {
  return QString::fromStdString(formatLength(length, units));
}

QString readLength(const QString& typed, UnitSystem units, LengthBounds bounds, Length& value) {
  const auto read = parseLength(typed.toStdString(), units);
  if (!read) {
    const QString how = units == UnitSystem::FeetInches
                            ? fieldTr("Write a length such as 12' 6\", 12.5 ft or 18 in.")
                            : fieldTr("Write a length such as 3.8 m or 45 cm.");
    return fieldTr("“%1” is not a length. %2").arg(typed, how);
  }
  if (*read < bounds.least || *read > bounds.most)
    return fieldTr("Write a length from %1 to %2.")
        .arg(lengthText(bounds.least, units), lengthText(bounds.most, units));
  value = *read;
  return {};
}

QString shareText(double share) {
  return QStringLiteral("%1 %").arg(QLocale().toString(std::round(share * 1000.0) / 10.0, 'g', 4));
}

QString mannerText(double wildness) {
  return fieldTr("%1 natural").arg(shareText(wildness));
}

QString readShare(const QString& typed, double& value) {
  const auto read = readNumber(withoutSign(typed, QLatin1Char('%')));
  if (!read || *read < 0.0 || *read > 100.0)
    return fieldTr("Write a share from 0 % to 100 %, such as 15 %.");
  value = *read / 100.0;
  return {};
}

QString dayText(MonthDay day) {
  return QString::fromStdString(readableMonthDay(day));
}

QString readDay(const QString& typed, MonthDay& value) {
  const auto read = parseDay(typed);
  if (!read)
    return fieldTr("“%1” is not a day of the year. Write one such as 20 April.").arg(typed);
  value = *read;
  return {};
}

QString readOptionalDay(const QString& typed, std::optional<MonthDay>& value) {
  if (typed.trimmed().isEmpty()) {
    value.reset();
    return {};
  }
  MonthDay day{};
  QString wrong = readDay(typed, day);
  if (wrong.isEmpty()) value = day;
  return wrong;
}

QString degreesText(Angle angle) {
  return QLocale().toString(std::round(angle.degrees() * 10.0) / 10.0, 'g', 5) +
         QStringLiteral("°");
}

QString readDegrees(const QString& typed, Angle& value) {
  const auto read = readNumber(withoutSign(typed, QChar(0x00B0)));
  if (!read || std::abs(*read) > 360.0) return fieldTr("Write an angle in degrees, such as 30.");
  value = Angle::degrees(*read);
  return {};
}

QString hoursText(double hours) {
  return QStringLiteral("%1 h").arg(QLocale().toString(hours, 'f', 1));
}

QString plantCountText(const Totals& totals) {
  if (totals.existing == 0) return fieldTr("%1 plants").arg(totals.plants);
  return fieldTr("%1 to plant, %2 existing")
      .arg(totals.plants - totals.existing)
      .arg(totals.existing);
}

}  // namespace tussock
