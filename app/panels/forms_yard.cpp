// SPDX-License-Identifier: MIT
#include <QLineEdit>
#include <QTimeZone>

#include "app/document/time_zones.h"
#include "app/panels/form_words.h"
#include "app/panels/forms.h"
#include "app/panels/object_form.h"
#include "app/panels/place_words.h"
#include "core/catalog/fit.h"
#include "core/model/settings_text.h"
#include "core/model/skyline_text.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

QString optionalDayText(const std::optional<MonthDay>& day) {
  return day ? dayText(*day) : QString();
}

QString readCoordinate(const QString& typed, Axis axis, Angle& value) {
  const auto read = parseCoordinate(typed, axis);
  if (!read)
    return axis == Axis::Latitude
               ? formTr("Write a latitude from 90 S to 90 N, such as 38.41 N.")
               : formTr("Write a longitude from 180 W to 180 E, such as 86.94 W.");
  value = *read;
  return {};
}

// Sets a frost date or the latitude in `settings` by `read`, and looks at the whole.
template <class Read>
QString readForSeason(Settings& settings, Read read) {
  const QString wrong = read(settings);
  return wrong.isEmpty() ? QString::fromStdString(frostTrouble(settings)) : wrong;
}

QString readZone(const QString& typed, std::string& value) {
  const auto zone = parseHardinessZone(typed.toStdString());
  if (!zone)
    return formTr("Write a USDA hardiness zone from 1a to 13b, such as 6b, or leave it empty.");
  value = *zone;
  return {};
}

QString readState(const QString& typed, std::string& value) {
  const auto state = parseState(typed.toStdString());
  if (!state) return formTr("Write the two letters of a US state, such as IN, or leave it empty.");
  value = *state;
  return {};
}

QString readTimeZone(const QString& typed, std::string& value) {
  const std::string zone = typed.toStdString();
  if (!looksLikeTimeZone(zone) || !QTimeZone::isTimeZoneIdAvailable(typed.toUtf8()))
    return formTr("Write a time zone by its IANA name, such as America/New_York.");
  value = zone;
  return {};
}

QString seasonText(const Settings& settings) {
  const GrowingSeason season = growingSeason(settings);
  if (!frostTrouble(settings).empty())
    return formTr("unclear: the frost dates leave no summer. Correct them above.");
  const QString span = formTr("%1 to %2").arg(dayText(season.first), dayText(season.last));
  return season.assumed ? formTr("%1, assumed until the frost dates are known").arg(span) : span;
}

void addPlace(ObjectForm<Settings>& yard) {
  yard.field(
      "yard-latitude", formTr("Latitude"),
      [](const Settings& s) { return coordinateWords(s.latitude, Axis::Latitude); },
      [](Settings& s, const QString& typed) {
        return readForSeason(
            s, [&](Settings& at) { return readCoordinate(typed, Axis::Latitude, at.latitude); });
      });
  yard.field(
      "yard-longitude", formTr("Longitude"),
      [](const Settings& s) { return coordinateWords(s.longitude, Axis::Longitude); },
      [](Settings& s, const QString& typed) {
        return readCoordinate(typed, Axis::Longitude, s.longitude);
      });
  yard.field(
      "yard-time-zone", formTr("Time zone"),
      [](const Settings& s) { return QString::fromStdString(s.timeZone); },
      [](Settings& s, const QString& typed) { return readTimeZone(typed, s.timeZone); });
  yard.fact("yard-clock", formTr("Clock"),
            [](const Settings& s) { return clockWords(s.timeZone, s.longitude); });
  yard.field(
      "yard-state", formTr("State"),
      [](const Settings& s) { return QString::fromStdString(s.state); },
      [](Settings& s, const QString& typed) { return readState(typed, s.state); });
  yard.field(
      "yard-zone", formTr("Hardiness"),
      [](const Settings& s) { return QString::fromStdString(s.hardinessZone); },
      [](Settings& s, const QString& typed) { return readZone(typed, s.hardinessZone); });
  yard.choice("yard-deer", formTr("Deer"), &Settings::deerAbout,
              {formTr("not about, or fenced out"), formTr("about")});
}

