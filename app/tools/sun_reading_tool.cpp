// SPDX-License-Identifier: MIT
#include "app/tools/sun_reading_tool.h"

#include "core/edit/draft.h"
#include "core/model/sun_hours_text.h"
#include "core/sun/survey_reading.h"

namespace tussock {

QString SunReadingTool::hint() const {
  return QObject::tr("Click where you watched the sun for a whole day, then write its hours");
}

QList<GestureWords> SunReadingTool::gestures() const {
  return {{QObject::tr("Click"), QObject::tr("Asks for the hours of sun that were seen there")},
          {QObject::tr("Enter, Escape"), QObject::tr("Notes the hours, or nothing")}};
}

void SunReadingTool::press(const PointerAt& at) {
  const QString day = QString::fromStdString(formatDate(canvas_.sunView().choice().day));
  canvas_.ask(at.pixels, QObject::tr("Hours of sun seen here on %1").arg(day), {},
              [this, site = at.site](const QString& typed) { return take(site, typed); });
}

QString SunReadingTool::take(Point at, const QString& typed) {
  const auto hours = parseSunHours(typed.toStdString());
  if (!hours) return QObject::tr("Write hours from 0 to 24, such as 4.5 or 4:30.");
  Document& document = canvas_.document();
  SunReading reading;
  reading.id = document.ids().take<SunReading>();
  reading.at = at;
  reading.day = canvas_.sunView().choice().day;
  reading.hours = *hours;
  if (const auto problem = readingProblem(reading, document.yard().settings))
    return QString::fromStdString(*problem);
  Draft draft(document.yard());
  draft.put(reading);
  if (document.commit(draft.finish(QObject::tr("Note sun reading").toStdString())))
    document.select({refTo(reading.id)});
  return {};
}

}  // namespace tussock
