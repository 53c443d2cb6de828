// SPDX-License-Identifier: MIT
#include "core/sun/sun_days.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tussock {

namespace {

Date dateIn(int year, MonthDay day) {
  using namespace std::chrono;
  const Date date = std::chrono::year(year) / day.month() / day.day();
  return date.ok() ? date : Date(std::chrono::year(year) / day.month() / last);
}

UtcTime noonOf(Date day, Angle longitude) {
  const double seconds = std::remainder(longitude.degrees(), 360.0) * 240.0;
  return std::chrono::sys_days(day) + std::chrono::hours(12) -
         std::chrono::seconds(std::llround(seconds));
}

struct DatedSun {
  Date day;
  double declination;  // radians
};

// The day whose declination is nearest the mean of all.
Date standsFor(const std::vector<DatedSun>& days) {
  double mean = 0.0;
  for (const DatedSun& day : days) mean += day.declination / static_cast<double>(days.size());
  const auto nearest =
      std::min_element(days.begin(), days.end(), [mean](const DatedSun& a, const DatedSun& b) {
        return std::abs(a.declination - mean) < std::abs(b.declination - mean);
      });
  return nearest->day;
}

MonthDay monthDayOf(Date day) {
  return {day.month(), day.day()};
}

std::vector<bool> leavesOn(Date day, const Solids& solids) {
  std::vector<bool> leaves;
  for (const Crown& crown : solids.crowns) leaves.push_back(inLeaf(crown, monthDayOf(day)));
  return leaves;
}

void addClasses(const std::vector<DatedSun>& band, const Solids& solids,
                std::vector<DayClass>& classes) {
  const Date day = standsFor(band);
  std::map<std::vector<bool>, DayClass> byLeaves;
  for (const DatedSun& one : band) {
    DayClass& members =
        byLeaves.try_emplace(leavesOn(one.day, solids), DayClass{day, monthDayOf(one.day), 0, {}})
            .first->second;
    ++members.days;
    ++members.inMonth[static_cast<unsigned>(one.day.month()) - 1u];
  }
  for (const auto& [leaves, members] : byLeaves) classes.push_back(members);
}

struct Site {
  Angle latitude, longitude;
  const Horizon& horizon;

  [[nodiscard]] SunPosition sunAt(UtcTime time) const {
    return sunPosition(time, latitude, longitude);
  }
  [[nodiscard]] bool lit(UtcTime time) const { return horizon.clears(sunAt(time)); }
};

struct TimeSpan {
  UtcTime from, to;
  [[nodiscard]] UtcTime middle() const { return from + (to - from) / 2; }
};

// The second at which the sun comes out or goes in, when it does so once between.
UtcTime changeIn(TimeSpan span, const Site& site) {
  const bool first = site.lit(span.from);
  while (span.to - span.from > std::chrono::seconds(1))
    (site.lit(span.middle()) == first ? span.from : span.to) = span.middle();
  return span.to;
}

// What is left of a part of the day; empty when the sun is hidden. The sun is at 0 degrees at the
// ends of the day, so an end that touches them goes by what is a second inside.
TimeSpan litPart(TimeSpan span, const Site& site) {
  if (site.horizon.isOpen()) return span;
  const TimeSpan inner{span.from + std::chrono::seconds(1), span.to - std::chrono::seconds(1)};
  const bool from = site.lit(inner.from);
  if (from == site.lit(inner.to))
    return site.lit(span.middle()) ? span : TimeSpan{span.to, span.to};
  const UtcTime change = changeIn(inner, site);
  return from ? TimeSpan{span.from, change} : TimeSpan{change, span.to};
}

void addHalf(HalfDay half, TimeSpan whole, const Site& site, int stepMinutes,
             std::vector<SunStep>& steps) {
  const double seconds = static_cast<double>((whole.to - whole.from).count());
  const int parts = std::max(1, static_cast<int>(std::ceil(seconds / 60.0 / stepMinutes - 1e-9)));
  const auto at = [&](double part) {
    return whole.from + std::chrono::seconds(std::llround(seconds * part / parts));
  };
  for (int i = 0; i < parts; ++i) {
    const TimeSpan lit = litPart({at(i), at(i + 1)}, site);
    if (lit.from >= lit.to) continue;
    const bool all = lit.from == at(i) && lit.to == at(i + 1);
    const double length = all ? seconds / parts : static_cast<double>((lit.to - lit.from).count());
    const UtcTime middle = all ? at(i + 0.5) : lit.middle();
    steps.push_back({site.sunAt(middle), length / 3600.0, half});
  }
}

}  // namespace

std::vector<Date> daysOf(const GrowingSeason& season, int year) {
  using namespace std::chrono;
  const sys_days first = dateIn(year, season.first);
  const sys_days last = dateIn(season.last < season.first ? year + 1 : year, season.last);
  std::vector<Date> result;
  for (sys_days day = first; day <= last; day += days(1)) result.emplace_back(day);
  return result;
}

Angle declinationBand(int stepMinutes) {
  return Angle::degrees(std::clamp(1.0 + (stepMinutes - 10) * 0.4, 1.0, 3.0));
}

std::vector<DayClass> classesOf(const std::vector<Date>& days, const Solids& solids,
                                Angle longitude, Angle band) {
  std::map<int, std::vector<DatedSun>> bands;
  for (const Date day : days) {
    const double declination = solarDeclination(noonOf(day, longitude)).radians();
    const int number = static_cast<int>(std::floor(declination / band.radians()));
    bands[number].push_back({day, declination});
  }
  std::vector<DayClass> result;
  for (const auto& [number, members] : bands) addClasses(members, solids, result);
  return result;
}

std::vector<SunStep> stepsOf(Date day, Angle latitude, Angle longitude, int stepMinutes,
                             const Horizon& horizon) {
  const Daylight up = timeAbove(Angle(), day, latitude, longitude);
  std::vector<SunStep> steps;
  if (up.hours <= 0.0) return steps;
  const UtcTime rise = up.sunrise.value_or(up.transit - std::chrono::hours(12));
  const UtcTime set = up.sunset.value_or(up.transit + std::chrono::hours(12));
  const Site site{latitude, longitude, horizon};
  // Near a pole the sun may come up after noon, or have gone down before it.
  if (rise < up.transit)
    addHalf(HalfDay::BeforeNoon, {rise, std::min(set, up.transit)}, site, stepMinutes, steps);
  if (set > up.transit)
    addHalf(HalfDay::AfterNoon, {std::max(rise, up.transit), set}, site, stepMinutes, steps);
  return steps;
}

}  // namespace tussock