void addSeason(ObjectForm<Settings>& yard) {
  yard.field(
      "yard-last-frost", formTr("Last frost"),
      [](const Settings& s) { return optionalDayText(s.lastFrost); },
      [](Settings& s, const QString& typed) {
        return readForSeason(s, [&](Settings& at) { return readOptionalDay(typed, at.lastFrost); });
      });
  yard.field(
      "yard-first-frost", formTr("First frost"),
      [](const Settings& s) { return optionalDayText(s.firstFrost); },
      [](Settings& s, const QString& typed) {
        return readForSeason(s,
                             [&](Settings& at) { return readOptionalDay(typed, at.firstFrost); });
      });
  yard.fact("yard-season", formTr("Season"), seasonText);
}

// The classes of sun are a table with a source; which one is used is for the yard to say.
void addSunProfile(FieldForm& form, Document& document, const ObjectForm<Settings>& yard) {
  QStringList words;
  for (const SunProfile& profile : sunProfiles())
    words << formTr("full from %1 h, part from %2 h").arg(profile.fullFrom).arg(profile.partFrom);
  form.addChoice(
      QStringLiteral("yard-sun-profile"), formTr("Sun classes"), words,
      [&document] {
        const std::string& used = sunProfile(document.yard().settings.sunProfile).id;
        int index = 0;
        for (const SunProfile& profile : sunProfiles()) {
          if (profile.id == used) return index;
          ++index;
        }
        return 0;
      },
      [yard](int index) {
        yard.edit(formTr("Sun classes"),
                  [index](Settings& s) { s.sunProfile = sunProfiles()[std::size_t(index)].id; });
      });
  form.addFact(QStringLiteral("yard-sun-source"), formTr("Source"), [&document] {
    return QString::fromStdString(sunProfile(document.yard().settings.sunProfile).source);
  });
}

constexpr double kSteepest = 60.0;  // degrees, as far as maps go

QString readSlope(const QString& typed, Angle& value) {
  Angle read;
  const QString wrong = readDegrees(typed, read);
  if (!wrong.isEmpty() || read < Angle() || read.degrees() > kSteepest)
    return formTr("Write the slope in degrees, from 0 to 60: a fall of one in ten is 5.7°.");
  value = read;
  return {};
}

QString readAspect(const QString& typed, Angle& value) {
  Angle read;
  const QString wrong = readDegrees(typed, read);
  if (!wrong.isEmpty() || read < Angle())
    return formTr(
        "Write the direction the ground falls to, in degrees clockwise from true north: 180 "
        "is south.");
  value = read;
  return {};
}

QString readSkyline(const QString& typed, std::vector<SkylinePoint>& value) {
  SkylineRead read = parseSkyline(typed.toStdString());
  if (!read.trouble.empty()) return QString::fromStdString(read.trouble);
  value = std::move(read.points);
  return {};
}

void addGround(FieldForm& form, Document& document, ObjectForm<Settings>& yard) {
  yard.field(
      "yard-slope", formTr("Slope"), [](const Settings& s) { return degreesText(s.slope); },
      [](Settings& s, const QString& typed) { return readSlope(typed, s.slope); });
  yard.field(
      "yard-aspect", formTr("Falls to"), [](const Settings& s) { return degreesText(s.aspect); },
      [](Settings& s, const QString& typed) { return readAspect(typed, s.aspect); });
  form.addTable(
      QStringLiteral("yard-skyline"), formTr("Skyline"),
      [&document] {
        return QString::fromStdString(formatSkyline(document.yard().settings.skyline));
      },
      [yard](const QString& typed) {
        std::vector<SkylinePoint> skyline;
        const QString wrong = readSkyline(typed, skyline);
        if (wrong.isEmpty())
          yard.edit(formTr("Skyline"), [&](Settings& s) { s.skyline = skyline; });
        return wrong;
      },
      formTr("open"));
  form.addNote(formTr(
      "Hills and far buildings: a line for each direction, azimuth from true north and elevation "
      "in degrees, such as 120, 12.5. Straight lines join them. Paste from a table if you have "
      "one."));
}

}  // namespace

void fillForm(FieldForm& form, Document& document, Id<Settings> id) {
  ObjectForm<Settings> yard(form, document, id);
  yard.text("yard-name", formTr("Name"), &Settings::name);
  yard.choice("yard-units", formTr("Units"), &Settings::units,
              {formTr("feet and inches"), formTr("metres")});
  addPlace(yard);
  addSeason(yard);
  addSunProfile(form, document, yard);
  addGround(form, document, yard);
}

}  // namespace tussock
