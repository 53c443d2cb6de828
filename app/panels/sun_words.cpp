// SPDX-License-Identifier: MIT
#include "app/panels/sun_words.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QLocale>

#include "core/model/cover.h"
#include "core/sun/direct_light.h"
#include "core/sun/horizon.h"
#include "core/sun/map.h"

namespace tussock {

namespace {

QString sunTr(const char* source) {
  return QCoreApplication::translate("Sun", source);
}

QString hours(double value) {
  return QLocale().toString(value, 'f', 1);
}

QString monthHours(const MonthHours& month, const GrowingSeason& season) {
  return QStringLiteral("%1 %2").arg(monthWords(month.month, season), hours(month.hours.total()));
}

const MonthHours* monthShown(const SunChoice& choice, const SunYear& year) {
  if (choice.look != SunLook::Hours || choice.span == SunSpan::Season) return nullptr;
  if (choice.span == SunSpan::WorstMonth) return year.worst();
  const auto at = std::ranges::find(year.months, choice.month, &MonthHours::month);
  return at == year.months.end() ? nullptr : &*at;
}

// A cell is covered as a whole where its middle is.
Cover coverHere(const SunView& view, Point at) {
  const Cover cover = coverAt(view.yard(), at);
  const auto map = view.map();
  const bool cellCovered = map && map->underBuildingAt(at);
  return cover == Cover::Open && cellCovered ? Cover::Roof : cover;
}

QString seasonWordsAt(const SunYear& year, const GrowingSeason& season) {
  const HourFigures figures = hourFigures(year.mean);
  const QString words = sunTr("Growing season: %1 h of sun, %2 before noon and %3 after")
                            .arg(figures.total, figures.before, figures.after);
  if (year.months.size() < 2) return words;
  const auto [least, most] = std::minmax_element(
      year.months.begin(), year.months.end(),
      [](const MonthHours& a, const MonthHours& b) { return a.hours.total() < b.hours.total(); });
  return sunTr("%1; %2, %3").arg(words, monthHours(*most, season), monthHours(*least, season));
}

QString monthWordsAt(const SunYear& year, const MonthHours& month, const SunChoice& choice,
                     const GrowingSeason& season) {
  const HourFigures figures = hourFigures(month.hours);
  const QString name = monthWords(month.month, season);
  const QString span =
      choice.span == SunSpan::WorstMonth ? sunTr("Worst month here, %1").arg(name) : name;
  return sunTr("%1: %2 h of sun, %3 before noon and %4 after; growing season %5")
      .arg(span, figures.total, figures.before, figures.after, hours(year.mean.total()));
}

}  // namespace

// The tenths that are left over go to the half that lost more by being cut off.
HourFigures hourFigures(const SunHours& each) {
  const auto figure = [](double tenths) { return hours(tenths / 10.0); };
  // As it is written elsewhere, also half way between two figures.
  const double total = std::round(QString::number(each.total(), 'f', 1).toDouble() * 10.0);
  double before = std::floor(each.beforeNoon * 10.0), after = std::floor(each.afterNoon * 10.0);
  const bool morning = each.beforeNoon * 10.0 - before >= each.afterNoon * 10.0 - after;
  const double rest = total - before - after;
  before += rest > 1.0 ? 1.0 : (morning ? rest : 0.0);
  after += rest > 1.0 ? 1.0 : (morning ? 0.0 : rest);
  return {figure(before), figure(after), figure(total)};
}

QString monthWords(std::chrono::month month) {
  return QLocale().standaloneMonthName(int(unsigned(month)));
}

QString monthWords(std::chrono::month month, const GrowingSeason& season) {
  const unsigned end = unsigned((std::chrono::year(2027) / month / std::chrono::last).day());
  const bool starts = season.first.month() == month, ends = season.last.month() == month;
  const unsigned from = starts ? unsigned(season.first.day()) : 1u;
  const unsigned to = ends ? std::min(unsigned(season.last.day()), end) : end;
  const QString name = QLocale().monthName(int(unsigned(month)));
  if (starts && ends && season.first > season.last)  // all the year but some days of it
    return sunTr("1–%1 and %2–%3 %4").arg(to).arg(from).arg(end).arg(name);
  if (from == 1 && to == end) return monthWords(month);
  return sunTr("%1–%2 %3").arg(from).arg(to).arg(name);
}

QString sunWordsAt(const SunView& view, Point at) {
  const auto map = view.map();
  const auto year = map ? map->yearAt(at) : std::nullopt;
  if (!year) return {};
  switch (coverHere(view, at)) {
    case Cover::Roof:
      return sunTr("Under a roof");
    case Cover::Trunk:
      return sunTr("On the trunk of a tree");
    case Cover::Open:
      break;
  }
  const GrowingSeason season = growingSeason(view.yard().settings);
  const MonthHours* month = monthShown(view.choice(), *year);
  return month ? monthWordsAt(*year, *month, view.choice(), season) : seasonWordsAt(*year, season);
}

std::optional<double> hoursShownAt(const SunView& view, Point at) {
  const auto map = view.map();
  const auto year = map ? map->yearAt(at) : std::nullopt;
  if (!year || coverHere(view, at) != Cover::Open) return std::nullopt;
  if (view.choice().span == SunSpan::Season) return year->mean.total();
  const MonthHours* month = monthShown(view.choice(), *year);
  return month ? std::optional(month->hours.total()) : std::nullopt;
}

QString briefSunWordsAt(const SunView& view, Point at) {
  const auto map = view.map();
  const auto year = map ? map->yearAt(at) : std::nullopt;
  if (!year) return {};
  switch (coverHere(view, at)) {
    case Cover::Roof:
      return sunTr("under a roof");
    case Cover::Trunk:
      return sunTr("on the trunk of a tree");
    case Cover::Open:
      break;
  }
  const MonthHours* month = monthShown(view.choice(), *year);
  if (!month) return sunTr("%1 h of sun here").arg(hours(year->mean.total()));
  const QString figure = hours(month->hours.total());
  if (view.choice().span == SunSpan::WorstMonth)
    return sunTr("%1 h of sun here in its worst month").arg(figure);
  return sunTr("%1 h of sun here, %2")
      .arg(figure, monthWords(month->month, growingSeason(view.yard().settings)));
}

namespace {

// Where the sun is while it is up and the ground has none; nothing when that is never.
QString hiddenWords(const CivilDay& day, const Settings& settings, const Daylight& up) {
  if (Horizon(settings).isOpen()) return {};
  const UtcTime from = up.sunrise.value_or(day.at(0)),
                to = up.sunset.value_or(day.at(kMinutesInDay));
  const QString where =
      settings.skyline.empty() ? sunTr("no sun on the slope") : sunTr("behind the skyline");
  const std::vector<LightSpan> lit = directLight(from, to, settings);
  if (lit.empty()) return sunTr("%1 all day").arg(where);
  constexpr std::chrono::minutes kNoticed{5};
  QStringList times;
  if (lit.front().from - from > kNoticed)
    times << sunTr("until %1").arg(day.clock(lit.front().from));
  for (std::size_t i = 1; i < lit.size(); ++i)
    times << sunTr("from %1 to %2").arg(day.clock(lit[i - 1].to), day.clock(lit[i].from));
  if (to - lit.back().to > kNoticed) times << sunTr("from %1 on").arg(day.clock(lit.back().to));
  return times.isEmpty() ? QString() : sunTr("%1 %2").arg(where, times.join(QStringLiteral(", ")));
}

QString riseAndSetWords(const CivilDay& day, const Daylight& light) {
  const QString zone = day.zone(light.transit);
  if (light.sunrise && light.sunset)
    return sunTr("Sunrise %1, sunset %2 %3")
        .arg(day.clock(*light.sunrise), day.clock(*light.sunset), zone);
  if (light.sunrise)
    return sunTr("Sunrise %1 %2, and no sunset on this day").arg(day.clock(*light.sunrise), zone);
  if (light.sunset)
    return sunTr("Sunset %1 %2, and no sunrise on this day").arg(day.clock(*light.sunset), zone);
  return sunTr("Midnight sun: it does not set on this day");
}

}  // namespace

QString daylightWords(const CivilDay& day, const Settings& settings) {
  const Daylight light = daylight(day.date(), settings.latitude, settings.longitude);
  if (light.hours <= 0.0) return sunTr("Polar night: the sun does not rise on this day");
  const QString words = riseAndSetWords(day, light);
  const Daylight up = timeAbove(Angle(), day.date(), settings.latitude, settings.longitude);
  const QString hidden = up.hours > 0.0
                             ? hiddenWords(day, settings, up)
                             : sunTr("seen only as the air bends its light, so no sun is counted");
  return hidden.isEmpty() ? words : sunTr("%1; %2").arg(words, hidden);
}

QString horizonWords(const CivilDay& day, int minute, const Settings& settings) {
  const UtcTime now = day.at(minute);
  const Daylight seen = daylight(day.date(), settings.latitude, settings.longitude);
  const Daylight up = timeAbove(Angle(), day.date(), settings.latitude, settings.longitude);
  if (!seen.sunrise || !seen.sunset || !up.sunrise || !up.sunset) return {};
  if (now >= *seen.sunrise && now < *up.sunrise)
    return sunTr("The sun is on the horizon; none is counted until its middle is up, at %1")
        .arg(day.clock(*up.sunrise));
  if (now > *up.sunset && now <= *seen.sunset)
    return sunTr("The sun is on the horizon; none is counted since its middle went down, at %1")
        .arg(day.clock(*up.sunset));
  return {};
}

QString groundWords(const Yard& yard) {
  if (seasonRequest(yard).only.empty()) return {};
  return sunTr("A large lot: hours are on and around the beds only");
}

QString limitWords(const SunProfile& profile) {
  const std::string name = profile.source.substr(0, profile.source.find_first_of(":,"));
  return sunTr("Limits from %1 h and %2 h: %3")
      .arg(QLocale().toString(profile.partFrom), QLocale().toString(profile.fullFrom),
           QString::fromStdString(name));
}

QString growthWords(const Yard& yard) {
  const auto still = std::count_if(yard.trees.begin(), yard.trees.end(),
                                   [](const Tree& tree) { return tree.growth <= Length(); });
  if (still == 0) return {};
  if (yard.trees.size() == 1) return sunTr("The tree has no growth told and stays as it is");
  return sunTr("%1 of %2 trees: no growth told, they stay as they are")
      .arg(still)
      .arg(yard.trees.size());
}

}  // namespace tussock
