// SPDX-License-Identifier: MIT
// A day by the clocks of the yard's place: its time zone, daylight saving included.
#pragma once

#include <QString>
#include <QTimeZone>

#include "core/model/settings.h"

namespace tussock {

inline constexpr int kMinutesInDay = 24 * 60;  // on the clock, also where clocks are changed

class CivilDay {
 public:
  // A time zone that the system does not know counts as UTC.
  CivilDay(Date day, const Settings& settings);
  [[nodiscard]] static Date today(const Settings& settings);

  [[nodiscard]] Date date() const { return day_; }
  // The instant at which clocks show so many minutes after midnight; below 0 on the day before,
  // from kMinutesInDay on the day after. Where clocks skip that time, as long after midnight as it
  // would have been; where they show it twice, the first.
  [[nodiscard]] UtcTime at(int minute) const;
  // What clocks show, as minutes after this day's midnight: below 0 on the day before, beyond
  // kMinutesInDay on the day after.
  [[nodiscard]] int minuteOf(UtcTime time) const;
  [[nodiscard]] QString clock(UtcTime time) const;  // "14:35"
  [[nodiscard]] QString zone(UtcTime time) const;   // "EDT", as the system abbreviates it

 private:
  Date day_;
  QTimeZone zone_;
};

}  // namespace tussock
