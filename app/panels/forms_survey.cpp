// SPDX-License-Identifier: MIT
#include <algorithm>

#include "app/panels/form_words.h"
#include "app/panels/forms.h"
#include "app/panels/object_form.h"
#include "core/model/sun_hours_text.h"
#include "core/sun/position.h"
#include "core/sun/survey_reading.h"

namespace tussock {

namespace {

// A change that would make it what nobody can have seen is not taken.
QString changed(SunReading& reading, const SunReading& next, const Document& document) {
  if (const auto problem = readingProblem(next, document.yard().settings))
    return QString::fromStdString(*problem);
  reading = next;
  return {};
}

QString readDate(const QString& typed, Date& value) {
  const auto read = parseDate(typed.trimmed().toStdString());
  if (!read)
    return formTr("Write a date as year-month-day, such as %1.")
        .arg(QString::fromStdString(formatDate(value)));
  if (!isInExactYears(*read))
    return formTr("Where the sun stands is known well from %1 to %2. Write a date of those years.")
        .arg(int(kFirstExactYear))
        .arg(int(kLastExactYear));
  value = *read;
  return {};
}

QString readHours(const QString& typed, double& value) {
  const auto read = parseSunHours(typed.toStdString());
  if (!read) return formTr("Write hours from 0 to 24, such as 4.5 or 4:30.");
  value = *read;
  return {};
}

}  // namespace

void fillForm(FieldForm& form, Document& document, Id<SunReading> id) {
  ObjectForm<SunReading> reading(form, document, id);
  reading.field(
      "reading-day", formTr("Day"),
      [](const SunReading& r) { return QString::fromStdString(formatDate(r.day)); },
      [&document](SunReading& r, const QString& typed) {
        SunReading next = r;
        const QString trouble = readDate(typed, next.day);
        return trouble.isEmpty() ? changed(r, next, document) : trouble;
      });
  reading.field(
      "reading-hours", formTr("Sun seen"), [](const SunReading& r) { return hoursText(r.hours); },
      [&document](SunReading& r, const QString& typed) {
        SunReading next = r;
        const QString trouble = readHours(typed, next.hours);
        return trouble.isEmpty() ? changed(r, next, document) : trouble;
      });
  reading.text("reading-note", formTr("Note"), &SunReading::note);
  form.addNote(
      formTr("Watch on a clear day, or the hours are too few. Hours in which sun and shade flicker "
             "under a crown count by half."));
}

}  // namespace tussock
